import {
  type Basis,
  type Figures,
  figuresMadeAnew,
  figuresOf,
  known,
  weightedSum,
} from '../food/figures.ts'
import {difference, exact, product, quotient, scaled, type Uncertain} from '../units/uncertain.ts'
import type {Computed} from './computed.ts'
import type {FinishedBatch} from './finished-batch.ts'

/** From what the lines add to a batch, a serving and 100 g: a build and a page in a browser share it. */

/**
 * The figures of what is served. Where the finished weight is known, what the batch lost or took
 * up against the ingredients is water (Greenfield & Southgate, Food Composition Data, FAO 2003).
 */
export function servedFigures(
  adds: readonly Figures<'batch'>[],
  {mixedGrams, batchGrams, servedRatio}: FinishedBatch,
): Figures<'batch'> {
  const one = known(exact(1))
  const mixed = total(adds)
  return figuresOf((nutrient) =>
    weightedSum([
      {figure: mixed[nutrient], weight: servedRatio},
      ...(nutrient === 'water' && batchGrams
        ? [{figure: one, weight: difference(batchGrams, product(mixedGrams, servedRatio))}]
        : []),
    ]),
  )
}

/** What lines add together. */
export function total(adds: readonly Figures<'batch'>[]): Figures<'batch'> {
  return figuresMadeAnew((nutrient) =>
    weightedSum(adds.map((figures) => ({figure: figures[nutrient], weight: exact(1)}))),
  )
}

/** The batch shared out to servings and to 100 g, as far as their number and its weight are known. */
export function sharedOut(
  batch: Figures<'batch'>,
  serves: number | undefined,
  batchGrams: Uncertain | undefined,
): Pick<Computed, 'batchGrams' | 'portionGrams' | 'perServing' | 'per100g'> {
  return {
    ...(serves !== undefined && {perServing: divided<'serving'>(batch, exact(serves))}),
    ...(batchGrams && {batchGrams, per100g: divided<'100 g'>(batch, scaled(batchGrams, 1 / 100))}),
    ...(batchGrams && serves !== undefined && {portionGrams: scaled(batchGrams, 1 / serves)}),
  }
}

function divided<B extends Basis>(batch: Figures<'batch'>, divisor: Uncertain): Figures<B> {
  const weight = quotient(exact(1), divisor)
  return figuresOf((nutrient) => weightedSum([{figure: batch[nutrient], weight}]))
}
