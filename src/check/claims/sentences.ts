import {type Figure, isComplete} from '../../food/figures.ts'
import {nutrientText} from '../../food/nutrient-text.ts'
import {type Nutrient, nutrientName} from '../../food/nutrients.ts'
import {expandedUncertainty} from '../../units/uncertain.ts'
import {isAtMost} from '../is-at-most.ts'
import type {Claim, ClaimSubject} from './claim.ts'
import type {Dish} from './dish.ts'
import type {DishKind} from './dish-kind.ts'
import {claimFor, judgeClaim} from './judge-claim.ts'
import {isSmall} from './us-low-claims.ts'

/** A sentence that a law wants beside a claim. */
export interface ClaimSentence {
  readonly text: string
  readonly source: string
}

/**
 * The sentences that the claims of a dish bring along: figures past the US disclosure levels, fat
 * beside a claim about fibre, sugars that are there by nature.
 */
export function claimSentences(dish: Dish): readonly ClaimSentence[] {
  const {claims} = dish.computed.recipe
  const made = claims.flatMap(({value}) => claimFor(value, dish.rules) ?? [])
  if (made.length === 0) return []
  return dish.rules === 'us' ? usSentences(made, dish) : euSentences(made, dish)
}

const disclosed = ['fat', 'saturated', 'cholesterol', 'sodium'] as const

/**
 * Disclosure levels: g, g, mg, mg per serving, and per 50 g where that is small. Source: 21 CFR
 * 101.13(h); all but the fat of main dishes and meals seen in a secondary summary or from memory.
 */
const disclosureLevels: Readonly<
  Record<DishKind, Readonly<Record<(typeof disclosed)[number], number>>>
> = {
  food: {fat: 13, saturated: 4, cholesterol: 60, sodium: 480},
  'main dish': {fat: 19.5, saturated: 6, cholesterol: 90, sodium: 720},
  meal: {fat: 26, saturated: 8, cholesterol: 120, sodium: 960},
}

function usSentences(made: readonly Claim[], dish: Dish): readonly ClaimSentence[] {
  const past = disclosed.filter((nutrient) => isDisclosed(nutrient, dish))
  const {perServing} = dish.computed
  const isAbout = (about: ClaimSubject) => made.some((claim) => claim.about === about)
  const sentences: ClaimSentence[] = []
  if (past.length > 0) {
    const names = past.map((one) => (one === 'saturated' ? 'saturated fat' : nutrientName[one]))
    const text = `See nutrition information for ${listed(names)} content.`
    sentences.push({text, source: '21 CFR 101.13(h)'})
  }
  if (isAbout('fibre') && perServing && !holds('low fat', dish)) {
    sentences.push({text: fatSentence(perServing.fat), source: '21 CFR 101.54(d), from memory'})
  }
  if (isAbout('sugars') && !holds('low calorie', dish)) {
    const text =
      'Not a reduced calorie or low calorie food: see nutrition information for calorie and sugar content.'
    sentences.push({text, source: '21 CFR 101.60(c)'})
  }
  if (made.some(({name}) => name === 'no added salt') && !holds('sodium-free', dish)) {
    sentences.push({text: 'Not a sodium-free food.', source: '21 CFR 101.61(c)(2)'})
  }
  return sentences
}

/** What lacks a figure makes the fat a lower bound, which is not told as the fat there is. */
function fatSentence(fat: Figure): string {
  const amount = nutrientText('fat', fat.value)
  if (isComplete(fat)) return `Contains ${amount} of total fat per serving.`
  return `Contains ${fat.value > 0 ? `at least ${amount}` : 'an unknown amount'} of total fat per serving: no figure for ${[...fat.missing].join(', ')}.`
}

/** Past the level at the upper end of the uncertainty; what is unknown may be more, never less. */
function isDisclosed(nutrient: (typeof disclosed)[number], dish: Dish): boolean {
  const {perServing, per100g} = dish.computed
  const level = disclosureLevels[dish.kind][nutrient]
  if (perServing && !isAtMost(upperEnd(perServing[nutrient]), level)) return true
  if (!isSmall(dish) || !per100g) return false
  return !isAtMost(upperEnd(per100g[nutrient]) / 2, level)
}

function upperEnd(figure: Dish['computed']['batch'][Nutrient]): number {
  return figure.value + expandedUncertainty(figure)
}

function euSentences(made: readonly Claim[], dish: Dish): readonly ClaimSentence[] {
  const isNoneAdded = made.some(({name}) => name === 'no added sugars')
  if (!isNoneAdded || holds('sugars-free', dish)) return []
  return [
    {
      text: 'Contains naturally occurring sugars.',
      source: 'Regulation (EC) 1924/2006, Annex, "with no added sugars"',
    },
  ]
}

function holds(name: string, dish: Dish): boolean {
  const claim = claimFor(name, dish.rules)
  return claim !== undefined && judgeClaim(claim, dish).outcome === 'holds'
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}
