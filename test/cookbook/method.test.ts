import type {Root} from 'mdast'
import {describe, expect, test} from 'vitest'
import {readMethod} from '../../src/cookbook/method.ts'
import type {Problem} from '../../src/cookbook/problem.ts'
import {reportInto} from '../../src/cookbook/problems.ts'
import {htmlText} from '../../src/site/html.ts'
import {grams, line} from '../kitchen.ts'
import {pointedAt, type ReadBody, readPageBody, readRecipeBody} from './read-body.ts'

const barley = line('pearl barley', 180)
const lemon = line('lemon', {
  kind: 'count',
  text: '1 medium',
  count: {value: 1, halfRange: 0, increment: 1},
  measure: 'medium',
})
const yeast = line('yeast', {
  ...grams(13.5, 0.1),
  text: '13.5 g (1 tbsp)',
  beside: {
    kind: 'volume',
    text: '1 tbsp',
    measure: 'tbsp',
    millilitres: {value: 14.8, halfRange: 0, increment: 14.8},
    count: {value: 1, halfRange: 0, increment: 1},
  },
})
const lines = [barley, lemon, yeast]

const amount = (anchor: string, text: string, weight = '') =>
  `<span class="amount" data-anchor="${anchor}"${weight && ` data-grams="${weight}"`}>${text}</span>`

/** What was found, with the text it points at. */
function found(text: string, {problems}: ReadBody) {
  return problems.map((problem) => [problem.ruleId, pointedAt(text, problem)])
}

describe('a link to an ingredient', () => {
  test('prints its amount where it is used, with the grams a page scales', () => {
    const {html, problems} = readRecipeBody('Rinse the [barley](#pearl-barley) well.', lines)
    expect(html).toBe(`<p>Rinse the barley (${amount('pearl-barley', '180 g', '180')}) well.</p>`)
    expect(problems).toEqual([])
  })

  test('prints a count as it was written: its grams are the food’s to say', () => {
    const {html} = readRecipeBody('Squeeze the [lemon](#lemon).', lines)
    expect(html).toBe(`<p>Squeeze the lemon (${amount('lemon', '1 medium')}).</p>`)
  })

  test('sets the kitchen measure off by a comma, as brackets are around it', () => {
    const {html} = readRecipeBody('Crumble the [yeast](#yeast).', lines)
    expect(html).toContain(amount('yeast', '13.5 g, 1 tbsp', '13.5'))
  })

  test('keeps the emphasis of its words, and names the ingredient where it has none', () => {
    const {html} = readRecipeBody('[*the* barley](#pearl-barley) and [](#lemon)', lines)
    expect(html).toBe(
      `<p><em>the</em> barley (${amount('pearl-barley', '180 g', '180')}) and lemon (${amount('lemon', '1 medium')})</p>`,
    )
  })

  test('may stand in a definition', () => {
    const {html} = readRecipeBody('[Barley][grain]\n\n[grain]: #pearl-barley', lines)
    expect(html).toBe(`<p>Barley (${amount('pearl-barley', '180 g', '180')})</p>`)
  })

  test('is listed with its place, as often as it stands', () => {
    const text = '1. [barley](#pearl-barley)\n2. more [barley](#pearl-barley)'
    const {ingredientLinks} = readRecipeBody(text, lines).method
    expect(ingredientLinks.map(({anchor, place}) => [anchor, place.start.line])).toEqual([
      ['pearl-barley', 1],
      ['pearl-barley', 2],
    ])
    expect(ingredientLinks.map((link) => pointedAt(text, link))).toEqual([
      '[barley](#pearl-barley)',
      '[barley](#pearl-barley)',
    ])
  })

  test('that names none is an error at its anchor, with the nearest names', () => {
    const text = 'Rinse the [barley](#perl-barley "it") well.'
    const read = readRecipeBody(text, lines)
    expect(found(text, read)).toEqual([['unknown-ingredient-link', '#perl-barley']])
    expect(read.problems[0]).toMatchObject({
      severity: 'error',
      file: 'recipes/barley-pot.md',
      reason: 'Link `#perl-barley` names no ingredient or heading, expected `#pearl-barley`',
      actual: '#perl-barley',
      expected: ['#pearl-barley'],
    })
    expect(read.html).toBe('<p>Rinse the <span title="it">barley</span> well.</p>')
  })

  test('that names nothing alike shows what an anchor looks like', () => {
    const read = readRecipeBody('[x](#zzz) [y](#)', lines)
    expect(read.problems.map(({reason}) => reason)).toEqual([
      'Link `#zzz` names no ingredient or heading, expected the anchor of one, such as `#pearl-barley`',
      'Link `#` names no ingredient or heading, expected the anchor of one, such as `#pearl-barley`',
    ])
  })

  test('thousands that name none cost no more than their messages', () => {
    const many = Array.from({length: 10_000}, (_, index) => line(`ingredient ${index}`, 1))
    const text = '[x](#ingredien)\n\n'.repeat(2_000)
    expect(readRecipeBody(text, many).problems).toHaveLength(2_000)
  }, 10_000)
})

