import type {Nutrient} from './nutrients.ts'

/** The part of a nutrient that a way of cooking leaves, as the source prints it: percent. */
export interface Retention {
  /** Code of the preparation in the USDA table. */
  readonly code: string
  readonly percent: Partial<Record<Nutrient, number>>
}

/**
 * Ways of cooking that take something away, in a writer's words. Source: USDA Table of Nutrient
 * Retention Factors, Release 6 (Dec 2007), rows seen in reproductions of the table. The table has
 * no factors for protein, fat, carbohydrate or fibre; a nutrient without one keeps all of it.
 */
export const cookingMethods = {
  flamed: {code: '5003', percent: {alcohol: 75}},
  'stirred in off the heat': {code: '5002', percent: {alcohol: 85}},
  'kept overnight': {code: '5001', percent: {alcohol: 70}},
  'baked on top': {code: '5010', percent: {alcohol: 45}},
  'pulses boiled briefly, drained': {
    code: '0501',
    percent: {calcium: 85, iron: 85, potassium: 75, sodium: 90},
  },
  'pulses boiled long, drained': {
    code: '0521',
    percent: {calcium: 85, iron: 80, potassium: 70, sodium: 90},
  },
  'potatoes boiled in their skins': {
    code: '3307',
    percent: {calcium: 95, iron: 95, potassium: 90, sodium: 95},
  },
  'greens boiled, drained': {code: '3005', percent: {calcium: 95, iron: 95, sodium: 95}},
  'greens in little water, drained': {code: '3004', percent: {calcium: 95, iron: 95, sodium: 95}},
  'fruit preserved in jars': {code: '0154', percent: {calcium: 95, potassium: 90}},
} as const satisfies Readonly<Record<string, Retention>>

export type CookingMethod = keyof typeof cookingMethods

// The keys of the object above are exactly the union.
export const cookingMethodNames = Object.keys(cookingMethods) as readonly CookingMethod[]
