import type {Nodes} from 'hast'
import {visit} from 'unist-util-visit'
import {describe, expect, test} from 'vitest'
import {captionText} from '../../templates/caption.ts'
import {cardPage} from '../../templates/card.tsx'
import {figuresPage} from '../../templates/figures.tsx'
import {foodsPage} from '../../templates/foods.tsx'
import {recipeIndex} from '../../templates/index.tsx'
import {notFoundPage} from '../../templates/not-found.tsx'
import {planPage} from '../../templates/plan.tsx'
import {recipePage} from '../../templates/recipe.tsx'
import {shoppingPage} from '../../templates/shopping.tsx'
import {de} from '../../templates/words/de.ts'
import {en} from '../../templates/words/en.ts'
import {wordsFor} from '../../templates/words/words.ts'
import {at, computedOf, recipe, sampleSite, weight} from './sample.ts'
import {textOf} from './tree.ts'

/** Texts of a catalogue by their way through it: `list.makeFirst`. */
function texts(words: object, way = ''): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(words).flatMap(([key, value]) => {
      if (typeof value === 'string') return [[`${way}${key}`, value] as const]
      return typeof value === 'object' ? [...texts(value, `${way}${key}.`)] : []
    }),
  )
}

function functions(words: object, way = ''): ReadonlyMap<string, (...args: unknown[]) => unknown> {
  return new Map(
    Object.entries(words).flatMap(([key, value]) => {
      if (typeof value === 'function') return [[`${way}${key}`, value] as const]
      return typeof value === 'object' ? [...functions(value, `${way}${key}.`)] : []
    }),
  )
}

/** What stands for itself in both languages: signs, units, loan words, the panel of US law. */
const alike =
  /^(language|decimal|atLeastBefore|.*\.panel\..*|declared\.name\.us\..*|cooking\.script\.choosing\.with|.*\.(notStated|A6))$/

describe('the German catalogue', () => {
  const [english, german] = [texts(en), texts(de)]

  test('has every text, none of them empty', () => {
    expect([...german.keys()].sort()).toEqual([...english.keys()].sort())
    expect([...german].filter(([, text]) => text.trim() === '')).toEqual([])
  })

  test('fills in the same {names} as the English one', () => {
    const named = (text = '') => [...text.matchAll(/\{\w+\}/g)].map(([name]) => name).sort()
    for (const [key, text] of english) {
      expect([key, named(german.get(key))]).toEqual([key, named(text)])
    }
  })

  test('says whatever it is given to say', () => {
    // These are given no words but names of things, or turn them into words of their own.
    const special = /and$|allergen|safety|cooked$|pouredOff$|servings$|perContainer|share$/i
    for (const [key, said] of functions(en)) {
      if (special.test(key)) continue
      const given = ['first given', 'second given'].slice(0, said.length)
      for (const one of [said, functions(de).get(key)]) {
        const text = String(one?.(...given))
        expect([key, given.filter((word) => !text.includes(word))]).toEqual([key, []])
      }
    }
  })

  test('joins names, counts and writes numbers as German does', () => {
    const list = new Intl.ListFormat('de', {type: 'conjunction'})
    for (const names of [['Ei'], ['Ei', 'Milch'], ['Ei', 'Milch', 'Senf']]) {
      expect(de.and(names)).toBe(list.format(names))
    }
    expect([de.servings(1), de.servings(4), de.days(1), de.weeks(2)]).toEqual([
      '1 Portion',
      '4 Portionen',
      '1 Tag',
      '2 Wochen',
    ])
    for (const words of [en, de]) {
      const parts = new Intl.NumberFormat(words.language).formatToParts(1.5)
      expect(words.decimal).toBe(parts.find(({type}) => type === 'decimal')?.value)
    }
  })

  test('is taken for German of every country, and no other language', () => {
    expect([wordsFor('de'), wordsFor('de-AT'), wordsFor('DE-ch')]).toEqual([de, de, de])
    expect(wordsFor('den')).toBe(en)
  })
})

