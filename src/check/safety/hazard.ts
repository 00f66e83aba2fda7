import type {Food} from '../../food/food.ts'
import {redMeats} from '../../food/meats.ts'
import type {Computed, ComputedLine} from '../../nutrition/computed.ts'

/**
 * Raw foods that are safe from a temperature on. Source: USDA FSIS and foodsafety.gov, Safe
 * Minimum Internal Temperature Chart (2019); for shellfish, of which the chart gives signs alone,
 * the US Food Code.
 */
export const hazards = {
  poultry: {name: 'poultry', fahrenheit: 165, celsius: 74},
  groundMeat: {name: 'ground meat', fahrenheit: 160, celsius: 71},
  wholeMeat: {name: 'whole cuts of meat', fahrenheit: 145, celsius: 63},
  fish: {name: 'fish', fahrenheit: 145, celsius: 63},
  shellfish: {name: 'shellfish', fahrenheit: 145, celsius: 63},
  egg: {name: 'egg dishes', fahrenheit: 160, celsius: 71},
} as const

export type Hazard = keyof typeof hazards

export const temperatureSource =
  'USDA FSIS and foodsafety.gov, Safe Minimum Internal Temperature Chart (2019).'

/** The Food Code counts crustaceans and molluscs among fish. */
export const shellfishSource =
  'Shellfish at 63 °C (145 °F), for 15 seconds: US FDA, Food Code 2022, 3-401.11(A)(1) (from memory); the chart gives signs alone.'

/** As pages write it: `74 °C (165 °F)`. */
export function temperatureText(hazard: Hazard): string {
  return `${hazards[hazard].celsius} °C (${hazards[hazard].fahrenheit} °F)`
}

/** The minimum as the chart prints it in one scale or the other, whichever is lower. */
export function minimumCelsius(hazard: Hazard): number {
  const {fahrenheit, celsius} = hazards[hazard]
  return Math.min(celsius, ((fahrenheit - 32) * 5) / 9)
}

/** What is raw in a food; undefined where nothing is that heat must make safe. */
export function hazardOf(food: Food): Hazard | undefined {
  const {from, traits} = food
  if (!isRaw(food) || notRawMeat.some((trait) => traits.has(trait))) return undefined
  if (from.includes('poultry')) return 'poultry'
  if (from.some((origin) => redMeats.has(origin))) {
    return traits.has('ground') || traits.has('offal') ? 'groundMeat' : 'wholeMeat'
  }
  if (from.includes('fish')) return 'fish'
  if (from.includes('crustacean') || from.includes('mollusc')) return 'shellfish'
  return from.includes('egg') ? 'egg' : undefined
}

const notRawMeat = ['cured', 'smoked', 'stock', 'fat'] as const
const rawAisles: ReadonlySet<string> = new Set(['meat', 'poultry', 'fish', 'eggs'])

/** A packet does not say its state; from these shelves it is taken as raw. */
function isRaw({state, aisle}: Food): boolean {
  return state === 'raw' || (state === undefined && rawAisles.has(aisle))
}

/** Lines of the recipe itself that are raw; its components are checked in their own recipes. */
export function rawLines({lines}: Computed, hazard: Hazard): readonly ComputedLine[] {
  return lines.filter(
    ({ingredient}) => ingredient.kind === 'food' && hazardOf(ingredient.food) === hazard,
  )
}
