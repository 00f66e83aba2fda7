import type {PublishedNutrient} from '../../food/nutrients.ts'
import {numberAtStart} from '../../units/number-text.ts'

/** What words of comparison say: this dish's figure ÷ the other's is at most, or at least, a ratio. */
export interface Compared {
  readonly bound: 'most' | 'least'
  /** 0 and up. */
  readonly ratio: number
}

/** Words a writer may copy. */
export const comparisonExamples = [
  '40 % less',
  'half',
  'a third of the energy',
  '20 % more',
  'twice',
] as const

const fractions: ReadonlyMap<string, number> = new Map([
  ['half', 1 / 2],
  ['a half', 1 / 2],
  ['one half', 1 / 2],
  ['a third', 1 / 3],
  ['one third', 1 / 3],
  ['two thirds', 2 / 3],
  ['a quarter', 1 / 4],
  ['one quarter', 1 / 4],
  ['three quarters', 3 / 4],
  ['a fifth', 1 / 5],
  ['one fifth', 1 / 5],
  ['two fifths', 2 / 5],
  ['three fifths', 3 / 5],
  ['four fifths', 4 / 5],
  ['a tenth', 1 / 10],
  ['one tenth', 1 / 10],
])

const multiples: ReadonlyMap<string, number> = new Map([
  ['twice', 2],
  ['double', 2],
  ['three times', 3],
  ['triple', 3],
  ['four times', 4],
  ['five times', 5],
])

/** What a nutrient is called behind the amount: "half the fat". */
const nouns: Readonly<Record<PublishedNutrient, RegExp>> = {
  energy: /^(?:energy|calories|kilocalories|kilojoules|kcal)$/,
  protein: /^proteins?$/,
  fat: /^(?:total )?fat$/,
  saturated: /^(?:saturated(?: fat)?|saturates)$/,
  trans: /^trans fat$/,
  cholesterol: /^cholesterol$/,
  carbohydrate: /^(?:carbohydrates?|carbs)$/,
  fibre: /^(?:fibre|fiber)$/,
  sugars: /^sugars?$/,
  addedSugars: /^added sugars?$/,
  polyols: /^(?:polyols|sugar alcohols)$/,
  alcohol: /^alcohol$/,
  salt: /^salt$/,
  sodium: /^sodium$/,
  potassium: /^potassium$/,
  calcium: /^calcium$/,
  iron: /^iron$/,
  vitaminD: /^vitamin d$/,
  water: /^water$/,
}

const floor = /^(?:at least|more than|over) /
const link = /^(?:of )?(?:the |its |as much\b ?|as many\b ?)?/

/**
 * Reads words of comparison: `40 % less`, `half the fat`, `a third of the energy`, `20 % more`,
 * `twice the protein`. Vague ones (`about`, `up to`) say nothing that could be checked.
 * @returns undefined for other words, and for those that name another nutrient than the key's
 */
export function parseComparison(
  written: string,
  nutrient: PublishedNutrient,
): Compared | undefined {
  const text = written.trim().toLowerCase().replaceAll(/\s+/g, ' ')
  const isFloor = floor.test(text)
  const amount = amountAtStart(text.replace(floor, ''))
  if (!amount) return undefined
  const {ratio, kind} = amount
  const change = /^(less|fewer|lower|more|higher)\b ?/.exec(amount.rest)
  if (change) {
    const isLess = ['less', 'fewer', 'lower'].includes(change[1] ?? '')
    // Nothing can have 120 % less; "three times more" is read in two ways.
    if (kind === 'multiple' || (isLess && ratio > 1)) return undefined
    if (!isAbout(amount.rest.slice(change[0].length), nutrient)) return undefined
    return isLess ? {bound: 'most', ratio: 1 - ratio} : {bound: 'least', ratio: 1 + ratio}
  }
  // "At least half the fat" boasts of nothing.
  if (isFloor && ratio < 1) return undefined
  if (!isAbout(amount.rest.replace(link, ''), nutrient)) return undefined
  return ratio < 1 ? {bound: 'most', ratio} : {bound: 'least', ratio}
}

interface AmountStart {
  readonly kind: 'share' | 'multiple'
  readonly ratio: number
  readonly rest: string
}

function amountAtStart(text: string): AmountStart | undefined {
  for (const [kind, words] of [
    ['share', fractions],
    ['multiple', multiples],
  ] as const) {
    for (const [word, ratio] of words) {
      if (text === word || text.startsWith(`${word} `)) {
        return {kind, ratio, rest: text.slice(word.length).trim()}
      }
    }
  }
  const start = numberAtStart(text)
  if (!start.ok || start.value.number.halfRange > 0 || start.value.number.value === 0)
    return undefined
  const {number, rest} = start.value
  const percent = /^ ?% ?/.exec(rest)
  if (percent)
    return {kind: 'share', ratio: number.value / 100, rest: rest.slice(percent[0].length)}
  const times = /^ times ?/.exec(rest)
  if (times) return {kind: 'multiple', ratio: number.value, rest: rest.slice(times[0].length)}
  return number.value < 1 ? {kind: 'share', ratio: number.value, rest: rest.trim()} : undefined
}

function isAbout(noun: string, nutrient: PublishedNutrient): boolean {
  return noun === '' || nouns[nutrient].test(noun)
}
