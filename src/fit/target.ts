import {methodFactors} from '../food/method-factors.ts'
import {
  type NutrientUnit,
  nutrientName,
  nutrientUnit,
  type PublishedNutrient,
  publishedNutrients,
} from '../food/nutrients.ts'
import {parseFigure} from '../food/parse-figure.ts'
import {nearest} from '../units/nearest.ts'
import {type Parsed, parsed, refused} from '../units/parsed.ts'

/** What a serving is to have: Σ weight × figure, at most or at least the bound. */
export interface Target {
  /** As the writer put it. */
  readonly text: string
  readonly sense: '<=' | '>='
  /** Figures of a serving, in their own units, times these weights. */
  readonly terms: readonly {readonly nutrient: PublishedNutrient; readonly weight: number}[]
  /** In the unit of the sum. */
  readonly bound: number
  readonly unit: NutrientUnit
}

/** kcal per gram by which a share of the energy is told: EU 1169/2011, Annex XIV. */
const kcalPerGram: Readonly<Partial<Record<PublishedNutrient, number>>> = {
  protein: methodFactors.energyEu.protein,
  fat: methodFactors.energyEu.fat,
  carbohydrate: methodFactors.energyEu.carbohydrate,
  alcohol: methodFactors.energyEu.ethanol,
}

/**
 * Reads a target: `energy <= 500 kcal`, `protein >= 20 % of energy`, `fibre >= 3 g per 100 kcal`.
 * The last two are the forms in which EU 1924/2006 has its conditions.
 */
export function parseTarget(text: string): Parsed<Target> {
  const [, name = '', sign = '', rest = ''] = /^(.+?)(<=|>=|≤|≥)(.+)$/u.exec(text) ?? []
  const sense = sign === '<=' || sign === '≤' ? '<=' : '>='
  if (sign === '') return refused('a target such as `energy <= 500 kcal`')
  const nutrient = nutrientNamed(name.trim())
  if (nutrient === undefined) return unknownNutrient(name.trim())
  const share = /^\s*(\d+(?:\.\d+)?)\s*% of energy\s*$/u.exec(rest)
  if (share) return shareOfEnergy({text, sense, nutrient}, Number(share[1]) / 100)
  const [, figure = '', per] = /^(.+?)(per 100 kcal)?\s*$/u.exec(rest) ?? []
  const read = parseFigure(nutrient, figure)
  if (!read.ok) return read
  const unit = nutrientUnit[nutrient]
  if (per === undefined) {
    return parsed({text, sense, terms: [{nutrient, weight: 1}], bound: read.value.value, unit})
  }
  const terms = [
    {nutrient, weight: 1},
    {nutrient: 'energy' as const, weight: -read.value.value / 100},
  ]
  return parsed({text, sense, terms, bound: 0, unit})
}

interface Named {
  readonly text: string
  readonly sense: '<=' | '>='
  readonly nutrient: PublishedNutrient
}

function shareOfEnergy({text, sense, nutrient}: Named, ratio: number): Parsed<Target> {
  const kcal = kcalPerGram[nutrient]
  if (kcal === undefined) {
    return refused('a share of energy of `protein`, `fat`, `carbohydrate` or `alcohol`')
  }
  const terms = [
    {nutrient, weight: kcal},
    {nutrient: 'energy' as const, weight: -ratio},
  ]
  return parsed({text, sense, terms, bound: 0, unit: 'kcal'})
}

const names = publishedNutrients.map((nutrient) => nutrientName[nutrient])

function nutrientNamed(name: string): PublishedNutrient | undefined {
  return publishedNutrients.find((nutrient) => nutrientName[nutrient] === name.toLowerCase())
}

function unknownNutrient(name: string): Parsed<Target> {
  const meant = nearest(name, names)
  return refused(meant === undefined ? `one of ${names.join(', ')}` : `\`${meant}\``)
}
