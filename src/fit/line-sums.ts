import type {PublishedNutrient} from '../food/nutrients.ts'
import type {Computed, ComputedLine} from '../nutrition/computed.ts'
import {type Publishing, publishedFigure} from '../nutrition/published.ts'
import {sum} from '../units/uncertain.ts'
import type {LinearSum} from './fit-problem.ts'
import {writtenGrams} from './free-line.ts'

/** What a recipe's figures are as sums over the lines that may change. */
export interface LineSums {
  /** A nutrient of the batch that is served, in its own unit. */
  readonly nutrient: (nutrient: PublishedNutrient) => LinearSum
  /** Grams that are mixed, before water is lost or taken up. */
  readonly mixedGrams: LinearSum
  /** Grams of the batch that is served; absent where nobody knows. */
  readonly batchGrams?: LinearSum
}

/** A line's figures grow with its amount; a weighed batch stays, one by a yield factor grows. */
export function lineSums(
  computed: Computed,
  lines: readonly ComputedLine[],
  publishing: Publishing,
): LineSums {
  const {batch, servedRatio, recipe} = computed
  /** A sum from its value now, and what each line brings to it now. */
  const sumOf = (now: number, brings: (line: ComputedLine) => number): LinearSum => {
    const brought = lines.map(brings)
    return {
      perGram: lines.map((line, index) => (brought[index] ?? 0) / writtenGrams(line)),
      fixed: now - brought.reduce((total, one) => total + one, 0),
    }
  }
  const growth = recipe.batch ? 0 : (factorOf(computed) ?? 0)
  const batchGrams = computed.batchGrams
  return {
    nutrient: (nutrient) =>
      sumOf(publishedFigure(batch, nutrient, publishing).value, (line) => {
        const adds = publishedFigure(line.adds, nutrient, publishing).value * servedRatio.value
        // Water is what the weighed batch has beyond what was mixed.
        if (nutrient !== 'water' || batchGrams === undefined) return adds
        return adds + growth * line.usedGrams.value - line.staysGrams.value * servedRatio.value
      }),
    mixedGrams: sumOf(computed.mixedGrams.value, ({staysGrams}) => staysGrams.value),
    ...(batchGrams && {
      batchGrams: sumOf(batchGrams.value, ({usedGrams}) => growth * usedGrams.value),
    }),
  }
}

/** Finished grams for each gram that goes into the pot, what is left in it counted as well. */
function factorOf({batchGrams, servedRatio, lines}: Computed): number | undefined {
  if (batchGrams === undefined) return undefined
  const used = sum(lines.filter(({role}) => role === 'counted').map((line) => line.usedGrams))
  return batchGrams.value / servedRatio.value / used.value
}
