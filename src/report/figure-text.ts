import {nutrientText, nutrientWithUncertainty} from '../food/nutrient-text.ts'
import type {PublishedNutrient} from '../food/nutrients.ts'
import {coverageFactor, type Uncertain} from '../units/uncertain.ts'
import type {FigureReport} from './report.ts'

/** `38 g`, `≥ 38 g` where a food's figure is unknown; empty where nothing is told. */
export function reportedFigure(
  nutrient: PublishedNutrient,
  figure: FigureReport | undefined,
): string {
  return figure === undefined ? '' : bound(figure, nutrientText(nutrient, figure.value))
}

/** `453 ± 9 kcal`. */
export function reportedWithUncertainty(nutrient: PublishedNutrient, figure: FigureReport): string {
  return bound(figure, nutrientWithUncertainty(nutrient, asQuantity(figure)))
}

function bound({atLeast}: FigureReport, text: string): string {
  return atLeast ? `≥ ${text}` : text
}

/** A reported figure knows how uncertain it is, no longer why: all of it counts as one source. */
function asQuantity({value, uncertainty}: FigureReport): Uncertain {
  const whole = {kind: 'stated', subject: 'the report'} as const
  return {value, parts: new Map([[whole, uncertainty / coverageFactor]])}
}
