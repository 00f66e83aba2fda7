import {beforeAll, describe, expect, test} from 'vitest'
import {type Examined, examine} from '../../src/build.ts'
import type {SourceText} from '../../src/cookbook/sources.ts'
import {seededRandom} from '../seeded-random.ts'

// A national table of the size of USDA SR28 (8,789 foods) and three thousand recipes, generated: the
// texts go the whole way, and what comes out is held against plain sums of the numbers they were
// written from.

const tableSize = 8_789
const recipeCount = 3_000
const nutrients = ['energy', 'protein', 'fat', 'carbohydrate', 'sodium'] as const

type Row = Readonly<Record<(typeof nutrients)[number], number>>

interface Line {
  readonly row: number
  readonly grams: number
}

interface Written {
  readonly slug: string
  readonly serves: number
  readonly lines: readonly Line[]
}

const random = seededRandom(8_789)

/** A whole number from `from` to `to`. */
function whole(from: number, to: number): number {
  return from + Math.floor(random() * (to - from + 1))
}

/** From 0 to `to`, with two digits behind the point, as a table prints it. */
function printed(to: number): number {
  return Number((random() * to).toFixed(2))
}

/** Macros within 100 g and energy of them: else another method of working energy out might fit. */
const rows: readonly Row[] = Array.from({length: tableSize}, () => {
  const [protein, fat, carbohydrate] = [printed(30), printed(30), printed(40)]
  const energy = Math.round(4 * protein + 9 * fat + 4 * carbohydrate)
  return {energy, protein, fat, carbohydrate, sodium: whole(0, 2_000)}
})

const recipes: readonly Written[] = Array.from({length: recipeCount}, (_, index) => ({
  slug: `dish-${index}`,
  serves: whole(1, 8),
  lines: Array.from({length: whole(3, 12)}, () => ({
    row: whole(0, tableSize - 1),
    grams: whole(1, 800),
  })),
}))

/** Independent of the program: one sum after the other. */
function perServing({lines, serves}: Written): Row {
  const sum = (nutrient: keyof Row): number => {
    let total = 0
    for (const {row, grams} of lines) total += ((rows[row]?.[nutrient] ?? NaN) * grams) / 100
    return total / serves
  }
  return {
    energy: sum('energy'),
    protein: sum('protein'),
    fat: sum('fat'),
    carbohydrate: sum('carbohydrate'),
    sodium: sum('sodium'),
  }
}

const columns = 'id\tname\tgroup\tenergy_kcal\tprotein_g\tfat_g\tcarbohydrate_g\tsodium_mg'

function tableText(): string {
  const lines = rows.map(({energy, protein, fat, carbohydrate, sodium}, index) =>
    [
      idOf(index),
      `food ${index}`,
      'grains',
      energy,
      protein.toFixed(2),
      fat.toFixed(2),
      carbohydrate.toFixed(2),
      sodium,
    ].join('\t'),
  )
  return `${[columns, ...lines].join('\n')}\n`
}

function idOf(row: number): string {
  return String(row).padStart(5, '0')
}

/** @param slipKcal added to the energy that is stated */
function recipeText(recipe: Written, slipKcal: number): string {
  const {energy, protein, fat, carbohydrate, sodium} = perServing(recipe)
  return [
    '---',
    `title: Dish ${recipe.slug}`,
    `serves: ${recipe.serves}`,
    'ingredients:',
    ...recipe.lines.map(
      ({row, grams}, index) =>
        `  part ${index + 1}: { amount: ${grams} g, food: large/${idOf(row)} }`,
    ),
    `stated: { energy: ${Math.round(energy) + slipKcal} kcal, protein: ${Math.round(protein)} g, carbohydrate: ${Math.round(carbohydrate)} g, fat: ${Math.round(fat)} g, sodium: ${Math.round(sodium)} mg }`,
    '---',
    '',
  ].join('\n')
}

/** Every hundredth recipe states a quarter more energy than its foods give. */
function slipKcal(recipe: Written, index: number): number {
  return index % 100 === 99 ? Math.ceil(perServing(recipe).energy / 4) : 0
}

describe('A table of 8,789 foods and 3,000 recipes checked against it', () => {
  const slips = recipes.filter((_, index) => index % 100 === 99)
  let found: Examined

  beforeAll(() => {
    const texts: readonly SourceText[] = [
      {path: 'cookbook.yaml', text: 'title: Large\nrules: us\ncarbohydrate: total\n'},
      ...recipes.map((recipe, index) => ({
        path: `recipes/${recipe.slug}.md`,
        text: recipeText(recipe, slipKcal(recipe, index)),
      })),
      {path: 'tables/large.tsv', text: tableText()},
    ]
    found = examine({sources: {texts, images: []}, problems: []})
    // Seconds by itself, more on a busy machine.
  }, 120_000)

  test('computes every recipe', () => {
    expect(found.computed.size).toBe(recipeCount)
  })

  test('gives the plain sums, to the rounding of floating point', () => {
    let furthest = 0
    for (const recipe of recipes) {
      const expected = perServing(recipe)
      const figures = found.computed.get(recipe.slug)?.perServing
      for (const nutrient of nutrients) {
        const gap = Math.abs((figures?.[nutrient].value ?? NaN) - expected[nutrient])
        furthest = Math.max(furthest, gap / Math.max(1, expected[nutrient]))
      }
    }
    expect(furthest).toBeLessThan(1e-12)
  })

  test('says which thirty state another energy, and nothing of the others', () => {
    const errors = found.problems.filter(({severity}) => severity === 'error')
    const told = new Set(errors.map(({file}) => file))
    expect(told).toEqual(new Set(slips.map(({slug}) => `recipes/${slug}.md`)))
    expect(new Set(errors.map(({ruleId}) => ruleId))).toEqual(new Set(['stated-macros']))
  })
})
