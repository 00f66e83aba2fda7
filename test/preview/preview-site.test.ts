import {fileURLToPath} from 'node:url'
import type {Element} from 'hast'
import {h} from 'hastscript'
import {visit} from 'unist-util-visit'
import {beforeAll, describe, expect, test} from 'vitest'
import {examine} from '../../src/build.ts'
import {readCookbook} from '../../src/cookbook/read-folder.ts'
import {markFindings} from '../../src/preview/marks.ts'
import type {Finding} from '../../src/preview/page-findings.ts'
import {authored} from '../../templates/parts/authored.ts'
import {broken, porridge, previewOf} from './kitchen.ts'

const page = 'recipes/porridge/index.html'

function pageOf(text: string): string {
  return String(previewOf({porridge: text}).files.get(page))
}

/** What stands between the start of an element and the mark that follows. */
function markedBy(html: string, words: RegExp): string {
  const marks = [...html.matchAll(/<a class="finding" id="finding-\d+" href="#findings">/gu)]
  const mark = marks.find(({index}) => words.test(html.slice(index, html.indexOf('</a>', index))))
  const before = html.slice(0, mark?.index ?? 0)
  return before.slice([...before.matchAll(/<(?:tr|li|h1|p)[ >]/gu)].at(-1)?.index ?? 0)
}

describe('the findings of a page stand', () => {
  test('in the row of the figure that drifted', () => {
    const html = pageOf(porridge.replace('190 kcal', '290 kcal'))
    expect(markedBy(html, /error: .*290 kcal/u)).toMatch(
      /^<tr class="found-error">.*Energy.*290 kcal/su,
    )
  })

  test('at the second row where the second figure drifted', () => {
    const html = pageOf(porridge.replace('6.6 g', '16.6 g'))
    expect(markedBy(html, /error: .*16\.6 g/u)).toMatch(
      /^<tr class="found-error">.*Protein.*16\.6 g/su,
    )
  })

  test('at the ingredient they name', () => {
    const html = pageOf(porridge.replace('water: 250 g\n', 'water: 250 g\n  honey: 5 g\n'))
    expect(markedBy(html, /honey/u)).toMatch(/^<li id="honey" class="found-warning">/u)
  })

  test('at the step they name, behind a step of two paragraphs', () => {
    const html = pageOf(porridge.replace('Simmer for 5 min', 'Simmer the [rice](#rice) for 5 min'))
    expect(markedBy(html, /rice/u)).toMatch(/<p class="found-error">Simmer the/u)
  })

  test('at the title where the page does not show what they name', () => {
    const html = pageOf(porridge.replace('yield: 300 g', 'yield: 300 g\nclaims: [high protein]'))
    expect(markedBy(html, /high protein/u)).toMatch(/^<h1 class="found-error">Porridge/u)
  })

  test('in the strip, with their rule and a link to their mark', () => {
    const html = pageOf(porridge.replace('190 kcal', '290 kcal'))
    const strip = html.slice(html.indexOf('<aside id="findings"'), html.indexOf('</aside>'))
    expect(strip).toContain('1 error: a build would stop')
    expect(strip).toMatch(/<a href="#finding-1">recipes\/porridge\.md:8:\d+<\/a> error: Stated/u)
    expect(strip).toContain('<a href="../../rules/index.html#stated-macros">stated-macros</a>')
  })
})

test('a recipe that cannot be read has no page, and is told on every other', () => {
  const site = previewOf({porridge, broken})
  expect(site.files.has('recipes/broken/index.html')).toBe(false)
  expect(site.files.get('index.html')).toMatch(/recipes\/broken\.md:\d/u)
  expect(site.files.get(page)).toMatch(/recipes\/broken\.md:\d/u)
  expect(site.missing).toMatch(/recipes\/broken\.md:\d/u)
})

test('a page may hear of rebuilds and nothing else; its policy stands otherwise', () => {
  const html = pageOf(porridge)
  const [, policy = ''] = /Content-Security-Policy" content="([^"]*)"/u.exec(html) ?? []
  expect(policy.replaceAll('&#x27;', "'")).toBe(
    "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'; connect-src 'self'",
  )
  expect(html).toMatch(
    /<script src="\.\.\/\.\.\/\.preview\/preview\.js" defer data-events="\.\.\/\.\.\/\.preview\/events" data-generation="first">/u,
  )
})

test('a finding shows what it quotes as text', () => {
  const hostile = '<script>alert(1)</script>'
  const html = pageOf(porridge.replace('water: 250 g', `"${hostile}": 250 g`))
  expect(html).not.toContain(hostile)
  expect(
    previewOf({porridge: porridge.replace('title: Porridge', `title: ${hostile}`)}).missing,
  ).not.toContain(hostile)
})

describe('in the demo cookbook', () => {
  const examined = {computed: new Map()} as {computed: ReturnType<typeof examine>['computed']}
  beforeAll(async () => {
    const folder = fileURLToPath(new URL('../../content', import.meta.url))
    examined.computed = examine(await readCookbook(folder)).computed
  })

  test('every passage of a method has a block of its own that bears its mark', () => {
    for (const {recipe} of examined.computed.values()) {
      const body = authored(recipe.method.body, recipe.path, page)
      const tree = {type: 'root' as const, children: [h('section.method', body)]}
      const findings = recipe.method.passages.map((passage, index): Finding => {
        const problem = {
          ruleId: 'no-drift',
          severity: 'note' as const,
          file: recipe.path,
          reason: passage.text,
        }
        return {problem, id: `finding-${index}`, page, part: {kind: 'passage', index}}
      })
      markFindings(tree, findings)
      const blocks: Element[] = []
      visit(tree, 'element', (node) => {
        if (String(node.properties.className).includes('found-note')) blocks.push(node)
      })
      expect(blocks).toHaveLength(findings.length)
      for (const [index, block] of blocks.entries()) {
        const text = textOf(block)
        const last = recipe.method.passages[index]?.text.match(/\p{Letter}+/gu)?.at(-1) ?? ''
        expect(text.slice(0, text.indexOf('note: '))).toContain(last)
      }
    }
  })
})

function textOf(element: Element): string {
  let text = ''
  visit(element, 'text', ({value}) => {
    text += value
  })
  return text
}

test('an alternative keeps its own amount where the one before is no food', () => {
  const text = `---
title: Porridge
serves: 1
ingredients:
  milk: { amount: 200 g, instead: { moon milk: 111 g, goat milk: 222 g } }
---

Warm the milk.
`
  const shown = String(previewOf({porridge: text}).files.get('recipes/porridge/index.html'))
  expect(shown).toMatch(/222 g<\/span>[^<]*(?:<[^>]+>)*[^<]*goat milk/)
  expect(shown).not.toMatch(/111 g/)
})
