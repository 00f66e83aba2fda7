import type {Food} from '../food/food.ts'

/** A thing a shopper counts: an onion, an egg. */
export interface Piece {
  /** `medium`, `large`; empty for a food that comes in one size. */
  readonly size: string
  /** As bought, with peel and bone. */
  readonly grams: number
}

/** Measures that are one whole piece, the likeliest size first. */
const pieceMeasures = ['each', 'medium', 'large', 'small'] as const

/** Below this nobody counts: a shopper weighs raisins. The project's choice, g. */
const leastPieceGrams = 20

/** What one piece of a food weighs at the shop; undefined for what is not bought by the piece. */
export function pieceOf({measures, refuseRatio}: Food): Piece | undefined {
  for (const measure of pieceMeasures) {
    const edibleGrams = measures.get(measure)
    if (edibleGrams === undefined) continue
    if (edibleGrams < leastPieceGrams) return undefined
    return {size: measure === 'each' ? '' : measure, grams: edibleGrams / (1 - refuseRatio)}
  }
  return undefined
}
