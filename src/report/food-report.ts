import type {Settings} from '../cookbook/cookbook.ts'
import {type Figures, isComplete} from '../food/figures.ts'
import type {Aisle, Allergen, Food} from '../food/food.ts'
import type {NearFood} from '../food/nearest-foods.ts'
import {type PublishedNutrient, publishedNutrients} from '../food/nutrients.ts'
import type {FoodUse} from '../nutrition/uses-of-food.ts'
import {figureReport, withoutNoise} from './figure-report.ts'
import {macros, publishedOfFood, type ShownFood, sourceText} from './food-text.ts'
import type {FiguresReport} from './report.ts'

type Carbohydrate = Settings['carbohydrate']

/** A food as `foods find` and `foods like` have it in JSON: macros alone. */
export interface FoodReport {
  readonly id: string
  readonly name: string
  readonly aisle: Aisle
  /** What nobody published is left out. */
  readonly per100g: FiguresReport
}

/** How far the macros of a food are from those looked for; kcal per 100 g. */
export interface NearFoodReport extends FoodReport {
  readonly apart: number
}

/** A food as `foods show` has it in JSON: all figures. */
export interface WholeFoodReport extends FoodReport {
  readonly also: readonly string[]
  readonly state?: Food['state']
  readonly source: string
  /** Share of the purchased weight that is thrown away, 0 to below 1. */
  readonly refuseRatio: number
  /** Grams, edible portion, of one of each. */
  readonly measures: Readonly<Record<string, number>>
  /** Absent where nobody has said. */
  readonly contains?: readonly Allergen[]
  readonly mayContain: readonly Allergen[]
  readonly usedIn: readonly FoodUseReport[]
}

export interface FoodUseReport {
  readonly slug: string
  readonly title: string
  /** Title of the component it comes through. */
  readonly through?: string
  /** Present where only an optional line or an alternative has it. */
  readonly byChoice?: true
}

/** Foods found, for a program: `{"foods": […]}`. */
export function foodsJson(foods: readonly Food[], carbohydrate: Carbohydrate): string {
  return json({foods: foods.map((food) => foodReport(food, carbohydrate))})
}

/** Foods near to something: `{"wanted": {…}, "foods": […]}`. */
export function nearFoodsJson(
  wanted: {readonly name: string; readonly per100g: Figures<'100 g'>},
  near: readonly NearFood[],
  carbohydrate: Carbohydrate,
): string {
  const foods = near.map(
    ({food, distanceKcal}): NearFoodReport => ({
      ...foodReport(food, carbohydrate),
      apart: withoutNoise(distanceKcal),
    }),
  )
  const per100g = knownFigures(wanted.per100g, carbohydrate, macros)
  return json({wanted: {name: wanted.name, per100g}, foods})
}

/** Everything known of a food, for a program. */
export function foodJson({food, uses, carbohydrate}: ShownFood): string {
  const report: WholeFoodReport = {
    ...foodReport(food, carbohydrate),
    also: food.also,
    ...(food.state && {state: food.state}),
    source: sourceText(food.provenance),
    per100g: knownFigures(food.per100g, carbohydrate, publishedNutrients),
    refuseRatio: food.refuseRatio,
    measures: Object.fromEntries(food.measures),
    ...(food.allergensKnown && {contains: [...food.contains]}),
    mayContain: [...food.mayContain],
    usedIn: uses.map(useReport),
  }
  return json(report)
}

function foodReport({id, name, aisle, per100g}: Food, carbohydrate: Carbohydrate): FoodReport {
  return {id, name, aisle, per100g: knownFigures(per100g, carbohydrate, macros)}
}

function knownFigures(
  figures: Figures<'100 g'>,
  carbohydrate: Carbohydrate,
  which: readonly PublishedNutrient[],
): FiguresReport {
  return Object.fromEntries(
    which.flatMap((nutrient) => {
      const figure = figures[publishedOfFood(nutrient, carbohydrate)]
      return isComplete(figure) ? [[nutrient, figureReport(nutrient, figure)]] : []
    }),
  )
}

function useReport({computed: {recipe}, through, isByChoice}: FoodUse): FoodUseReport {
  return {
    slug: recipe.slug,
    title: recipe.title.value,
    ...(through !== undefined && {through}),
    ...(isByChoice && {byChoice: true}),
  }
}

function json(value: unknown): string {
  return `${JSON.stringify(value, undefined, 2)}\n`
}
