import {onBasis} from '../check/stated-basis.ts'
import type {Settings} from '../cookbook/cookbook.ts'
import type {Recipe, StatedBasis} from '../cookbook/recipe.ts'
import type {PublishedNutrient} from '../food/nutrients.ts'
import type {Computed, ComputedLine} from '../nutrition/computed.ts'
import {publishedBy, publishedFigure} from '../nutrition/published.ts'
import {roundedText} from '../units/format-figure.ts'
import type {Cause} from './change-report.ts'
import {withoutNoise} from './figure-report.ts'
import {lineDifference} from './line-difference.ts'

/** One state of a recipe, with the settings its figures are published by. */
export interface RecipeState {
  readonly computed: Computed
  readonly settings: Settings
}

interface Told {
  readonly per: StatedBasis
  /** Figures that moved. */
  readonly nutrients: readonly PublishedNutrient[]
}

/**
 * What moved the figures of a recipe. A figure is the sum of its lines times the share that goes
 * into a serving, so its change is the change of each line at the later share, and the change of
 * the share on the earlier sum: together they are all of it.
 */
export function causesOf(before: RecipeState, after: RecipeState, told: Told): readonly Cause[] {
  const earlier = countedLines(before)
  const later = countedLines(after)
  const anchors = new Set([...earlier.keys(), ...later.keys()])
  const causes = [...anchors].flatMap((anchor) => {
    const [one, other] = [earlier.get(anchor), later.get(anchor)]
    const effect = effectOf(told.nutrients, (nutrient) => {
      const change = added(other, nutrient, after) - added(one, nutrient, before)
      return change * shareOf(after, nutrient, told.per)
    })
    const what = whatHappened(one, other, told.nutrients)
    return effect === undefined ? [] : [{what, effect}]
  })
  const sharing = effectOf(
    told.nutrients,
    (nutrient) =>
      sumOf(before, nutrient) *
      (shareOf(after, nutrient, told.per) - shareOf(before, nutrient, told.per)),
  )
  const shared =
    sharing === undefined ? [] : [{what: sharingDifference(before, after), effect: sharing}]
  return [...causes, ...shared].toSorted((left, right) => size(right, told) - size(left, told))
}

/** By anchor, which is unique in a recipe. */
function countedLines({computed}: RecipeState): ReadonlyMap<string, ComputedLine> {
  const counted = computed.lines.filter(({role}) => role === 'counted')
  return new Map(counted.map((line) => [line.line.anchor, line]))
}

function added(
  line: ComputedLine | undefined,
  nutrient: PublishedNutrient,
  {computed, settings}: RecipeState,
): number {
  const publishing = publishedBy(settings, computed.recipe)
  return line ? publishedFigure(line.adds, nutrient, publishing).value : 0
}

function sumOf(state: RecipeState, nutrient: PublishedNutrient): number {
  return [...countedLines(state).values()].reduce(
    (sum, line) => sum + added(line, nutrient, state),
    0,
  )
}

/** The share of what the lines add that one serving (or 100 g, or the batch) holds. */
function shareOf(state: RecipeState, nutrient: PublishedNutrient, per: StatedBasis): number {
  const {computed, settings} = state
  const figures = onBasis(per, computed)?.figures ?? computed.batch
  const sum = sumOf(state, nutrient)
  const publishing = publishedBy(settings, computed.recipe)
  return sum === 0 ? 0 : publishedFigure(figures, nutrient, publishing).value / sum
}

/** Share of a change below which a cause is the noise of adding doubles. */
const noiseRatio = 1e-9

function effectOf(
  nutrients: readonly PublishedNutrient[],
  change: (nutrient: PublishedNutrient) => number,
): Cause['effect'] | undefined {
  const effect = nutrients.map((nutrient) => [nutrient, withoutNoise(change(nutrient))] as const)
  const isSomething = effect.some(([, value]) => Math.abs(value) > noiseRatio)
  return isSomething ? Object.fromEntries(effect) : undefined
}

function whatHappened(
  before: ComputedLine | undefined,
  after: ComputedLine | undefined,
  nutrients: readonly PublishedNutrient[],
): string {
  if (before && after) {
    const difference = lineDifference(before, after, nutrients)
    return difference.join('; ') || `${after.line.name.value}: settings of the cookbook`
  }
  const [line, word] = after ? [after, 'new'] : [before, 'no longer counted']
  return line ? `${line.line.name.value}, ${line.line.amount.value.text}: ${word}` : word
}

/** `serves 4 → 5`, `yield 1480 g → 1500 g`: what decides how a batch is shared out. */
function sharingDifference(before: RecipeState, after: RecipeState): string {
  const [from, to] = [sharing(before.computed.recipe), sharing(after.computed.recipe)]
  const changed = Object.keys(to).flatMap((term) =>
    from[term] === to[term] ? [] : [`${term} ${from[term] ?? 'none'} → ${to[term] ?? 'none'}`],
  )
  // Where nobody weighed the batch, its weight follows from the lines.
  return changed.join(', ') || 'weight of the batch'
}

function sharing(recipe: Recipe): Readonly<Record<string, string | undefined>> {
  const factor = recipe.yieldFactor?.value
  return {
    serves: recipe.serves && String(recipe.serves.value),
    yield: recipe.batch?.value.text,
    'yield factor':
      factor && (factor.kind === 'ratio' ? roundedText(factor.ratio, 2) : factor.cooked),
    'left behind': recipe.leftBehind?.value.text,
  }
}

/** Energy first; the largest effect where energy did not move. */
function size({effect}: Cause, {nutrients}: Told): number {
  const [first] = nutrients
  return Math.abs((first && effect[first]) ?? 0)
}
