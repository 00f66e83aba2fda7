import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Problem} from '../cookbook/problem.ts'
import type {Recipe} from '../cookbook/recipe.ts'
import {difference, exact, product, quotient, sum, type Uncertain} from '../units/uncertain.ts'
import {partWeighed, weighed} from './weigh.ts'
import {yieldFactor} from './yield-factor.ts'

/** What comes to the table of what was mixed. */
export interface FinishedBatch {
  /** Grams of the ingredients that stay in the dish. */
  readonly mixedGrams: Uncertain
  /** Finished weight: weighed, or by a yield factor; absent where nobody knows. */
  readonly batchGrams?: Uncertain
  /** Share of the dish that is served, 0 to 1: less where something was left in the pot. */
  readonly servedRatio: Uncertain
  readonly problem?: Omit<Problem, 'file'>
}

/**
 * The finished weight; a weighed one wins over a yield factor.
 * @param usedGrams what went into the pot, rendered fat and drained liquid included: a yield factor
 *   counts from there, for what is poured off is part of what cooking takes away
 * @param mixedGrams what of it stays in the dish
 */
export function finishedBatch(
  recipe: Recipe,
  {usedGrams, mixedGrams}: {readonly usedGrams: Uncertain; readonly mixedGrams: Uncertain},
  cookbook: Cookbook,
): FinishedBatch {
  const {finishedGrams, problem} = finishedWeight(recipe, usedGrams, cookbook)
  const {scaleGrams} = cookbook.settings
  const left =
    recipe.leftBehind &&
    partWeighed(recipe.leftBehind, `what is left behind of ${recipe.title.value}`, scaleGrams)
  return {
    mixedGrams,
    ...withoutLeft({mixedGrams, finishedGrams, left, isWeighed: recipe.batch !== undefined}),
    ...(problem && {problem}),
  }
}

interface Cooked {
  readonly mixedGrams: Uncertain
  readonly finishedGrams: Uncertain | undefined
  /** What stays in the pot. */
  readonly left: Uncertain | undefined
  /** Whether the finished weight was read on a scale. */
  readonly isWeighed: boolean
}

/**
 * What is served, and its share of the pot. A weighed batch is what was taken out of the pot; what a
 * yield factor gives, or else all that was mixed, is still in it.
 */
function withoutLeft({
  mixedGrams,
  finishedGrams,
  left,
  isWeighed,
}: Cooked): Pick<FinishedBatch, 'batchGrams' | 'servedRatio'> {
  if (!left) return {servedRatio: exact(1), ...(finishedGrams && {batchGrams: finishedGrams})}
  if (finishedGrams && isWeighed) {
    return {
      batchGrams: finishedGrams,
      servedRatio: quotient(finishedGrams, sum([finishedGrams, left])),
    }
  }
  const inPot = finishedGrams ?? mixedGrams
  const served = difference(inPot, left)
  return {servedRatio: quotient(served, inPot), ...(finishedGrams && {batchGrams: served})}
}

function finishedWeight(
  recipe: Recipe,
  usedGrams: Uncertain,
  {settings, foods}: Cookbook,
): Pick<FinishedBatch, 'problem'> & {readonly finishedGrams?: Uncertain} {
  if (recipe.batch) {
    const subject = `weighing of the finished ${recipe.title.value}`
    return {
      finishedGrams: weighed(recipe.batch.value, settings.scaleGrams, {kind: 'yield', subject}),
    }
  }
  if (!recipe.yieldFactor) return {}
  const {value: written, place} = recipe.yieldFactor
  const result = yieldFactor(written, foods)
  if (result.ok) return {finishedGrams: product(usedGrams, result.factor)}
  const actual = written.kind === 'like' ? written.cooked : String(written.ratio)
  return {
    problem: {
      ruleId: 'yield-factor-known',
      severity: 'error',
      place,
      reason: `Yield factor \`${actual}\`, expected a number such as \`0.73\` or a cooked food that there is one for`,
      actual,
      expected: result.offered,
      note: `There are factors for: ${result.offered.join('; ')}. A weighed \`yield\` is better than any of them.`,
    },
  }
}
