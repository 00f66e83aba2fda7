import type {Recipe} from '../cookbook/recipe.ts'
import type {Computed} from '../nutrition/computed.ts'

/** What the plugins leave on a file for each other, and for whoever comes after them. */
declare module 'vfile' {
  interface DataMap {
    /** By `remarkRecipe`; absent where the file could not be understood. */
    recipe: Recipe
    /** By `remarkNutrition`; absent where a line could not be looked up or weighed. */
    computed: Computed
    /** By `remarkNutrition`: every recipe of the cookbook that could be computed, by slug. */
    computedRecipes: ReadonlyMap<string, Computed>
  }
}
