import {nutrientName} from '../food/nutrients.ts'
import type {ChangeReport, RecipeChange} from './change-report.ts'
import {changedValue, changeSummary, effectText, signedChange} from './change-text.ts'
import type {Paint} from './paint.ts'
import {printable} from './printable.ts'
import {textTable} from './text-table.ts'

/** What moved, for people on a terminal: a block a recipe, and what did it. */
export function* textChanges(report: ChangeReport, paint: Paint): Iterable<string> {
  for (const change of report.moved) yield* recipeBlock(change, paint)
  for (const line of changeSummary(report)) yield `${printable(line)}\n`
}

function* recipeBlock(change: RecipeChange, paint: Paint): Iterable<string> {
  const {title, file, per, figures, causes} = change
  yield `${paint.bold(printable(title))}, per ${per}  ${paint.dim(printable(file))}\n`
  const rows = figures.map(({nutrient, before, after, unit}) => [
    nutrientName[nutrient],
    changedValue(nutrient, before),
    '→',
    changedValue(nutrient, after),
    unit,
    signedChange(nutrient, after - before),
  ])
  for (const row of textTable(rows)) yield `  ${row}\n`
  for (const cause of causes) {
    yield `  ${printable(cause.what)}  ${paint.dim(effectText(cause, figures))}\n`
  }
  yield '\n'
}
