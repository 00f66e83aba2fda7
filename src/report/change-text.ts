import {nutrientName, nutrientUnit, type PublishedNutrient} from '../food/nutrients.ts'
import {roundedText} from '../units/format-figure.ts'
import type {Cause, ChangeReport, FigureChange, NamedRecipe} from './change-report.ts'
import {countText} from './count-text.ts'

/** Whole kcal, else tenths: a change reads finer than a figure. */
function decimals(nutrient: PublishedNutrient): number {
  return nutrientUnit[nutrient] === 'kcal' ? 0 : 1
}

/** `461` or `38.2`. */
export function changedValue(nutrient: PublishedNutrient, value: number): string {
  return roundedText(value, decimals(nutrient))
}

/** `+14` or `−0.3`, with the sign that numbers are set with (U+2212). */
export function signedChange(nutrient: PublishedNutrient, change: number): string {
  const text = roundedText(Math.abs(change), decimals(nutrient))
  if (Number(text) === 0) return '±0'
  return `${change < 0 ? '−' : '+'}${text}`
}

/** `+17 kcal, +0.4 g protein`: what a cause did to the figures that moved. */
export function effectText({effect}: Cause, figures: readonly FigureChange[]): string {
  return figures
    .flatMap(({nutrient, unit}) => {
      const change = effect[nutrient] ?? 0
      const text = signedChange(nutrient, change)
      const name = nutrient === 'energy' ? '' : ` ${nutrientName[nutrient]}`
      return text === '±0' ? [] : [`${text} ${unit}${name}`]
    })
    .join(', ')
}

/** `2 recipes moved, 24 did not`, and which came, went, or cannot be told. */
export function changeSummary(report: ChangeReport): readonly string[] {
  const {moved, unchanged, added, removed, uncomputed} = report
  return [
    `The figures of ${countText(moved.length, 'recipe')} moved, those of ${unchanged} did not.`,
    ...listed('New', added),
    ...listed('Gone', removed),
    ...listed('Not comparable, as one of the two cannot be computed', uncomputed),
  ]
}

function listed(what: string, recipes: readonly NamedRecipe[]): readonly string[] {
  return recipes.length === 0 ? [] : [`${what}: ${recipes.map(({title}) => title).join(', ')}.`]
}
