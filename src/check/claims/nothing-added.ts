import {isComplete} from '../../food/figures.ts'
import type {Food} from '../../food/food.ts'
import {foodsInDish} from '../../nutrition/foods-in-dish.ts'
import type {Condition} from './condition.ts'
import type {Dish} from './dish.ts'

/** No more sugars than this per 100 g is none: Regulation (EC) 1924/2006 Annex, "sugars-free". */
const freeOfSugarsGrams = 0.5

/** Milk has about 5 g of lactose in 100 g, set yoghurt the same (common practice, no source). */
const lactoseGrams = 6

const sweetenedName = /\b(?:sweetened|sugared|candied|syrup|nectar|drink|concentrate)\b/i

type Addition = 'none' | 'added' | 'unknown'

/**
 * Whether a food brings sugar that was added: the ingredients decide, not the figure, because fruit
 * and milk have sugars of their own. Juice counts as added, a packet without that line as unknown.
 */
export function addedSugar(food: Food): Addition {
  const {traits, from, per100g, state, name} = food
  const {addedSugars, sugars} = per100g
  if (traits.has('sugar') || traits.has('juice') || from.includes('honey')) return 'added'
  if (/\bno added sugar|\bunsweetened\b/i.test(name)) return 'none'
  if (sweetenedName.test(name)) return 'added'
  if (isComplete(addedSugars)) return addedSugars.value > 0 ? 'added' : 'none'
  if (isComplete(sugars) && sugars.value <= freeOfSugarsGrams) return 'none'
  if (food.label) return 'unknown'
  if (state === 'raw' || state === 'cooked' || state === 'dry') return 'none'
  const isPlainDairy = food.aisle === 'dairy' && isComplete(sugars) && sugars.value <= lactoseGrams
  return isPlainDairy ? 'none' : 'unknown'
}

/** No more sodium than this per 100 g is none: Regulation (EC) 1924/2006 Annex, "sodium-free". */
const freeOfSodiumMilligrams = 5

/** Salt itself, or a packet, tin or cured food whose salt was put in. */
export function addedSalt({traits, state, per100g, label}: Food): Addition {
  if (traits.has('salt') || traits.has('cured') || traits.has('stock')) return 'added'
  const {sodium} = per100g
  if (isComplete(sodium) && sodium.value <= freeOfSodiumMilligrams) return 'none'
  const isAsGrown = state === 'raw' || state === 'dry'
  return isAsGrown && !label ? 'none' : 'unknown'
}

/** No ingredient with sugar that was put in. */
export const noSugarAdded: Condition = (dish) => nothingAdded('sugar', addedSugar, dish)

/** No salt put in, directly or with an ingredient. */
export const noSaltAdded: Condition = (dish) => nothingAdded('salt', addedSalt, dish)

function nothingAdded(what: string, added: (food: Food) => Addition, {computed}: Dish) {
  const foods = foodsInDish(computed).filter(({isByChoice}) => !isByChoice)
  const named = (kind: Addition) => [
    ...new Set(foods.filter(({food}) => added(food) === kind).map(({food}) => `\`${food.name}\``)),
  ]
  const [sure, unknown] = [named('added'), named('unknown')]
  if (sure.length > 0) {
    const found = `${sure.join(', ')} in it`
    return {outcome: 'fails', found, expected: `no ingredient that brings ${what}`} as const
  }
  const found = unknown.length > 0 ? `${unknown.join(', ')} in it` : `no ${what} put in`
  return {
    outcome: unknown.length > 0 ? 'unknown' : 'holds',
    found,
    expected: `a word whether ${what} was put in`,
  } as const
}
