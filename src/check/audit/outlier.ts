import {type Figure, isComplete} from '../../food/figures.ts'
import type {Food} from '../../food/food.ts'
import {nameKey} from '../../food/name-key.ts'
import {macroDistanceKcal} from '../../food/nearest-foods.ts'
import {nutrientText} from '../../food/nutrient-text.ts'
import {followsOwnFactors, type Oddity} from './row-sanity.ts'

/** How far a food may be, kcal of macros per 100 g, to still be a measure. */
const nearestKcal = 25

/** Grams of fibre, polyols or alcohol by which foods of the same macros still are alike. */
const besideGrams = 3

/** As many neighbours must all have another energy: one alone may be the odd one itself. */
const neighbours = 3

/** A gap within this share of the neighbour's energy, or within so many kcal, says nothing. */
const energySlack = {ratio: 0.25, kcal: 25} as const

/** Whether a food has another energy than the table foods with the nearest macros. */
export function outlierOddities(food: Food, table: Iterable<Food>): readonly Oddity[] {
  const {energy} = food.per100g
  if (!isComplete(energy) || followsOwnFactors(food)) return []
  const alike = [...table]
    .map((other) => ({other, distanceKcal: distance(food, other)}))
    .filter(({distanceKcal}) => distanceKcal <= nearestKcal)
    .toSorted((left, right) => left.distanceKcal - right.distanceKcal)
    .slice(0, neighbours)
    .map(({other}) => other)
  const [near] = alike
  if (!near || alike.some((other) => !isFar(energy, other.per100g.energy))) return []
  return [
    {
      reason: `${energyOf(food)}, expected about ${energyText(near)}: ${named(near)} has nearly the same macros`,
      note: 'Read the energy and the macros again; one of them is of another food or another weight.',
    },
  ]
}

/** Energy of foods that share a name and differ by more is not that of one food. */
const sameNameSlack = {ratio: 0.4, kcal: 40} as const

/** Whether a label's energy is far from that of the table food of the same name. */
export function sameNameOddities(food: Food, table: Iterable<Food>): readonly Oddity[] {
  const names = new Set([food.name, ...food.also].map(nameKey))
  const {energy} = food.per100g
  for (const other of table) {
    if (![other.name, ...other.also].some((name) => names.has(nameKey(name)))) continue
    if (other.id === food.id || !isComplete(energy) || !isComplete(other.per100g.energy)) continue
    if (!isFar(energy, other.per100g.energy, sameNameSlack)) continue
    return [
      {
        reason: `${energyOf(food)}, expected about ${energyText(other)}: ${named(other)} has the same name`,
        note: 'Figures per serving may have been copied as per 100 g; or it is dry and the other cooked.',
      },
    ]
  }
  return []
}

function distance(food: Food, other: Food): number {
  if (other.id === food.id || !isComplete(other.per100g.energy)) return Number.POSITIVE_INFINITY
  const isAlike = (['fibre', 'polyols', 'alcohol'] as const).every(
    (nutrient) =>
      Math.abs(orNone(food.per100g[nutrient]) - orNone(other.per100g[nutrient])) <= besideGrams,
  )
  const apart = isAlike ? macroDistanceKcal(food.per100g, other.per100g) : undefined
  return apart ?? Number.POSITIVE_INFINITY
}

/** Tables leave polyols and alcohol blank for foods that have none. */
function orNone(figure: Figure): number {
  return isComplete(figure) ? figure.value : 0
}

function isFar(
  own: Figure,
  other: Figure,
  {ratio, kcal}: {readonly ratio: number; readonly kcal: number} = energySlack,
): boolean {
  return Math.abs(own.value - other.value) > Math.max(kcal, ratio * other.value)
}

function energyOf(food: Food): string {
  return `Energy ${energyText(food)} of \`${food.name}\``
}

function energyText({per100g}: Food): string {
  return `\`${nutrientText('energy', per100g.energy.value)}\``
}

function named({name, id}: Food): string {
  return `\`${name}\` (${id})`
}
