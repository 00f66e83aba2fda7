import type {Settings} from '../cookbook/cookbook.ts'
import {allergenName} from '../food/allergens.ts'
import {type Figures, isComplete} from '../food/figures.ts'
import type {Allergen, Food, Provenance} from '../food/food.ts'
import type {NearFood} from '../food/nearest-foods.ts'
import {nutrientText, nutrientWithUncertainty} from '../food/nutrient-text.ts'
import {
  type Nutrient,
  nutrientName,
  type PublishedNutrient,
  publishedNutrients,
} from '../food/nutrients.ts'
import type {FoodUse} from '../nutrition/uses-of-food.ts'
import {formatFigure, roundedText} from '../units/format-figure.ts'
import {millilitresPerUnit} from '../units/units.ts'
import type {Paint} from './paint.ts'
import {printable} from './printable.ts'
import {textTable} from './text-table.ts'

type Carbohydrate = Settings['carbohydrate']

export const macros = ['energy', 'protein', 'fat', 'carbohydrate'] as const

/** Foods with id and macros per 100 g, a line each below their headings. */
export function foodTable(foods: readonly Food[], carbohydrate: Carbohydrate): string {
  return lines([
    ['per 100 g', 'id', ...macros],
    ...foods.map((food) => foodCells(food, carbohydrate)),
  ])
}

/** The same with how far each is from what was looked for; `wanted` stands first. */
export function nearFoodTable(
  wanted: {readonly name: string; readonly per100g: Figures<'100 g'>},
  near: readonly NearFood[],
  carbohydrate: Carbohydrate,
): string {
  return lines([
    ['per 100 g', 'id', ...macros, 'apart'],
    [printable(wanted.name), '', ...macroCells(wanted.per100g, carbohydrate), ''],
    ...near.map(({food, distanceKcal}) => [
      ...foodCells(food, carbohydrate),
      formatFigure(distanceKcal, 'kcal'),
    ]),
  ])
}

function foodCells(food: Food, carbohydrate: Carbohydrate): readonly string[] {
  const {id, name, per100g} = food
  return [printable(name), printable(id), ...macroCells(per100g, carbohydrate)]
}

function macroCells(per100g: Figures<'100 g'>, carbohydrate: Carbohydrate): readonly string[] {
  return macros.map((nutrient) => {
    const figure = per100g[publishedOfFood(nutrient, carbohydrate)]
    return isComplete(figure) ? nutrientText(nutrient, figure.value) : 'unknown'
  })
}

/** A cookbook publishes one of the two carbohydrates. */
export function publishedOfFood(nutrient: PublishedNutrient, carbohydrate: Carbohydrate): Nutrient {
  return nutrient === 'carbohydrate' && carbohydrate === 'available'
    ? 'availableCarbohydrate'
    : nutrient
}

function lines(rows: readonly (readonly string[])[]): string {
  return `${textTable(rows).join('\n')}\n`
}

/** What is known of one food. */
export interface ShownFood {
  readonly food: Food
  readonly uses: readonly FoodUse[]
  readonly carbohydrate: Carbohydrate
}

/** Everything known of a food: figures with ±, source, allergens, measures, recipes. */
export function* foodText({food, uses, carbohydrate}: ShownFood, paint: Paint): Iterable<string> {
  yield `${paint.bold(printable(food.name))}  ${paint.dim(printable(food.id))}\n`
  if (food.also.length > 0) yield `Also: ${printable(food.also.join('; '))}\n`
  yield `${[food.aisle, ...(food.state ? [food.state] : []), ...food.traits].join(', ')}\n`
  yield `Source: ${printable(sourceText(food.provenance))}\n`
  yield `\nPer 100 g${food.refuseRatio > 0 ? ' edible portion' : ''}\n`
  yield* figureLines(food, carbohydrate)
  yield '\n'
  yield* allergenLines(food)
  if (food.refuseRatio > 0) {
    yield `Thrown away: ${roundedText(food.refuseRatio * 100, 0)} % of the purchase\n`
  }
  const measures = [...food.measures].map(
    ([name, grams]) => `${ofTable(name, food)}${name} ${formatFigure(grams, 'g')}`,
  )
  if (measures.length > 0) yield `Measures: ${printable(measures.join(', '))}\n`
  yield uses.length === 0 ? '\nNo recipe uses it.\n' : '\nUsed in\n'
  for (const use of uses) yield `  ${printable(useText(use))}\n`
}

/** The table's cups and spoons are US customary; a cookbook may mean others, and weighs those. */
function ofTable(measure: string, {filledMillilitres}: Food): string {
  return measure in millilitresPerUnit.us && !filledMillilitres?.has(measure) ? 'US ' : ''
}

/** The table's energies by method are the program's own sums: they stay with `explain`. */
function* figureLines(food: Food, carbohydrate: Carbohydrate): Iterable<string> {
  const shown = publishedNutrients.map((nutrient) => publishedOfFood(nutrient, carbohydrate))
  const isKnown = (nutrient: Nutrient) => isComplete(food.per100g[nutrient])
  const known = shown.filter(isKnown)
  yield lines(
    known.map((nutrient) => [
      `  ${nutrientName[nutrient]}`,
      nutrientWithUncertainty(nutrient, food.per100g[nutrient]),
    ]),
  )
  const missing = shown.filter((nutrient) => !isKnown(nutrient))
  if (missing.length === 0) return
  yield `  unknown: ${missing.map((nutrient) => nutrientName[nutrient]).join(', ')}\n`
}

/** Where a food's figures come from. */
export function sourceText(provenance: Provenance): string {
  switch (provenance.kind) {
    case 'table':
      return `${provenance.table}, row ${provenance.row}`
    case 'regulation':
      return provenance.document
    case 'label':
      return `label in ${provenance.file}, line ${provenance.place.start.line}`
  }
}

function* allergenLines({allergensKnown, contains, mayContain}: Food): Iterable<string> {
  if (allergensKnown)
    yield `Allergens: ${allergenText(contains) || 'none of those declared by law'}\n`
  else yield 'Allergens: nobody has said; read the packet, and write `contains` in foods.yaml\n'
  if (mayContain.size > 0) yield `May contain: ${allergenText(mayContain)}\n`
}

function allergenText(allergens: ReadonlySet<Allergen>): string {
  return [...allergens].map(allergenName).join(', ')
}

function useText({computed, through, isByChoice}: FoodUse): string {
  const {title, slug} = computed.recipe
  return [
    `${title.value} (${slug})`,
    ...(through === undefined ? [] : [`through ${through}`]),
    ...(isByChoice ? ['optional or instead of another'] : []),
  ].join(', ')
}
