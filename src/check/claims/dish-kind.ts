import type {Aisle} from '../../food/food.ts'
import type {Computed} from '../../nutrition/computed.ts'
import {gramsPerUnit} from '../../units/units.ts'
import {shareOf} from '../safety/share-of.ts'

/** What US law takes a serving for. */
export type DishKind = 'food' | 'main dish' | 'meal'

/** The four food groups of 21 CFR 101.13(l) by the shelf a food stands on. */
const groups: readonly (readonly Aisle[])[] = [
  ['breads', 'grains', 'baking'],
  ['vegetables', 'fruit'],
  ['dairy'],
  ['meat', 'poultry', 'fish', 'eggs', 'pulses', 'nuts'],
]

/** Least weight of one group in a serving, and of the serving itself (6 oz and 10 oz), grams. */
const groupGrams = 40
const mainDishGrams = 6 * gramsPerUnit.oz
const mealGrams = 10 * gramsPerUnit.oz

/**
 * Meal product (three portions of 40 g or more, of two or more groups), main dish (40 g or more of
 * each of two groups), or a single food. Weights of a group are its share of what was mixed, so
 * dry grains count as dry. Source: 21 CFR 101.13(l) and (m), from memory.
 */
export function dishKind(computed: Computed): DishKind {
  const grams = computed.portionGrams?.value
  if (grams === undefined || grams < mainDishGrams) return 'food'
  const ofGroups = groups
    .map((aisles) => grams * shareOf(computed, ({aisle}) => aisles.includes(aisle)))
    .filter((group) => group >= groupGrams)
  if (ofGroups.length < 2) return 'food'
  const portions = ofGroups.reduce((sum, group) => sum + Math.floor(group / groupGrams), 0)
  return grams >= mealGrams && portions >= 3 ? 'meal' : 'main dish'
}
