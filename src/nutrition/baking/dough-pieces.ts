import type {Computed} from '../computed.ts'

/** A batch divided into pieces. */
export interface DoughPieces {
  readonly count: number
  readonly gramsEach: number
  /** What is left of the batch, 0 and up. */
  readonly leftGrams: number
}

/**
 * The pieces a recipe divides its dough into. A recipe that serves somebody divides what it mixed,
 * and weighs the finished batch after baking; a component that serves nobody divides its batch.
 * @returns undefined where the recipe has no `pieces` or `piece`, or a piece outweighs the dough
 */
export function doughPieces({recipe, mixedGrams, batchGrams}: Computed): DoughPieces | undefined {
  const divided = recipe.pieces?.value
  if (divided === undefined) return undefined
  const {value: doughGrams} = recipe.serves ? mixedGrams : (batchGrams ?? mixedGrams)
  const pieces =
    divided.kind === 'count'
      ? piecesByCount(doughGrams, divided.count)
      : piecesByWeight(doughGrams, divided.gramsEach)
  return pieces.count > 0 && pieces.gramsEach > 0 ? pieces : undefined
}

/** Divides a batch into a number of equal pieces, to the whole gram. */
export function piecesByCount(batchGrams: number, count: number): DoughPieces {
  const gramsEach = wholeTimes(batchGrams, count)
  return {count, gramsEach, leftGrams: left(batchGrams, count * gramsEach)}
}

/** Cuts as many pieces of a weight as the batch gives. */
export function piecesByWeight(batchGrams: number, gramsEach: number): DoughPieces {
  const count = wholeTimes(batchGrams, gramsEach)
  return {count, gramsEach, leftGrams: left(batchGrams, count * gramsEach)}
}

/** A sum of weights ends in noise: 760 g of five lines may be 759.9999999999999. */
const noiseGrams = 1e-9

function wholeTimes(grams: number, part: number): number {
  return Math.floor((grams + noiseGrams) / part)
}

function left(batchGrams: number, usedGrams: number): number {
  return Math.max(0, batchGrams - usedGrams)
}
