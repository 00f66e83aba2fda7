import type {Alternative, IngredientLine, Recipe} from '../cookbook/recipe.ts'
import type {Figures} from '../food/figures.ts'
import type {Food} from '../food/food.ts'
import type {Uncertain} from '../units/uncertain.ts'

/** What a name in a recipe turned out to be. */
export type Ingredient =
  | {readonly kind: 'food'; readonly food: Food}
  | {readonly kind: 'component'; readonly recipe: Recipe; readonly computed: Computed}

/** One line, looked up and weighed. */
export interface ComputedLine {
  readonly line: IngredientLine
  readonly group?: string
  readonly ingredient: Ingredient
  /** Counted lines make the figures; optional and uncounted ones never do. */
  readonly role: 'counted' | 'optional' | 'uncounted'
  /** Edible grams that go into the dish as listed, before anything is poured off or left over. */
  readonly grams: Uncertain
  /** Edible grams that go into the pot: without what is cut off, or the part eaten. */
  readonly usedGrams: Uncertain
  /** Grams of those that stay in the dish. */
  readonly staysGrams: Uncertain
  /** Grams to buy: with peel and bone where the line is as purchased or the food has refuse. */
  readonly purchasedGrams: number
  /** What the line adds to the whole batch, after what was left, poured off or evaporated. */
  readonly adds: Figures<'batch'>
  readonly instead: readonly ComputedAlternative[]
}

/** An alternative, with the figures of the serving it would make. */
export interface ComputedAlternative {
  /** As the recipe writes it. */
  readonly choice: Alternative
  readonly name: string
  readonly ingredient: Ingredient
  readonly grams: Uncertain
  /** What it adds to the whole batch, after what evaporates and boils out of the line as well. */
  readonly adds: Figures<'batch'>
  /** Present where the line is poured off or trimmed by a weight that is not the alternative's. */
  readonly isCountedWhole?: true
  readonly batch: Figures<'batch'>
  readonly perServing?: Figures<'serving'>
}

/** Everything the ingredients of one recipe give. */
export interface Computed {
  readonly recipe: Recipe
  readonly lines: readonly ComputedLine[]
  /** Grams of the counted ingredients that stay in the dish, before water is lost or taken up. */
  readonly mixedGrams: Uncertain
  /** Share of the dish that is served, 0 to 1: less where something was left in the pot. */
  readonly servedRatio: Uncertain
  /** Finished batch; unknown (absent) where nobody weighed it. */
  readonly batchGrams?: Uncertain
  /** Finished batch ÷ serves; absent where either is unknown. */
  readonly portionGrams?: Uncertain
  readonly batch: Figures<'batch'>
  readonly perServing?: Figures<'serving'>
  /** Per 100 g of the finished dish; absent where the batch was not weighed. */
  readonly per100g?: Figures<'100 g'>
}