describe('headings', () => {
  test('begin below the heading of the page, whatever level the writer began with', () => {
    const levels = (html: string) => [...html.matchAll(/<h(\d)/g)].map(([, level]) => level)
    expect(levels(readRecipeBody('# Day 1\n## Dough\n# Day 2').html)).toEqual(['3', '4', '3'])
    expect(levels(readRecipeBody('### Day 1\n##### Dough\n###### x').html)).toEqual(['3', '5', '6'])
    expect(levels(readRecipeBody('###### Late\n# Early').html)).toEqual(['6', '3'])
    expect(levels(readPageBody('Day 1\n===\nDay 2\n---').html)).toEqual(['2', '3'])
  })

  test('have ids in ASCII, each once, that no ingredient and no page has', () => {
    const text = '# Crème\n# crème!\n# 大麦\n# \n# Pearl barley\n# [barley](#pearl-barley)'
    const {html} = readRecipeBody(text, [barley, line('section creme 2', 1)])
    expect([...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id)).toEqual([
      'section-creme',
      'section-creme-3',
      'section',
      'section-2',
      'section-pearl-barley',
      'section-barley',
    ])
  })

  test('are linked to by their words, before and after they stand, or by their id', () => {
    const text =
      '[a](#for-the-dough)\n# For the dough\n[b](#for-the-dough) [c](#section-for-the-dough)'
    const {html, problems} = readRecipeBody(text, lines)
    expect(problems).toEqual([])
    expect(html.match(/href="#section-for-the-dough"/g)).toHaveLength(3)
  })

  test('give way to an ingredient of the same name', () => {
    const {method} = readRecipeBody('# Lemon\n[lemon](#lemon)', lines)
    expect(method.ingredientLinks).toHaveLength(1)
  })

  test('of a page are all that a link within it can name', () => {
    const text = '# Thanks\n[a](#thanks) [b](#thakns) [c](#pearl-barley)'
    const read = readPageBody(text)
    expect(found(text, read)).toEqual([
      ['unknown-heading-link', '#thakns'],
      ['unknown-heading-link', '#pearl-barley'],
    ])
    expect(read.problems.map(({reason}) => reason)).toEqual([
      'Link `#thakns` names no heading, expected `#thanks`',
      'Link `#pearl-barley` names no heading, expected a heading of this page',
    ])
  })
})

describe('links to other files', () => {
  test('stand relative to the Markdown file and are listed with their place', () => {
    const text = '[stock](brown-stock.md) [us](<../pages/about us.md#team> "Who")'
    const {html, method, problems} = readRecipeBody(text)
    expect(problems).toEqual([])
    expect(html).toBe(
      '<p><a href="../recipes/brown-stock.md">stock</a> <a href="../pages/about%20us.md#team" title="Who">us</a></p>',
    )
    expect(method.links.map((link) => [link.path, link.anchor, pointedAt(text, link)])).toEqual([
      ['recipes/brown-stock.md', undefined, 'brown-stock.md'],
      ['pages/about us.md', 'team', '../pages/about us.md#team'],
    ])
  })

  test('and to the web keep their address', () => {
    const {html} = readRecipeBody('<https://example.org> [mail](mailto:cook@example.org "Cook")')
    expect(html).toBe(
      '<p><a href="https://example.org/">https://example.org</a> <a href="mailto:cook@example.org" title="Cook">mail</a></p>',
    )
  })

  test.each([
    ['[x](javascript:alert`1`)', 'javascript:alert`1`', 'has the scheme `javascript:`'],
    ['[x](<//example.org/a b>)', '//example.org/a b', 'leads out of the cookbook'],
    ['<javascript:alert(1)>', '<javascript:alert(1)>', 'has the scheme `javascript:`'],
    ['[x](a&#58;b)', '[x](a&#58;b)', 'has the scheme `a:`'],
  ])('that are unsafe keep only their words: %s', (link, place, fault) => {
    const text = `> Stir and\n> ${link} on.`
    const read = readRecipeBody(text)
    expect(found(text, read)).toEqual([['no-unsafe-link', place]])
    expect(read.problems[0]?.reason).toContain(fault)
    expect(read.html).not.toContain('<a')
  })

  test('that are unsafe in a definition are reported there, at each use', () => {
    const text = '[a][x] [b][x]\n\n[x]: data:text/html,hello "t"'
    const read = readRecipeBody(text)
    expect(read.html).toBe('<p>a b</p>')
    expect(found(text, read)).toEqual([
      ['no-unsafe-link', 'data:text/html,hello'],
      ['no-unsafe-link', 'data:text/html,hello'],
    ])
  })
})

