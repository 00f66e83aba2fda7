import type {Food} from '../../food/food.ts'
import {meats, seafood} from '../../food/meats.ts'
import type {Computed} from '../../nutrition/computed.ts'
import {listedFoods} from '../../nutrition/foods-in-dish.ts'
import {remembered} from '../../units/remembered.ts'
import {shareOf} from './share-of.ts'

/** How long a kind of dish keeps by the guidance. */
export interface KeepingGuidance {
  /** Goes on after "for": "soups and stews with meat". */
  readonly kind: string
  readonly fridgeDays: number
  /** For quality only: frozen food stays safe. */
  readonly freezerDays?: number
}

export const keepingSource =
  'Cold Food Storage Chart, foodsafety.gov, as reproduced by extension services; leftovers 3–4 days: USDA National Agricultural Library. Freezer times are for quality only.'

const monthDays = 30

const guidance = {
  broth: {kind: 'broth and gravy', fridgeDays: 2, freezerDays: 3 * monthDays},
  meat: {kind: 'cooked meat and poultry', fridgeDays: 4, freezerDays: 6 * monthDays},
  soup: {kind: 'soups and stews', fridgeDays: 4, freezerDays: 3 * monthDays},
  fish: {kind: 'cooked fish and shellfish', fridgeDays: 4},
  egg: {kind: 'egg dishes', fridgeDays: 4},
  rice: {kind: 'cooked rice', fridgeDays: 4},
} as const satisfies Record<string, KeepingGuidance>

/** Salted or dried for keeping, rendered, or a powder: none of them limits a dish. */
function isPerishable({traits, state}: Food): boolean {
  return (
    !['cured', 'fat'].some((trait) => [...traits].some((each) => each === trait)) && state !== 'dry'
  )
}

function isMeat(food: Food): boolean {
  return isPerishable(food) && food.from.some((origin) => meats.has(origin))
}

function isSeafood(food: Food): boolean {
  return isPerishable(food) && food.from.some((origin) => seafood.has(origin))
}

/** Dry things baked through keep by being dry: shares are the project's choice. */
const bakedFlourRatio = 0.15
const eggDishRatio = 0.08
const soupStockRatio = 0.25
/** Curds and the like keep by their sugar and acid. */
const preserveSugarRatio = 0.2
/** Drops of fish sauce or a spoon of stock make no dish of fish. */
const leastShare = 0.02

/**
 * The guidance that a dish falls under, the shortest first; none for breads, jams, granola and the
 * like, about which the chart says nothing.
 */
export const keepingGuidance = remembered((computed: Computed): readonly KeepingGuidance[] => {
  const {title, tags} = computed.recipe
  const words = [title, ...tags].map(({value}) => value).join(' ')
  const share = (isKind: (food: Food) => boolean): boolean =>
    shareOf(computed, isKind) >= leastShare
  const isBaked = shareOf(computed, ({traits}) => traits.has('flour')) >= bakedFlourRatio
  const hasMeat = share(isMeat)
  const found: KeepingGuidance[] = []
  if (hasMeat && /\b(?:stock|broth|gravy)\b/i.test(title.value)) found.push(guidance.broth)
  const isSoup = /\b(?:soup|stew|chowder|casserole)s?\b/i.test(words)
  const stock = shareOf(computed, ({traits}) => traits.has('stock'))
  if ((isSoup || stock >= soupStockRatio) && !isBaked) found.push(guidance.soup)
  if (hasMeat) found.push(guidance.meat)
  if (share(isSeafood)) found.push(guidance.fish)
  const isPreserve = shareOf(computed, ({traits}) => traits.has('sugar')) >= preserveSugarRatio
  const eggs = shareOf(computed, ({from}) => from.includes('egg'))
  if (!isBaked && !isPreserve && eggs >= eggDishRatio) {
    found.push(guidance.egg)
  }
  if (!isBaked && share(isRice)) found.push(guidance.rice)
  return found.toSorted((left, right) => left.fridgeDays - right.fridgeDays)
})

function isRice({traits, state}: Food): boolean {
  return traits.has('rice') && !traits.has('flour') && (state === 'dry' || state === 'cooked')
}

/** Whether a dish spoils within days once it is cooked: what cooling and reheating are asked for. */
export function spoils(computed: Computed): boolean {
  return keepingGuidance(computed).length > 0 || hasPulses(computed)
}

function hasPulses(computed: Computed): boolean {
  return (
    [...listedFoods(computed)].some(({aisle}) => aisle === 'pulses') &&
    shareOf(computed, ({aisle}) => aisle === 'pulses') >= eggDishRatio &&
    shareOf(computed, ({traits}) => traits.has('flour')) < bakedFlourRatio
  )
}
