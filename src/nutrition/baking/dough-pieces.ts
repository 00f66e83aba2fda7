/** A batch divided into pieces. */
export interface DoughPieces {
  readonly count: number
  readonly gramsEach: number
  /** What is left of the batch, 0 and up. */
  readonly leftGrams: number
}

/** Divides a batch into a number of equal pieces, to the whole gram. */
export function piecesByCount(batchGrams: number, count: number): DoughPieces {
  const gramsEach = Math.floor(batchGrams / count)
  return {count, gramsEach, leftGrams: batchGrams - count * gramsEach}
}

/** Cuts as many pieces of a weight as the batch gives. */
export function piecesByWeight(batchGrams: number, gramsEach: number): DoughPieces {
  const count = Math.floor(batchGrams / gramsEach)
  return {count, gramsEach, leftGrams: batchGrams - count * gramsEach}
}
