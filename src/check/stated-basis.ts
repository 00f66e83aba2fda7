import type {Stated} from '../cookbook/recipe.ts'
import type {Computed} from '../nutrition/computed.ts'

/** The share of the batch that a stated figure belongs to, 0 to 1; 0 where it cannot be said. */
export function shareOfBatch({basis}: Stated, {recipe, batchGrams}: Computed): number {
  switch (basis) {
    case 'batch':
      return 1
    case 'serving':
      return recipe.serves ? 1 / recipe.serves.value : 0
    case '100 g':
      return batchGrams ? 100 / batchGrams.value : 0
  }
}
