import {describe, expect, test} from 'vitest'
import {examine} from '../../src/build.ts'
import type {SourceText} from '../../src/cookbook/sources.ts'
import {UnderstoodBefore} from '../../src/cookbook/understood-before.ts'

const stock = (grams: number) =>
  `---\ntitle: Stock\nyield: 900 g\ningredients:\n  carrot: ${grams} g\n  water: 900 g\n---\n`
const soup =
  '---\ntitle: Soup\nserves: 2\ningredients:\n  stock: { amount: 400 g, recipe: stock }\n---\n'
const toast = '---\ntitle: Toast\nserves: 1\ningredients:\n  bread: 80 g\n---\n'
const foods = (kcal: number) =>
  `bread:\n  label: { per: 100 g, energy: ${kcal} kcal, protein: 9 g, carbohydrate: 45 g, fat: 3 g }\n`

function cookbook(changed: Readonly<Record<string, string>> = {}): readonly SourceText[] {
  const texts = {
    'foods.yaml': foods(243),
    'recipes/soup.md': soup,
    'recipes/stock.md': stock(200),
    'recipes/toast.md': toast,
    ...changed,
  }
  return Object.entries(texts).map(([path, text]) => ({path, text}))
}

function examined(texts: readonly SourceText[], before?: UnderstoodBefore) {
  return examine({sources: {texts, images: []}, problems: []}, before ? {before} : {})
}

/** What pages and reports can see of it. */
function seen({computed, problems}: ReturnType<typeof examined>) {
  const energy = [...computed].map(([slug, {batch, lines}]) => [
    slug,
    batch.energy.value,
    lines.flatMap(({instead}) => instead.map((choice) => choice.batch.energy.value)),
  ])
  return {energy, problems}
}

describe('a cookbook that is examined again', () => {
  test('keeps what did not change, to the very object', () => {
    const before = new UnderstoodBefore()
    const first = examined(cookbook(), before)
    const second = examined(cookbook(), before)
    expect(second.cookbook.foods).toBe(first.cookbook.foods)
    for (const slug of ['soup', 'stock', 'toast']) {
      expect(second.computed.get(slug)).toBe(first.computed.get(slug))
    }
  })

  test('does again the recipe that changed and those that use it, and no other', () => {
    const before = new UnderstoodBefore()
    const first = examined(cookbook(), before)
    const second = examined(cookbook({'recipes/stock.md': stock(300)}), before)
    const isSame = (slug: string) => second.computed.get(slug) === first.computed.get(slug)
    expect(['soup', 'stock', 'toast'].map(isSame)).toEqual([false, false, true])
    expect(second.cookbook.recipes.get('soup')).toBe(first.cookbook.recipes.get('soup'))
  })

  test.each<readonly [string, Readonly<Record<string, string>>]>([
    ['a component', {'recipes/stock.md': stock(500)}],
    ['a label', {'foods.yaml': foods(300)}],
    ['the settings', {'cookbook.yaml': 'cups: us\nrules: us\n'}],
    ['a component that cannot be understood', {'recipes/stock.md': '---\ntitle: Stock\n---\n'}],
    ['a title', {'recipes/toast.md': toast.replace('Toast', 'Soldiers')}],
    ['a new recipe', {'recipes/jam.md': toast.replace('Toast', 'Jam')}],
    ['a food that is gone', {'foods.yaml': 'milk: { same as: usda/1077 }\n'}],
  ])('says of %s what a first examination says, and so when it is taken back', (_, changed) => {
    const before = new UnderstoodBefore()
    examined(cookbook(), before)
    for (const texts of [cookbook(changed), cookbook()]) {
      expect(seen(examined(texts, before))).toEqual(seen(examined(texts)))
    }
  })

  test('has an alternative again that could not be understood for a while', () => {
    const before = new UnderstoodBefore()
    const choice = '{ amount: 60 g, instead: { stock: { amount: 100 g, recipe: stock } } }'
    const texts = {'recipes/toast.md': toast.replace('80 g', choice)}
    const slip = {...texts, 'recipes/stock.md': stock(200).replace('900 g', 'a lot')}
    for (const each of [slip, texts, slip, texts]) {
      const found = seen(examined(cookbook(each), before))
      expect(found).toEqual(seen(examined(cookbook(each))))
      const toasts = found.energy.find(([slug]) => slug === 'toast')
      expect(toasts?.[2]).toHaveLength(each === slip ? 0 : 1)
    }
  })

  test('forgets a recipe that is gone', () => {
    const before = new UnderstoodBefore()
    examined(cookbook(), before)
    const texts = cookbook().filter(({path}) => path !== 'recipes/stock.md')
    expect(seen(examined(texts, before))).toEqual(seen(examined(texts)))
  })
})