describe('pictures', () => {
  test('come from images/, and are listed by their path in it', () => {
    const text = '![The *pot*](../images/rack/barley%20pot.jpg "Ready")'
    const {html, method, problems} = readRecipeBody(text)
    expect(problems).toEqual([])
    expect(html).toBe(
      '<p><img src="../images/rack/barley%20pot.jpg" alt="The pot" title="Ready"></p>',
    )
    expect(method.images.map(({value}) => value)).toEqual([
      {path: 'rack/barley pot.jpg', alt: 'The pot'},
    ])
    expect(method.images.map((image) => pointedAt(text, image))).toEqual([
      '../images/rack/barley%20pot.jpg',
    ])
  })

  test.each([
    'https://example.org/x.png',
    'pot.jpg',
    '../pages/pot.jpg',
    '../../images/pot.jpg',
    'data:image/svg+xml,x',
    '../images/../recipes/pot.jpg',
    '#pot',
  ])('from elsewhere are refused, and their words shown: %s', (address) => {
    const text = `![The pot](${address})`
    const read = readRecipeBody(text)
    expect(found(text, read)).toEqual([['image-in-folder', address]])
    expect(read.html).toBe('<p>The pot</p>')
    expect(read.method.images).toEqual([])
  })

  test('without words are a warning, and shown', () => {
    const text = 'See ![ ](../images/pot.jpg)'
    const read = readRecipeBody(text)
    expect(read.problems.map(({ruleId, severity}) => [ruleId, severity])).toEqual([
      ['image-alternative', 'warning'],
    ])
    expect(found(text, read)).toEqual([['image-alternative', '![ ](../images/pot.jpg)']])
    expect(read.html).toContain('<img')
  })

  test('may stand in a definition', () => {
    const {html} = readRecipeBody('![pot][p]\n\n[p]: ../images/pot.jpg')
    expect(html).toBe('<p><img src="../images/pot.jpg" alt="pot"></p>')
  })
})

describe('HTML in a text', () => {
  test.each([
    ['Stir <b onclick="x()">well</b>.', ['<b onclick="x()">', '</b>']],
    ['<script>alert(1)</script>', ['<script>alert(1)</script>']],
    ['- <iframe src=x>', ['<iframe src=x>']],
    ['> <style>*{}</style>', ['<style>*{}</style>']],
    ['<!-- a --> <b>', ['<!-- a --> <b>']],
    ['Stir. <?php x ?>', ['<?php x ?>']],
    ['<![CDATA[x]]>', ['<![CDATA[x]]>']],
    ['<!DOCTYPE html>', ['<!DOCTYPE html>']],
  ])('is shown as it is written, and reported: %s', (text, tags) => {
    const read = readRecipeBody(text)
    expect(found(text, read)).toEqual(tags.map((tag) => ['no-raw-html', tag]))
    for (const tag of tags) {
      expect(read.html).toContain(tag.replaceAll('&', '&#x26;').replaceAll('<', '&#x3C;'))
    }
  })

  test('that is a comment is left out without a word', () => {
    const read = readRecipeBody('Stir<!-- slowly --> on.\n\n<!-- a\n\nb --> <!-- c -->\n')
    expect(read.problems).toEqual([])
    expect(read.html).toBe('<p>Stir on.</p>')
  })

  test('stands in a message on one line', () => {
    const [problem] = readRecipeBody(`<div>\n${'x'.repeat(100)}`).problems
    expect(problem?.reason).toMatch(/^`<div> x+…` is HTML, expected Markdown$/)
  })
})

test('a method in quotes and lists becomes plain elements without places', () => {
  const text = '1. Stir\n   - once\n2. Rest\n\n> Wait\n\n---\n\n    code\n\n`a`  \n**b**'
  const {html, method} = readRecipeBody(text)
  expect(html.replaceAll('\n', '')).toBe(
    '<ol><li>Stir<ul><li>once</li></ul></li><li>Rest</li></ol><blockquote><p>Wait</p></blockquote><hr><pre><code>code</code></pre><p><code>a</code><br><strong>b</strong></p>',
  )
  expect(JSON.stringify(method.body)).not.toContain('position')
})

test('what a plugin of another pipeline hung on a tree stays out of the page', () => {
  const root: Root = {
    type: 'root',
    children: [
      {
        type: 'paragraph',
        data: {hName: 'script', hProperties: {onclick: 'alert(1)'}},
        children: [
          {type: 'text', value: 'Stir.', data: {hName: 'iframe'}},
          {type: 'link', url: 'javascript:alert(1)', children: [{type: 'text', value: 'x'}]},
        ],
      },
    ],
  }
  const problems: Problem[] = []
  const source = {path: 'recipes/pot.md', text: ''}
  const report = reportInto(problems, source.path)
  const {body, passages} = readMethod(root, {source, lines: [], report})
  expect(htmlText(body)).toBe('<p>Stir.x</p>\n')
  expect(passages.map(({text}) => text)).toEqual(['Stir.x'])
  // Nodes that were made up have no place: the beginning of the file stands in.
  expect(problems.map(({ruleId, place}) => [ruleId, place?.start.line])).toEqual([
    ['no-unsafe-link', 1],
  ])
})
