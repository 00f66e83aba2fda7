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
import {numberAtStart} from '../units/number-text.ts'
import {type Parsed, parsed, refused} from '../units/parsed.ts'

/** What a dish is to have: a figure of a serving or of 100 g, or one by another, and its bound. */
export interface Target {
  /** As the writer put it. */
  readonly text: string
  readonly sense: '<=' | '>='
  readonly figure: WeighedFigure
  readonly per: 'serving' | '100 g' | WeighedFigure
  readonly bound: number
  /** Of the bound; nothing for a proportion. */
  readonly unit: NutrientUnit | '%' | ''
}

/** A nutrient's figure in its own unit, times a weight. */
export interface WeighedFigure {
  readonly nutrient: PublishedNutrient
  readonly weight: number
}

/** kcal per gram by which a share of the energy is told: EU 1169/2011, Annex XIV. */
const kcalPerGram: Readonly<Partial<Record<PublishedNutrient, number>>> = {
  protein: methodFactors.energyEu.protein,
  fat: methodFactors.energyEu.fat,
  carbohydrate: methodFactors.energyEu.carbohydrate,
  alcohol: methodFactors.energyEu.ethanol,
}

/**
 * Reads a target: `energy <= 500 kcal`, `salt <= 0.3 g per 100 g`, `protein >= 20 % of energy`,
 * `fibre >= 3 g per 100 kcal`, `protein / carbohydrate >= 0.5`. Those by energy are the forms in which
 * EU 1924/2006 has its conditions.
 */
export function parseTarget(text: string): Parsed<Target> {
  const [, left = '', sign = '', rest = ''] = /^(.+?)(<=|>=|≤|≥)(.+)$/u.exec(text) ?? []
  if (sign === '') return refused('a target such as `energy <= 500 kcal`')
  const names = left.split('/').map((name) => name.trim())
  const found = names.map(nutrientNamed)
  const wrong = found.indexOf(undefined)
  if (wrong >= 0) return unknownNutrient(names[wrong] ?? '')
  const [nutrient, below, more] = found
  if (nutrient === undefined || more !== undefined) return refused('one nutrient, or two with `/`')
  const named = {text, sense: sign === '<=' || sign === '≤' ? '<=' : '>=', nutrient} as const
  return below === undefined
    ? parseBound(named, rest.trim())
    : proportion(named, below, rest.trim())
}

interface Named {
  readonly text: string
  readonly sense: '<=' | '>='
  readonly nutrient: PublishedNutrient
}

function parseBound({text, sense, nutrient}: Named, rest: string): Parsed<Target> {
  const share = /^(\d+(?:\.\d+)?)\s*% of energy$/u.exec(rest)
  if (share) return shareOfEnergy({text, sense, nutrient}, Number(share[1]))
  const [, figure = rest, basis] = /^(.+?)\s*\bper\s+(.+)$/u.exec(rest) ?? []
  const per = perBasis(basis)
  if (per === undefined) {
    return refused('`per serving`, `per 100 g` or `per 100 kcal`, or nothing for a serving')
  }
  const read = parseFigure(nutrient, figure)
  if (!read.ok) return read
  const {value} = read.value
  return parsed({
    text,
    sense,
    figure: {nutrient, weight: 1},
    per,
    bound: value,
    unit: nutrientUnit[nutrient],
  })
}

function perBasis(written: string | undefined): Target['per'] | undefined {
  switch (written?.replace(/\s+/gu, ' ')) {
    case undefined:
    case 'serving':
      return 'serving'
    case '100 g':
    case '100g':
      return '100 g'
    case '100 kcal':
      return {nutrient: 'energy', weight: 1 / 100}
    default:
      return undefined
  }
}

function shareOfEnergy({text, sense, nutrient}: Named, percent: number): Parsed<Target> {
  const kcal = kcalPerGram[nutrient]
  if (kcal === undefined) {
    return refused('a share of energy of `protein`, `fat`, `carbohydrate` or `alcohol`')
  }
  return parsed({
    text,
    sense,
    figure: {nutrient, weight: kcal * 100},
    per: {nutrient: 'energy', weight: 1},
    bound: percent,
    unit: '%',
  })
}

const gramsPerUnit: Readonly<Partial<Record<NutrientUnit, number>>> = {g: 1, mg: 1e-3, µg: 1e-6}

/** Two nutrients by weight: `0.5`, `1/2` and `1 : 2` are the same proportion. */
function proportion({text, sense, nutrient}: Named, below: PublishedNutrient, rest: string) {
  const [above, under] = [nutrient, below].map((one) => gramsPerUnit[nutrientUnit[one]])
  if (above === undefined || under === undefined) {
    return refused('a proportion of two weights; with energy, `per 100 kcal` or `% of energy`')
  }
  const bound = proportionNumber(rest)
  if (bound === undefined) return refused('a proportion such as `0.5`, `1/2` or `1 : 2`')
  return parsed({
    text,
    sense,
    figure: {nutrient, weight: above},
    per: {nutrient: below, weight: under},
    bound,
    unit: '',
  } as const)
}

function proportionNumber(written: string): number | undefined {
  const [, first, second] = /^(\d+(?:\.\d+)?)\s*:\s*(\d+(?:\.\d+)?)$/u.exec(written) ?? []
  if (first !== undefined) return Number(second) > 0 ? Number(first) / Number(second) : undefined
  const read = numberAtStart(written)
  const isNumber = read.ok && read.value.rest.trim() === '' && read.value.number.halfRange === 0
  return isNumber ? read.value.number.value : undefined
}

const nutrientNames = publishedNutrients.map((nutrient) => nutrientName[nutrient])

function nutrientNamed(name: string): PublishedNutrient | undefined {
  return publishedNutrients.find((nutrient) => nutrientName[nutrient] === name.toLowerCase())
}

function unknownNutrient(name: string): Parsed<Target> {
  const meant = nearest(name, nutrientNames)
  return refused(meant === undefined ? `one of ${nutrientNames.join(', ')}` : `\`${meant}\``)
}
