import {nutrientName, type PublishedNutrient, publishedNutrients} from '../food/nutrients.ts'
import {roundedText} from '../units/format-figure.ts'
import {bakingRows} from './baking-text.ts'
import {claimRows, claimsHeading} from './claim-text.ts'
import {countText} from './count-text.ts'
import {energyMethodName, energyRows} from './energy-text.ts'
import type {BudgetReport, ComparisonReport, Explanation, LineReport} from './explanation.ts'
import {reportedFigure, reportedWithUncertainty} from './figure-text.ts'
import type {Paint} from './paint.ts'
import {percentages} from './percentages.ts'
import {printable} from './printable.ts'
import {textMessages} from './text-report.ts'
import {textTable} from './text-table.ts'

/** Sources a budget lists by name before it sums up the rest: the largest, none of them tiny. */
const mostSources = 5
const leastShare = 0.01

/** An explanation for people, on a terminal. */
export function* textExplanation(explanation: Explanation, paint: Paint): Iterable<string> {
  const {title, file, per, lines, comparison, messages} = explanation
  yield `${paint.bold(printable(title))}  ${paint.dim(printable(file))}\n`
  yield `${sizes(explanation)}\n`
  yield* section(paint, `What each line adds to the figures per ${per}`, lineRows(explanation))
  yield* section(
    paint,
    'Net carbohydrate: without fibre and polyols, a convention of readers',
    netCarbohydrateRows(explanation),
  )
  yield* section(paint, 'The dough, its flour as 100 %', bakingRows(explanation))
  yield* section(paint, 'Not counted', lines.filter(({role}) => role !== 'counted').map(uncounted))
  yield* section(paint, `Stated and computed, per ${per}`, comparisonRows(comparison))
  yield* section(paint, 'Energy of the stated macros, by each method', energyRows(explanation))
  yield* section(paint, claimsHeading(explanation.claims), claimRows(explanation.claims))
  yield* section(
    paint,
    'How well the figures are known: each source’s share of the variance',
    budgetRows(explanation),
  )
  if (messages.length > 0) {
    yield `\n${paint.bold('Findings')}\n`
    yield* textMessages(messages, paint)
  }
}

function* section(paint: Paint, heading: string, rows: readonly string[]): Iterable<string> {
  if (rows.length === 0) return
  yield `\n${paint.bold(heading)}\n`
  for (const row of rows) yield `${row}\n`
}

function sizes({serves, batchGrams, portionGrams}: Explanation): string {
  const batch =
    batchGrams === undefined ? 'batch not weighed' : `batch ${roundedText(batchGrams, 0)} g`
  const portion = portionGrams === undefined ? '' : ` of ${roundedText(portionGrams, 0)} g`
  return serves === undefined ? batch : `${batch}, serves ${serves}${portion}`
}

/** What the rows of the lines show; the JSON has everything that is stated. */
const shown: readonly PublishedNutrient[] = ['energy', 'protein', 'carbohydrate', 'fat']

function lineRows({lines, figures}: Explanation): readonly string[] {
  const counted = lines.filter(({role}) => role === 'counted')
  const head = ['', 'grams', ...shown.flatMap((one) => [nutrientName[one], ...shareHead(one)])]
  const grams = counted.reduce((sum, line) => sum + line.grams, 0)
  const total = shown.flatMap((one) => [reportedFigure(one, figures[one]), ...shareHead(one, '')])
  return textTable([head, ...counted.map(lineRow), ['total', roundedText(grams, 0), ...total]])
}

/** Shares stand beside energy alone, so that a row fits a terminal; the JSON has all of them. */
function shareHead(nutrient: PublishedNutrient, text = 'share'): readonly string[] {
  return nutrient === 'energy' ? [text] : []
}

function netCarbohydrateRows({netCarbohydrate, per}: Explanation): readonly string[] {
  if (netCarbohydrate === undefined) return []
  return [`${reportedWithUncertainty('carbohydrate', netCarbohydrate)} per ${per}`]
}

function lineRow(line: LineReport): readonly string[] {
  const cells = shown.flatMap((nutrient) => {
    const share = line.shares[nutrient]
    const percent = share === undefined ? '' : `${roundedText(100 * share, 0)} %`
    return [reportedFigure(nutrient, line.adds[nutrient]), ...shareHead(nutrient, percent)]
  })
  return [printable(line.name), roundedText(line.grams, 0), ...cells]
}

function uncounted({name, amount, role}: LineReport): string {
  const why = role === 'optional' ? 'optional' : 'left uncounted'
  return printable(`${name}, ${amount}: ${why}`)
}

function comparisonRows(comparison: readonly ComparisonReport[]): readonly string[] {
  const rows = comparison.map(({nutrient, statedText, computed, verdict}) => [
    nutrientName[nutrient],
    printable(statedText),
    reportedWithUncertainty(nutrient, computed),
    verdict,
  ])
  const table = textTable([['', 'stated', 'computed', 'verdict'], ...rows])
  if (rows.length === 0) return []
  return table.map((row, index) => {
    const one = comparison[index - 1]
    if (one === undefined) return row
    const method = one.method === undefined ? '' : `; ${energyMethodName[one.method]}`
    return `${row}  ${printable(one.why)}${method}`
  })
}

function budgetRows({budget, figures}: Explanation): readonly string[] {
  return publishedNutrients.flatMap((nutrient) => {
    const figure = figures[nutrient]
    const sources = budget[nutrient]
    if (figure === undefined || sources === undefined) return []
    const head = `${nutrientName[nutrient]} ${reportedWithUncertainty(nutrient, figure)}`
    return [head, ...sourceRows(sources)]
  })
}

/** The largest sources by name and the rest in one row; the percentages add up to 100. */
function sourceRows(sources: readonly BudgetReport[]): readonly string[] {
  if (sources.length === 0) return ['    taken as exact']
  const named = sources.slice(0, mostSources).filter(({share}) => share >= leastShare)
  const rest = sources.slice(named.length)
  const restShare = rest.reduce((sum, {share}) => sum + share, 0)
  const shares = [...named.map(({share}) => share), ...(rest.length > 0 ? [restShare] : [])]
  const percents = percentages(shares)
  return percents.map((percent, index) => {
    const source = named[index]?.source ?? countText(rest.length, 'smaller source')
    return `${`${percent} %`.padStart(9)}  ${printable(source)}`
  })
}
