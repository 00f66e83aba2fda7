import {describe, expect, test} from 'vitest'
import {type Examined, examine} from '../../src/build.ts'
import type {ChangeReport} from '../../src/report/change-report.ts'
import {changes} from '../../src/report/changes.ts'
import {markdownChanges} from '../../src/report/markdown-changes.ts'

const files = {
  'foods.yaml': `skyr, plain:
  label: { per: 100 g, energy: 62 kcal, protein: 11 g, fat: 0.2 g, carbohydrate: 4 g }
`,
  'recipes/base.md': `---
title: Base
yield: 500 g
ingredients:
  pearl barley: 200 g
  water: 500 g
---

Simmer the [barley](#pearl-barley) in the [water](#water).
`,
  'recipes/bowl.md': `---
title: Bowl
serves: 4
yield: 700 g
ingredients:
  skyr, plain: 400 g
  base: { amount: 250 g, recipe: base }
  olive oil: { amount: 100 g, eaten: 20 g, because: weighed }
---

Stir the [skyr](#skyr-plain) into the [base](#base), with the [oil](#olive-oil).
`,
} as const

type File = keyof typeof files

function examined(changed: Partial<Record<File, readonly [string, string]>> = {}): Examined {
  const texts = Object.entries(files).map(([path, text]) => {
    const [from, to] = Object.entries(changed).find(([name]) => name === path)?.[1] ?? ['', '']
    expect(text).toContain(from)
    return {path, text: text.replace(from, to)}
  })
  return examine({sources: {texts, images: []}, problems: []})
}

function changedBy(changed: Parameters<typeof examined>[0]): ChangeReport {
  return changes(examined(), examined(changed), (file) => file)
}

/** What did it, by recipe. */
function told({moved}: ChangeReport): Readonly<Record<string, readonly string[]>> {
  return Object.fromEntries(moved.map(({slug, causes}) => [slug, causes.map(({what}) => what)]))
}

describe('what moved the figures of a recipe', () => {
  test.each<[string, Parameters<typeof examined>[0], Readonly<Record<string, readonly string[]>>]>([
    ['nothing', {}, {}],
    ['a method that reads otherwise', {'recipes/bowl.md': ['Stir', 'Whisk']}, {}],
    ['an amount', {'recipes/bowl.md': ['400 g', '500 g']}, {bowl: ['skyr, plain: 400 g → 500 g']}],
    [
      'what is eaten of an amount',
      {'recipes/bowl.md': ['eaten: 20 g', 'eaten: 30 g']},
      {bowl: ['olive oil: eaten 20 g → 30 g']},
    ],
    [
      'another food',
      {'recipes/bowl.md': ['olive oil', 'butter']},
      {bowl: ['olive oil, 100 g: no longer counted', 'butter, 100 g: new']},
    ],
    [
      'a line left out',
      {'recipes/bowl.md': ['  olive oil: { amount: 100 g, eaten: 20 g, because: weighed }\n', '']},
      {bowl: ['olive oil, 100 g: no longer counted']},
    ],
    [
      'a label',
      {'foods.yaml': ['11 g', '10 g']},
      {bowl: ['label of skyr, plain: protein 11 g → 10 g']},
    ],
    [
      'a line of a component, here and where it is used',
      {'recipes/base.md': ['200 g', '250 g']},
      {base: ['pearl barley: 200 g → 250 g'], bowl: ['component base']},
    ],
    [
      'the yield of a component',
      {'recipes/base.md': ['yield: 500 g', 'yield: 400 g']},
      {base: ['yield 500 g → 400 g'], bowl: ['component base']},
    ],
    ['servings', {'recipes/bowl.md': ['serves: 4', 'serves: 5']}, {bowl: ['serves 4 → 5']}],
    [
      'what stays in the pot',
      {'recipes/bowl.md': ['serves: 4', 'serves: 4\nleft behind: 70 g']},
      {bowl: ['left behind none → 70 g']},
    ],
  ])('%s', (_, changed, expected) => {
    expect(told(changedBy(changed))).toEqual(expected)
  })

  test.each<[Parameters<typeof examined>[0]]>([
    [{'recipes/bowl.md': ['serves: 4', 'serves: 5'], 'foods.yaml': ['62 kcal', '70 kcal']}],
    [{'recipes/base.md': ['yield: 500 g', 'yield: 450 g'], 'recipes/bowl.md': ['250 g', '200 g']}],
    [{'recipes/bowl.md': ['yield: 700 g', 'left behind: 20 g\nyield: 650 g']}],
  ])('%j: the effects of the causes add up to the change', (changed) => {
    const {moved} = changedBy(changed)
    expect(moved.length).toBeGreaterThan(0)
    for (const {figures, causes} of moved) {
      for (const {nutrient, before, after: now} of figures) {
        const sum = causes.reduce((total, {effect}) => total + (effect[nutrient] ?? 0), 0)
        expect(sum).toBeCloseTo(now - before, 9)
      }
    }
  })

  test('a recipe that cannot be computed any more is named, and so is what it takes along', () => {
    const report = changedBy({'recipes/base.md': ['pearl barley: 200 g', 'pearl barlei: 200 g']})
    expect(report.uncomputed.map(({slug}) => slug)).toEqual(['base', 'bowl'])
    expect(report.moved).toEqual([])
  })

  test('no title breaks out of the Markdown table', () => {
    const report = changedBy({
      'recipes/bowl.md': [
        'title: Bowl\nserves: 4',
        'title: "A | <b>*x*</b> [y](z) `c`"\nserves: 8',
      ],
    })
    const rows = [...markdownChanges(report)].join('').split('\n')
    expect(rows.find((row) => row.includes('per serving'))).toContain(
      '| A \\| \\<b\\>\\*x\\*\\</b\\> \\[y\\](z) \\`c\\`, per serving | energy |',
    )
  })
})
