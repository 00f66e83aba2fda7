import type {Stated, StatedBasis} from '../cookbook/recipe.ts'
import type {Computed} from '../nutrition/computed.ts'
import {wholeGrams} from '../nutrition/whole-grams.ts'

/** The share of the batch that a stated figure belongs to, 0 to 1; 0 where it cannot be said. */
export function shareOfBatch(
  {basis}: Pick<Stated, 'basis'>,
  {recipe, batchGrams}: Computed,
): number {
  switch (basis) {
    case 'batch':
      return 1
    case 'serving':
      return recipe.serves ? 1 / recipe.serves.value : 0
    case '100 g':
      return batchGrams ? 100 / batchGrams.value : 0
  }
}

/**
 * The computed figures on the basis a page states its own on, and the weight they belong to.
 * @returns nothing where the basis cannot be computed (no `yield` for 100 g)
 */
export function onBasis(basis: StatedBasis, computed: Computed) {
  const {batch, perServing, per100g, recipe} = computed
  const whole = wholeGrams(computed).value
  switch (basis) {
    case 'batch':
      return {figures: batch, grams: whole}
    case '100 g':
      return per100g && {figures: per100g, grams: 100}
    case 'serving':
      return perServing && {figures: perServing, grams: whole / (recipe.serves?.value ?? 1)}
  }
}
