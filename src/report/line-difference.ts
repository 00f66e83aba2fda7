import type {IngredientLine} from '../cookbook/recipe.ts'
import type {Food} from '../food/food.ts'
import type {Label} from '../food/label.ts'
import {nutrientText} from '../food/nutrient-text.ts'
import {nutrientName, type PublishedNutrient} from '../food/nutrients.ts'
import type {ComputedLine, Ingredient} from '../nutrition/computed.ts'

/** What differs between two states of one line, in a writer's words; empty where nothing does. */
export function lineDifference(
  before: ComputedLine,
  after: ComputedLine,
  nutrients: readonly PublishedNutrient[],
): readonly string[] {
  const name = after.line.name.value
  const own = differences(termsOf(before.line), termsOf(after.line))
  return [
    ...own.map((term) => `${name}: ${term}`),
    ...ingredientDifference(before.ingredient, after.ingredient, nutrients),
  ]
}

/** What a line says beside its name. */
function termsOf(line: IngredientLine): ReadonlyMap<string, string> {
  const {pouredOff} = line
  const terms: Readonly<Record<string, string | undefined>> = {
    '': line.amount.value.text,
    bought: line.isBought ? 'yes' : undefined,
    optional: line.isOptional ? 'yes' : undefined,
    counted: line.uncounted ? 'no' : undefined,
    eaten: line.eaten?.amount.value.text,
    'poured off':
      pouredOff?.kind === 'weighed' ? pouredOff.amount.value.text : pouredOff?.cooked.value,
    trimmed: line.trimmed?.value.text,
    cooked: line.cooked?.value,
    simmered: line.simmeredMinutes && `${line.simmeredMinutes.value} min`,
  }
  return new Map(
    Object.entries(terms).flatMap(([term, text]) => (text === undefined ? [] : [[term, text]])),
  )
}

/** Terms that changed: `180 g → 200 g`, `eaten 30 g → 35 g`; `none` where one has nothing. */
function differences(
  before: ReadonlyMap<string, string>,
  after: ReadonlyMap<string, string>,
): readonly string[] {
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((term) => {
    const [from, to] = [before.get(term), after.get(term)]
    const named = term === '' ? '' : `${term} `
    return from === to ? [] : [`${named}${from ?? 'none'} → ${to ?? 'none'}`]
  })
}

function ingredientDifference(
  before: Ingredient,
  after: Ingredient,
  nutrients: readonly PublishedNutrient[],
): readonly string[] {
  const [from, to] = [nameOf(before), nameOf(after)]
  if (from !== to) return [`${from} → ${to}`]
  if (after.kind === 'component' || before.kind === 'component') {
    return after.kind === before.kind && sameFigures(before, after, nutrients)
      ? []
      : [`component ${to}`]
  }
  return foodDifference(before.food, after.food, nutrients)
}

function nameOf(ingredient: Ingredient): string {
  return ingredient.kind === 'food' ? ingredient.food.name : ingredient.recipe.slug
}

function sameFigures(
  before: Ingredient,
  after: Ingredient,
  nutrients: readonly PublishedNutrient[],
): boolean {
  const [one, other] = [before, after].map((ingredient) =>
    ingredient.kind === 'component' ? ingredient.computed.batch : ingredient.food.per100g,
  )
  const grams = [before, after].map((ingredient) =>
    ingredient.kind === 'component' ? ingredient.computed.batchGrams?.value : 100,
  )
  return (
    grams[0] === grams[1] &&
    nutrients.every((nutrient) => one?.[nutrient].value === other?.[nutrient].value)
  )
}

function foodDifference(
  before: Food,
  after: Food,
  nutrients: readonly PublishedNutrient[],
): readonly string[] {
  if (before.label && after.label) {
    const printed = differences(panelTerms(before.label), panelTerms(after.label))
    if (printed.length > 0) return [`label of ${after.name}: ${printed.join(', ')}`]
  }
  const moved = nutrients.filter(
    (nutrient) => before.per100g[nutrient].value !== after.per100g[nutrient].value,
  )
  const refuse = before.refuseRatio === after.refuseRatio ? [] : ['refuse']
  const measures = sameMeasures(before, after) ? [] : ['weight of a measure']
  const what = [
    ...moved.map((nutrient) => figureMoved(nutrient, before, after)),
    ...refuse,
    ...measures,
  ]
  return what.length === 0 ? [] : [`food ${after.name}: ${what.join(', ')}`]
}

function panelTerms({perText, printed, rules}: Label): ReadonlyMap<string, string> {
  const lines = [...printed].map(
    ([line, {text}]) =>
      [line === 'energyKilojoules' ? 'energy kJ' : nutrientName[line], text] as const,
  )
  return new Map([['per', perText], ['rules', rules], ...lines])
}

function figureMoved(nutrient: PublishedNutrient, before: Food, after: Food): string {
  const text = (food: Food) => nutrientText(nutrient, food.per100g[nutrient].value)
  return `${nutrientName[nutrient]} ${text(before)} → ${text(after)} per 100 g`
}

function sameMeasures(before: Food, after: Food): boolean {
  const key = ({measures}: Food) => JSON.stringify([...measures].toSorted())
  return key(before) === key(after)
}
