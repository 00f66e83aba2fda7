import type {StatedBasis} from '../cookbook/recipe.ts'
import type {NutrientUnit, PublishedNutrient} from '../food/nutrients.ts'

/** How `compare` prints what moved. */
export const compareFormats = ['text', 'json', 'markdown'] as const

export type CompareFormat = (typeof compareFormats)[number]

/** What moved between two states of a cookbook: these types are the JSON of `compare`. */
export interface ChangeReport {
  /** Recipes of both whose figures moved, in slug order. */
  readonly moved: readonly RecipeChange[]
  /** Recipes that only the later, or only the earlier state has. */
  readonly added: readonly NamedRecipe[]
  readonly removed: readonly NamedRecipe[]
  /** Recipes of both that one of them could not compute. */
  readonly uncomputed: readonly NamedRecipe[]
  /** Recipes whose figures stayed. */
  readonly unchanged: number
}

export interface NamedRecipe {
  readonly slug: string
  /** From the folder the command runs in, as the writer types it. */
  readonly file: string
  readonly title: string
}

export interface RecipeChange extends NamedRecipe {
  readonly per: StatedBasis
  /** Figures that moved, in the order of `publishedNutrients`. */
  readonly figures: readonly FigureChange[]
  /** What did it, most energy first; the effects add up to the changes. */
  readonly causes: readonly Cause[]
}

export interface FigureChange {
  readonly nutrient: PublishedNutrient
  readonly before: number
  readonly after: number
  readonly unit: NutrientUnit
}

export interface Cause {
  /** `pearl barley: 180 g → 200 g`, `label of skyr, plain: protein 11 g → 10 g`. */
  readonly what: string
  /** What it changed of each figure that moved, in the nutrient's unit. */
  readonly effect: Readonly<Partial<Record<PublishedNutrient, number>>>
}
