import type {Settings} from '../cookbook/cookbook.ts'
import type {Basis, Figures} from '../food/figures.ts'
import {isComplete} from '../food/figures.ts'
import type {Aisle, Allergen, Food} from '../food/food.ts'
import type {PublishedNutrient} from '../food/nutrients.ts'
import type {Computed} from '../nutrition/computed.ts'
import {containedAllergens} from '../nutrition/contained-allergens.ts'
import {
  mainNutrients,
  type Publishing,
  publishedBy,
  publishedFigure,
} from '../nutrition/published.ts'
import {type Swap, type Use, usedAdds, usedGrams, writtenDish} from '../nutrition/swap-food.ts'
import {figuresReport, withoutNoise} from './figure-report.ts'
import type {FiguresReport} from './report.ts'

/** What is told of a swap: salt too, for it is where bought differs most from homemade. */
export const swapNutrients = [...mainNutrients, 'salt'] as const

/** What a recipe uses of a food or component, and what others in its place would change. */
export interface SwapsReport {
  readonly recipe: {readonly slug: string; readonly title: string}
  /** What `dish` and `change` are per. */
  readonly per: 'serving' | 'batch'
  readonly wanted: UsedReport
  /** Nearest first. */
  readonly foods: readonly SwapReport[]
}

export interface UsedReport extends InDishReport {
  readonly name: string
  /** As the recipe calls them. */
  readonly lines: readonly string[]
  /** Further lines of it, optional or uncounted, that stay as they are. */
  readonly aside: readonly string[]
  /** Present where only optional lines have it: the dish is that of a reader who adds them. */
  readonly optional?: true
}

interface InDishReport {
  /** Edible grams as listed, of all the lines. */
  readonly grams: number
  /** What they add to the whole batch. */
  readonly adds: FiguresReport
  readonly dish: FiguresReport
}

export interface SwapReport extends InDishReport {
  readonly id: string
  readonly name: string
  readonly aisle: Aisle
  /** Left out where a figure of one of the two is unknown; units as in `dish`. */
  readonly change: Readonly<Partial<Record<PublishedNutrient, number>>>
  /** How far the macros of the dish move, kcal. */
  readonly apart: number
  /** Allergens that nothing in the dish holds for sure. */
  readonly brings: readonly Allergen[]
  /** Traces its packet warns of and nothing else in the dish. */
  readonly mayBring: readonly Allergen[]
  /** Present where nobody has said what it holds. */
  readonly allergensUnknown?: true
  /** Present where a line is poured off or trimmed by a weight that is not the food's. */
  readonly countedWhole?: true
}

/** A swap and how far it moves the macros of the dish, kcal. */
export interface NearSwap extends Swap {
  readonly distanceKcal: number
}

/** @param name of the food or component as such */
export function swapsReport(
  name: string,
  use: Use,
  swaps: readonly NearSwap[],
  settings: Settings,
): SwapsReport {
  const {computed, lines, aside} = use
  const {slug, title, serves} = computed.recipe
  const publishing = publishedBy(settings, computed.recipe)
  const before = {adds: usedAdds(use), dish: writtenDish(use), grams: usedGrams(use)}
  return {
    recipe: {slug, title: title.value},
    per: serves ? 'serving' : 'batch',
    wanted: {
      name,
      lines: lines.map(({line}) => line.name.value),
      aside: aside.map(({line}) => line.name.value),
      ...(lines.every(({role}) => role === 'optional') && {optional: true}),
      ...inDish(before, publishing),
    },
    foods: swaps.map((swap) => ({
      ...foodReport(swap, computed),
      ...inDish(swap, publishing),
      change: change(before, swap, publishing),
      apart: withoutNoise(swap.distanceKcal),
      ...(swap.isCountedWhole && {countedWhole: true}),
    })),
  }
}

interface InDish {
  readonly grams: number
  readonly adds: Figures<'batch'>
  readonly dish: Figures<Basis>
}

function inDish({grams, adds, dish}: InDish, publishing: Publishing): InDishReport {
  return {
    grams: withoutNoise(grams),
    adds: figuresReport(adds, publishing, swapNutrients),
    dish: figuresReport(dish, publishing, swapNutrients),
  }
}

/** A figure that the rest of the dish lacks takes nothing from the change. */
function change(before: InDish, after: InDish, publishing: Publishing): SwapReport['change'] {
  const published = (figures: Figures<Basis>, nutrient: PublishedNutrient): number =>
    publishedFigure(figures, nutrient, publishing).value
  const isKnown = (nutrient: PublishedNutrient): boolean =>
    [before, after].every(({adds}) => isComplete(publishedFigure(adds, nutrient, publishing)))
  return Object.fromEntries(
    swapNutrients
      .filter(isKnown)
      .map((nutrient) => [
        nutrient,
        withoutNoise(published(after.dish, nutrient) - published(before.dish, nutrient)),
      ]),
  )
}

function foodReport(
  {food}: {readonly food: Food},
  computed: Computed,
): Pick<SwapReport, 'id' | 'name' | 'aisle' | 'brings' | 'mayBring' | 'allergensUnknown'> {
  const {contains, mayContain} = containedAllergens(computed)
  const isNew = (allergen: Allergen): boolean => !contains.has(allergen)
  return {
    id: food.id,
    name: food.name,
    aisle: food.aisle,
    brings: [...food.contains].filter(isNew),
    mayBring: [...food.mayContain].filter((each) => isNew(each) && !mayContain.has(each)),
    ...(!food.allergensKnown && {allergensUnknown: true}),
  }
}
