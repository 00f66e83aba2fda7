import {nutrientName} from '../food/nutrients.ts'
import type {ChangeReport, FigureChange, RecipeChange} from './change-report.ts'
import {changedValue, changeSummary, effectText, signedChange} from './change-text.ts'
import {printable} from './printable.ts'

/** What moved, as a Markdown table for the text of a pull request. */
export function* markdownChanges(report: ChangeReport): Iterable<string> {
  const [first = '', ...others] = changeSummary(report).map(plain)
  yield `${first}\n`
  if (report.moved.length > 0) {
    yield '\n| Recipe | Figure | Before | After | Change | Because |\n'
    yield '| --- | --- | ---: | ---: | ---: | --- |\n'
    for (const change of report.moved) yield* recipeRows(change)
  }
  for (const line of others) yield `\n${line}\n`
}

function* recipeRows({title, per, figures, causes}: RecipeChange): Iterable<string> {
  const because = causes.map((cause) => {
    const effect = effectText(cause, figures)
    return effect === '' ? plain(cause.what) : `${plain(cause.what)} (${effect})`
  })
  for (const [index, figure] of figures.entries()) {
    const isFirst = index === 0
    const cells = [
      isFirst ? `${plain(title)}, per ${per}` : '',
      ...figureCells(figure),
      isFirst ? because.join('<br>') : '',
    ]
    yield `| ${cells.join(' | ')} |\n`
  }
}

function figureCells({nutrient, before, after, unit}: FigureChange): readonly string[] {
  return [
    nutrientName[nutrient],
    `${changedValue(nutrient, before)} ${unit}`,
    `${changedValue(nutrient, after)} ${unit}`,
    signedChange(nutrient, after - before),
  ]
}

/** A writer's words, with no sign that Markdown or a table would take for its own. */
function plain(text: string): string {
  return printable(text).replace(/[\\`*_[\]<>|~#&@]/g, '\\$&')
}
