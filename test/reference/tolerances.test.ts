import {readFileSync} from 'node:fs'
import {expect, test} from 'vitest'
import {mainNutrients} from '../../src/nutrition/published.ts'
import {roundedText} from '../../src/units/format-figure.ts'
import {armedForces} from './worked/armed-forces.ts'
import {armedForcesBakesOff} from './worked/armed-forces-bakes-off.ts'
import {armedForcesDishesOff} from './worked/armed-forces-dishes-off.ts'
import {armedForcesMeatOff} from './worked/armed-forces-meat-off.ts'
import {armedForcesSandwichesOff} from './worked/armed-forces-sandwiches-off.ts'
import {dietaryStudiesBakes} from './worked/dietary-studies-bakes.ts'
import {dietaryStudiesDishes} from './worked/dietary-studies-dishes.ts'
import {dietaryStudiesParts} from './worked/dietary-studies-parts.ts'
import {schoolKitchens} from './worked/school-kitchens.ts'
import {schoolKitchensOff} from './worked/school-kitchens-off.ts'
import {
  gapsPercent,
  ownRatio,
  quantile,
  recipesThatDrift,
  type StudiedPolicy,
  scalePercent,
} from './worked/tolerance-study.ts'
import {computeWorked} from './worked/worked-recipe.ts'

// Every number of the study in docs/tolerances.md, computed again. The recipes' publishers are
// named in test/reference/worked/.

const docs = readFileSync(new URL('../../docs/tolerances.md', import.meta.url), 'utf8')

const households = [...dietaryStudiesBakes, ...dietaryStudiesDishes]
const fromRelease = [...dietaryStudiesParts, ...households]
const fromOwnRecords = [...armedForces, ...schoolKitchens]
const withFault = [
  ...armedForcesBakesOff,
  ...armedForcesDishesOff,
  ...armedForcesMeatOff,
  ...armedForcesSandwichesOff,
  ...schoolKitchensOff,
]

function row(...cells: readonly (string | number)[]): string {
  return `| ${cells.join(' | ')} |`
}

function percent(value: number): string {
  return roundedText(value, 2)
}

const none = new Map<never, never>()

test.each<readonly [string, StudiedPolicy]>([
  ['`strict`', {tolerance: 'strict', tolerances: none}],
  ['1 % of the figure', ownRatio(0.01)],
  ['2 % of the figure', ownRatio(0.02)],
  ['5 % of the figure', ownRatio(0.05)],
  ['`household`', {tolerance: 'household', tolerances: none}],
  ['`us both ways`', {tolerance: 'us both ways', tolerances: none}],
  ['`us`', {tolerance: 'us', tolerances: none}],
  ['`eu`', {tolerance: 'eu', tolerances: none}],
])('what %s calls drift', (name, policy) => {
  const counts = [fromRelease, fromOwnRecords, withFault].map((recipes) =>
    recipesThatDrift(recipes, policy),
  )
  expect(docs).toContain(row(name, ...counts))
})

test('how many recipes there are', () => {
  expect(docs).toContain(
    row('recipes', fromRelease.length, fromOwnRecords.length, withFault.length),
  )
})

test.each(mainNutrients)('how far printed %s is from computed', (nutrient) => {
  const cells = [fromRelease, fromOwnRecords].flatMap((recipes) => {
    const gaps = gapsPercent(recipes, nutrient)
    return [quantile(gaps, 0.5), quantile(gaps, 0.9)].map(percent)
  })
  expect(docs).toContain(row(nutrient, ...cells))
})

const dishes = [...computeWorked(fromRelease).values()].filter(({recipe}) =>
  households.some(({title}) => title === recipe.title.value),
)

test.each([1, 2, 5])('what a %d g scale leaves open', (scaleGrams) => {
  expect(dishes).toHaveLength(households.length)
  const cells = mainNutrients.flatMap((nutrient) => {
    const shares = dishes.map((one) => scalePercent(one, nutrient, scaleGrams))
    return [quantile(shares, 0.5), quantile(shares, 0.9)].map(percent)
  })
  expect(docs).toContain(row(`${scaleGrams} g`, ...cells))
})

test.each([5, 15, 30])('what %d g left in the bowl are of a batch', (leftGrams) => {
  const shares = dishes.map(({batchGrams}) => (100 * leftGrams) / (batchGrams?.value ?? NaN))
  const cells = [quantile(shares, 0.1), quantile(shares, 0.5), quantile(shares, 0.9)].map(percent)
  expect(docs).toContain(row(`${leftGrams} g`, ...cells))
})

// A tablespoon of butter: USDA SR28 (2015), NDB 01001, 14.2 g at 717 kcal per 100 g.
test('what a tablespoon of butter that nobody listed is of the energy of a batch', () => {
  const butterKcal = 0.142 * 717
  const shares = dishes.map(({batch}) => (100 * butterKcal) / batch.energy.value)
  const cells = [quantile(shares, 0.1), quantile(shares, 0.5), quantile(shares, 0.9)].map(percent)
  expect(docs).toContain(row('a tablespoon of butter, energy', ...cells))
  const found = [2, 5].map((tolerated) => shares.filter((share) => share > tolerated).length)
  expect(docs).toContain(`${found[0]} of the ${dishes.length} dishes at 2 %, in ${found[1]} at 5 %`)
})
