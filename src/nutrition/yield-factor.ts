import type {YieldFactor} from '../cookbook/recipe.ts'
import type {Figures} from '../food/figures.ts'
import type {Food} from '../food/food.ts'
import type {FoodIndex} from '../food/food-index.ts'
import {difference, exact, quotient, rectangular, sum, type Uncertain} from '../units/uncertain.ts'

/** Which part of the food neither leaves nor enters while it cooks. */
type Conserved = 'protein' | 'dry matter'

/** A raw food of the table and the cooked one it turns into. */
interface Pair {
  readonly raw: string
  readonly cooked: string
  readonly conserved: Conserved
}

/**
 * Pairs whose yield is known well enough to offer. USDA's own Table of Cooking Yields could not be
 * seen; these are derived from USDA SR28: meats by protein, starches and pulses by dry matter.
 */
const pairs: readonly Pair[] = [
  ...pairsBy('protein', [
    ['23572', '23573'],
    ['23572', '23575'],
    ['23562', '23563'],
    ['23562', '23565'],
    ['05062', '05747'],
    ['05062', '05746'],
    ['05062', '05064'],
    ['10040', '10042'],
    ['10040', '10041'],
    ['15236', '15237'],
  ]),
  ...pairsBy('dry matter', [
    ['20444', '20445'],
    ['20036', '20037'],
    ['20420', '20421'],
    ['20035', '20137'],
    ['16069', '16070'],
    ['16027', '16028'],
    ['16042', '16043'],
    ['16056', '16057'],
  ]),
]

function pairsBy(
  conserved: Conserved,
  ndbNumbers: readonly (readonly [raw: string, cooked: string])[],
): readonly Pair[] {
  return ndbNumbers.map(([raw, cooked]) => ({
    raw: `usda/${raw}`,
    cooked: `usda/${cooked}`,
    conserved,
  }))
}

/**
 * How far a derived yield lies from a measured one: full width, as a share of the raw weight.
 * Three figures quoted from USDA's table (grilled chicken breast 75.3 %, lean beef loaf 72 % and
 * crumbles 69 %) differ from ours by up to 3 points.
 */
const derivedWidthRatio = 0.06

/** The factor, or the cooked foods that there is one for. */
export type YieldFactorResult =
  | {readonly ok: true; readonly factor: Uncertain}
  | {readonly ok: false; readonly offered: readonly string[]}

/** Finished weight ÷ weight of the ingredients, 0 and more, with its uncertainty. */
export function yieldFactor(written: YieldFactor, foods: FoodIndex): YieldFactorResult {
  if (written.kind === 'ratio') {
    const source = {kind: 'yield', subject: 'the yield factor'} as const
    return {ok: true, factor: rectangular(written.ratio, written.increment, source)}
  }
  const cooked = foods.lookUp(written.cooked)
  const pair = pairs.find(({cooked: id}) => id === cooked?.id)
  const raw = pair && foods.lookUp(pair.raw)
  if (!cooked || !pair || !raw) return {ok: false, offered: offeredYields(foods)}
  const source = {kind: 'yield', subject: `yield derived for ${cooked.name}`} as const
  const derived = derivedYield(raw, cooked, pair.conserved)
  return {ok: true, factor: sum([derived, rectangular(0, derivedWidthRatio, source)])}
}

/** Names of the cooked foods that a yield factor can be named after. */
export function offeredYields(foods: FoodIndex): readonly string[] {
  return pairs.flatMap(({cooked}) => foods.lookUp(cooked)?.name ?? [])
}

function derivedYield(raw: Food, cooked: Food, conserved: Conserved): Uncertain {
  const of = conserved === 'protein' ? ({protein}: Figures<'100 g'>) => protein : dryMatter
  return quotient(of(raw.per100g), of(cooked.per100g))
}

function dryMatter({water}: Figures<'100 g'>): Uncertain {
  return difference(exact(100), water)
}
