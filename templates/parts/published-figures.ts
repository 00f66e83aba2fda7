import {type Judged, judge} from '../../src/check/verdict.ts'
import type {Settings} from '../../src/cookbook/cookbook.ts'
import type {Basis, Figure, Figures} from '../../src/food/figures.ts'
import {isComplete} from '../../src/food/figures.ts'
import {type NutrientUnit, nutrientUnit, type PublishedNutrient} from '../../src/food/nutrients.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {mainNutrients, publishedBy, publishedFigure} from '../../src/nutrition/published.ts'
import {roundedText, usualDecimals} from '../../src/units/format-figure.ts'
import {withDecimal} from '../words/decimal.ts'
import type {Words} from '../words/en.ts'
import {knownText} from './figure-rows.ts'

/** A figure as the site publishes it: the stated one where the writer stated it. */
export interface PublishedFigure {
  readonly nutrient: PublishedNutrient
  readonly value: number
  readonly computed: Figure
  /** Absent where only the computed figure is there. */
  readonly judged?: Judged
}

export interface PublishedFigures {
  readonly basis: Basis
  readonly figures: readonly PublishedFigure[]
}

/** The computed figures on a basis; undefined where the recipe does not give it. */
export function computedOn(basis: Basis, computed: Computed): Figures<Basis> | undefined {
  switch (basis) {
    case 'batch':
      return computed.batch
    case '100 g':
      return computed.per100g
    case 'serving':
      return computed.perServing
  }
}

/** What the figures of a recipe refer to first: as stated, else the serving, else 100 g. */
export function mainBasis(computed: Computed): Basis {
  const stated = computed.recipe.stated?.basis
  if (stated !== undefined && computedOn(stated, computed) !== undefined) return stated
  return computed.perServing ? 'serving' : computed.per100g ? '100 g' : 'batch'
}

/** The main figures and every further one that is stated. */
export function publishedFigures(computed: Computed, settings: Settings): PublishedFigures {
  const basis = mainBasis(computed)
  const names = new Set<PublishedNutrient>(mainNutrients)
  const {stated} = computed.recipe
  if (stated?.basis === basis) for (const {nutrient} of stated.figures) names.add(nutrient)
  return {basis, figures: publishedOn(basis, [...names], computed, settings)}
}

/** Figures of the named nutrients on a basis; stated ones only where they are stated on it. */
export function publishedOn(
  basis: Basis,
  names: readonly PublishedNutrient[],
  computed: Computed,
  settings: Settings,
): readonly PublishedFigure[] {
  const figures = computedOn(basis, computed)
  if (figures === undefined) return []
  const {stated} = computed.recipe
  const judged = stated?.basis === basis ? judge(stated, computed, settings) : []
  const publishing = publishedBy(settings, computed.recipe)
  return names.map((nutrient) => {
    const figure = publishedFigure(figures, nutrient, publishing)
    const match = judged.find(({stated}) => stated.nutrient === nutrient)
    return match === undefined
      ? {nutrient, value: figure.value, computed: figure}
      : {nutrient, value: match.stated.value, computed: figure, judged: match}
  })
}

/** Whether the figure is only a lower bound. */
export function isAtLeast({computed, judged}: PublishedFigure): boolean {
  return judged === undefined && !isComplete(computed)
}

/** A published figure in words: as stated, or computed, with "at least" and "unknown" said. */
export function publishedText({nutrient, value, computed, judged}: PublishedFigure, words: Words) {
  return judged
    ? withDecimal(judged.stated.text, words)
    : knownText(nutrient, {...computed, value}, words)
}

/** The figure without its unit, for a column that says it: as exact as it was stated. */
export function publishedNumber(figure: PublishedFigure, words: Words): string {
  const {nutrient, value, computed, judged} = figure
  const unit = nutrientUnit[nutrient]
  const decimals = judged
    ? statedDecimals(judged.stated.increment, unit)
    : usualDecimals(value, unit)
  const text = withDecimal(roundedText(value, decimals), words)
  if (judged || isComplete(computed)) return text
  return value > 0 ? words.atLeast(text) : words.unknown
}

/** A figure stated in kilojoules has no tidy step in kilocalories: those stay whole. */
function statedDecimals(increment: number, unit: NutrientUnit): number {
  return unit === 'kcal' ? 0 : Math.max(0, Math.ceil(-Math.log10(increment) - 1e-9))
}