describe('a German site', () => {
  const site = sampleSite({language: 'de', declare: 'eu', netCarbohydrate: true})
  const [plan] = site.cookbook.plans
  if (!plan) throw new Error('the sample has no plan')
  const pot = computedOf(site, 'barley-pot')
  const pages = [
    ...recipeIndex(site).pages.map(({page}) => page()),
    recipePage(site, pot),
    cardPage(site, pot),
    shoppingPage(site),
    planPage(site, plan),
    figuresPage(site),
    foodsPage(site),
    notFoundPage(site),
  ]

  /** What a page says, piece by piece, but for what is marked as English. */
  function pieces(tree: Nodes): readonly string[] {
    const found: string[] = []
    visit(tree, (node) => {
      if (node.type === 'element' && node.properties.lang === 'en') return 'skip'
      if (node.type === 'element' && node.tagName === 'script') return 'skip'
      if (node.type === 'text' && node.value.trim() !== '') found.push(node.value.trim())
      return undefined
    })
    return found
  }

  test('says nothing in English but what its writer wrote and what checks say', () => {
    const english = new Set(
      [...texts(en)]
        .filter(([key, text]) => !alike.test(key) && texts(de).get(key) !== text)
        .map(([, text]) => text),
    )
    const left = pages.flatMap(({path, tree}) =>
      pieces(tree)
        // A food of the sample, named by its writer.
        .filter((piece) => english.has(piece) && piece !== 'water')
        .map((piece) => `${path}: ${piece}`),
    )
    expect(left).toEqual([])
  })

  test('writes its figures with a comma', () => {
    const withPoint = pages.flatMap(({path, tree}) =>
      pieces(tree)
        .filter((piece) => /\d\.\d/.test(piece) && !/CFR|SR28/.test(piece))
        .map((piece) => `${path}: ${piece}`),
    )
    expect(withPoint).toEqual([])
    const said = pages.flatMap(({tree}) => pieces(tree)).join(' ')
    expect(said).toMatch(/\d,\d g/)
    expect(captionText(site, pot)).toContain('Eine Portion, 370 g: Energie 395 kcal')
  })

  test('weighs a batch of a few grams with a comma too', () => {
    const mix = recipe('mix', {batch: at(weight(9.5))})
    const small = sampleSite({language: 'de'}, {recipes: new Map([[mix.slug, mix]])})
    const [index] = recipeIndex(small).pages.map(({page}) => page().tree)
    expect(index && textOf(index)).toContain('9,5 g')
    expect(textOf(cardPage(small, computedOf(small, 'mix')).tree)).toContain('Ganze Menge: 9,5 g')
  })

  test('says its language, and which parts are in another', () => {
    const [index] = pages
    const html = index?.tree.children.find((node) => node.type === 'element')
    expect(html?.type === 'element' && html.properties).toEqual({lang: 'de'})
  })
})

// The script of each as Unicode CLDR has it, which `Intl.Locale` looks up: of Kurdish the Latin one.
test.each([
  ['he', 'Hebr', 'rtl'],
  ['ar-EG', 'Arab', 'rtl'],
  ['ar-Latn', 'Latn', undefined],
  ['ckb', 'Arab', 'rtl'],
  ['ku', 'Latn', undefined],
  ['ku-Arab', 'Arab', 'rtl'],
  ['pa-Arab-PK', 'Arab', 'rtl'],
  ['sd', 'Arab', 'rtl'],
  ['ug', 'Arab', 'rtl'],
  ['de', 'Latn', undefined],
])('a page in %s, written in %s, runs %s', (language, script, direction) => {
  expect(new Intl.Locale(language).maximize().script).toBe(script)
  const {tree} = notFoundPage(sampleSite({language}))
  const html = tree.children.find((node) => node.type === 'element')
  expect(html?.type === 'element' && html.properties.dir).toBe(direction)
})
