import {type Basis, type Figure, type Figures, isComplete} from '../food/figures.ts'
import {nutrientUnit, type PublishedNutrient, publishedNutrients} from '../food/nutrients.ts'
import {type Publishing, publishedFigure} from '../nutrition/published.ts'
import {expandedUncertainty} from '../units/uncertain.ts'
import type {FigureReport, FiguresReport} from './report.ts'

/** Digits of a double that are not noise of adding up. */
const significantDigits = 12

/** A number without the noise of adding doubles: 0.30000000000000004 is 0.3. */
export function withoutNoise(value: number): number {
  return Number(value.toPrecision(significantDigits))
}

export function figureReport(nutrient: PublishedNutrient, figure: Figure): FigureReport {
  return {
    value: withoutNoise(figure.value),
    uncertainty: withoutNoise(expandedUncertainty(figure)),
    unit: nutrientUnit[nutrient],
    ...(!isComplete(figure) && {atLeast: true}),
  }
}

/** Published nutrients on one basis: all of them, or those named. */
export function figuresReport(
  figures: Figures<Basis>,
  publishing: Publishing,
  which: readonly PublishedNutrient[] = publishedNutrients,
): FiguresReport {
  const report: Partial<Record<PublishedNutrient, FigureReport>> = {}
  for (const nutrient of which) {
    report[nutrient] = figureReport(nutrient, publishedFigure(figures, nutrient, publishing))
  }
  return report
}
