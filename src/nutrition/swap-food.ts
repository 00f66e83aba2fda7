import {type Basis, type Figures, figuresOf, weightedSum} from '../food/figures.ts'
import type {Food} from '../food/food.ts'
import type {WeightAmount} from '../units/amount.ts'
import {formatFigure} from '../units/format-figure.ts'
import {exact, sum} from '../units/uncertain.ts'
import {alternativeAdds} from './compute-alternative.ts'
import type {Computed, ComputedLine} from './computed.ts'
import {type MeasuredOut, measureOut} from './measure-out.ts'
import {servedFigures, sharedOut, total} from './share-out.ts'

/** The lines of a recipe that one food or component is used in. */
export interface Use {
  readonly computed: Computed
  /** One or more. Optional ones count as a reader has the dish who adds them. */
  readonly lines: readonly ComputedLine[]
  /** Further lines of it that do not count, and stay as they are. */
  readonly aside: readonly ComputedLine[]
}

/** A food in the place of what a recipe uses. */
export interface Swap {
  readonly food: Food
  /** Edible grams as listed, of all the lines together. */
  readonly grams: number
  /** What they add to the whole batch, as those of an alternative do. */
  readonly adds: Figures<'batch'>
  /** The dish with it: a serving, or the batch where nobody said how many it serves. */
  readonly dish: Figures<Basis>
  /** Present where a line is poured off or trimmed by a weight that is not the food's. */
  readonly isCountedWhole?: true
}

/** What the lines add to the whole batch as they are. */
export function usedAdds({lines}: Use): Figures<'batch'> {
  return total(lines.map(({adds}) => adds))
}

/** Edible grams as listed. */
export function usedGrams({lines}: Use): number {
  return sum(lines.map(({grams}) => grams)).value
}

/** The share of the batch that the figures of a dish are of, 0 to 1: less where some stays in the pot. */
function dishRatio({computed: {servedRatio, recipe}}: Use): number {
  return servedRatio.value / (recipe.serves?.value ?? 1)
}

/** What the lines bring to a serving, or to the batch: what foods in their place are compared with. */
export function usedInDish(use: Use): Figures<Basis> {
  const adds = usedAdds(use)
  const weight = exact(dishRatio(use))
  return figuresOf((nutrient) => weightedSum([{figure: adds[nutrient], weight}]))
}

/** The dish as it is written: a serving, or the batch where nobody said how many it serves. */
export function writtenDish(use: Use): Figures<Basis> {
  return dishWith(use, usedAdds(use))
}

/**
 * Hundreds of grams of a food that a serving, or the batch, would have in the place of the lines;
 * what of a line is cut off or left over, is of the food too.
 * @param food absent for one that no measure has a weight of: it is weighed
 */
export function hundredsInDish(use: Use, scaleGrams: number, food?: Food): number {
  const eaten = use.lines.map((line) => {
    const grams = food ? measuredFor(line, food, scaleGrams).grams.value : line.grams.value
    return line.line.eaten ? (grams * line.usedGrams.value) / line.grams.value : grams
  })
  return (eaten.reduce((all, grams) => all + grams, 0) * dishRatio(use)) / 100
}

/** The recipe with a food in the place of the lines, by the sums a build does of an alternative. */
export function swapped(use: Use, food: Food, scaleGrams: number): Swap {
  const ingredient = {kind: 'food', food} as const
  const parts = use.lines.map((line) => {
    const measured = measuredFor(line, food, scaleGrams)
    return {grams: measured.grams, ...alternativeAdds(line, ingredient, measured)}
  })
  const adds = total(parts.map((part) => part.adds))
  return {
    food,
    grams: sum(parts.map(({grams}) => grams)).value,
    adds,
    dish: dishWith(use, adds),
    ...(parts.some(({isCountedWhole}) => isCountedWhole) && {isCountedWhole: true}),
  }
}

/** The lines of the dish that stay, with what stands in the place of those used. */
function dishWith({computed, lines}: Use, adds: Figures<'batch'>): Figures<Basis> {
  const others = computed.lines.filter((line) => line.role === 'counted' && !lines.includes(line))
  const batch = servedFigures(
    [...others.map((line) => line.adds), adds],
    finishedWith(computed, lines),
  )
  return sharedOut(batch, computed.recipe.serves?.value, undefined).perServing ?? batch
}

/** An optional line makes what is mixed and what is finished heavier. */
function finishedWith(
  {mixedGrams, batchGrams, servedRatio}: Computed,
  lines: readonly ComputedLine[],
): Pick<Computed, 'mixedGrams' | 'batchGrams' | 'servedRatio'> {
  const added = lines.filter(({role}) => role === 'optional').map(({staysGrams}) => staysGrams)
  return {
    mixedGrams: sum([mixedGrams, ...added]),
    servedRatio,
    ...(batchGrams && {batchGrams: sum([batchGrams, ...added])}),
  }
}

/**
 * As much of a food as a line has. A spoon or cup is filled with it, where the food has a weight for
 * that; else the same edible grams: a medium onion is no measure of carrots.
 */
function measuredFor(computedLine: ComputedLine, food: Food, scaleGrams: number): MeasuredOut {
  const ingredient = {kind: 'food', food} as const
  const {name, amount, isBought} = computedLine.line
  const {kind} = amount.value
  if (kind === 'volume' || (kind === 'weight' && !isBought)) {
    const asWritten = measureOut({name, amount}, ingredient, scaleGrams)
    if (asWritten.ok) return asWritten.value
  }
  const value = sameWeight(computedLine, scaleGrams)
  const weighed = measureOut({name, amount: {...amount, value}}, ingredient, scaleGrams)
  if (weighed.ok) return weighed.value
  throw new Error(`${value.text} of ${food.name} was not weighed`)
}

function sameWeight({grams: {value}}: ComputedLine, scaleGrams: number): WeightAmount {
  return {
    kind: 'weight',
    text: formatFigure(value, 'g'),
    grams: {value, halfRange: 0, increment: scaleGrams},
  }
}
