import {printable} from '../report/printable.ts'
import {textTable} from '../report/text-table.ts'
import {type FigureUnit, roundedText} from '../units/format-figure.ts'
import type {Fit, FittedRow} from './fit.ts'
import type {FitLine, FitProblem} from './fit-problem.ts'
import type {Target} from './target.ts'

/** What a fit found, for a terminal: the targets, the amounts that change, what each target costs. */
export function fitText(
  {rows, grams, change}: Fit,
  {lines}: Pick<FitProblem, 'lines'>,
  targets: readonly Target[],
): string {
  const changed = lines.flatMap((line, index) => {
    const to = grams[index] ?? line.grams
    return to === line.grams ? [] : [changeCells(line, to)]
  })
  const isMet = rows.every(({shortfall}) => shortfall === 0)
  const heading = isMet ? 'Amounts that change:' : 'Amounts that come nearest:'
  const units = targets.map(({unit}) => unit)
  const amounts =
    changed.length === 0 ? ['No amount has to change.'] : [heading, ...textTable(changed)]
  const costs = rows.flatMap((row) => costText(row, change))
  const text = [
    'Targets:',
    ...rows.map((row, index) => targetText(row, units[index] ?? 'g', targets[index])),
    '',
    ...amounts,
    ...(costs.length === 0 ? [] : ['', `Sum of the changes: ${percent(change)}`, ...costs]),
  ]
  return `${text.map(printable).join('\n')}\n`
}

function changeCells({name, grams}: FitLine, to: number): readonly string[] {
  const ratio = to / grams - 1
  return [
    `  ${name}`,
    weight(grams),
    '→',
    weight(to),
    `${ratio < 0 ? '−' : '+'}${percent(Math.abs(ratio))}`,
  ]
}

function targetText(fitted: FittedRow, unit: FigureUnit, target: Target | undefined): string {
  const {row, before, after, shortfall} = fitted
  const isPlain = target?.terms.length === 1
  const figures = isPlain ? ` (${figure(before, unit)} → ${figure(after, unit)})` : ''
  if (shortfall === 0) return `  ${row.text}: met${figures}`
  return `  ${row.text}: missed by ${figure(shortfall, unit)}${figures}; ${reason(fitted, unit)}`
}

function reason({row, alone}: FittedRow, unit: FigureUnit): string {
  if (alone === undefined) return 'no amounts do'
  const left = row.sense === '<=' ? alone - row.bound : row.bound - alone
  return left > 0
    ? `by itself it would still be missed by ${figure(left, unit)}`
    : 'by itself it could be met, but not with the others'
}

/** What a target costs is what would be saved without it. */
function costText({row, changeWithout}: FittedRow, change: number): readonly string[] {
  if (changeWithout === undefined || change === 0) return []
  return [`  without ${row.text}: ${percent(changeWithout)}`]
}

function figure(value: number, unit: FigureUnit): string {
  return `${roundedText(value, 1)} ${unit}`
}

/** Grams as a recipe has them. */
export function weight(grams: number): string {
  return `${Number(roundedText(grams, 3))} g`
}

function percent(ratio: number): string {
  return `${roundedText(ratio * 100, 1)} %`
}
