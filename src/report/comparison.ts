import type {Judged} from '../check/verdict.ts'
import type {Settings} from '../cookbook/cookbook.ts'
import {nutrientUnit, type PublishedNutrient} from '../food/nutrients.ts'
import {methodOf} from '../nutrition/energy-nutrient.ts'
import {formatFigure} from '../units/format-figure.ts'
import type {ComparisonReport} from './explanation.ts'
import {figureReport, withoutNoise} from './figure-report.ts'

/** A verdict with its reason. */
export function comparisonReport(judged: Judged, settings: Settings): ComparisonReport {
  const {stated, computed, margins, verdict, against} = judged
  const method = methodOf(against)
  return {
    nutrient: stated.nutrient,
    stated: withoutNoise(stated.value),
    statedText: stated.text,
    computed: figureReport(stated.nutrient, computed),
    ...(method && {method}),
    verdict,
    difference: withoutNoise(margins.difference),
    agreement: withoutNoise(margins.agreement),
    ...(Number.isFinite(margins.allowed) && {allowed: withoutNoise(margins.allowed)}),
    why: why(judged, settings),
  }
}

function why({stated, computed, margins, verdict}: Judged, settings: Settings): string {
  if (verdict === 'unknown') {
    const foods = [...computed.missing].join(', ')
    return `no figure for ${foods}: the dish holds the computed amount or more`
  }
  const text = (value: number) => distanceText(stated.nutrient, Math.abs(value))
  const side = margins.difference < 0 ? 'below' : 'above'
  const isNone = text(margins.difference) === text(0)
  const distance = isNone ? 'as computed' : `${text(margins.difference)} ${side}`
  const agreement = `agrees within ${text(margins.agreement)}`
  if (verdict === 'agrees') return `${distance}; ${agreement}`
  const policy = settings.tolerances.has(stated.nutrient) ? 'cookbook.yaml' : settings.tolerance
  const allowed = Number.isFinite(margins.allowed) ? text(margins.allowed) : `no bound ${side}`
  return `${distance}; ${agreement}, ${policy} tolerance ${allowed}`
}

/** A digit more than figures are shown with: a small distance must not read as none. */
function distanceText(nutrient: PublishedNutrient, distance: number): string {
  return formatFigure(distance, nutrientUnit[nutrient], distance < 10 ? 1 : 0)
}
