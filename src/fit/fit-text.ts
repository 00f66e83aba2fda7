import {printable} from '../report/printable.ts'
import {textTable} from '../report/text-table.ts'
import {roundedText} from '../units/format-figure.ts'
import type {Fit, FittedRow} from './fit.ts'
import {changedLines, scaledAmounts} from './fitted-amounts.ts'
import type {RecipeProblem} from './recipe-problem.ts'
import type {Target} from './target.ts'

/** What a fit was asked and what it found. */
export interface ShownFit {
  readonly fit: Fit
  readonly recipe: RecipeProblem
  readonly targets: readonly Target[]
  /** Servings of the recipe, then the other numbers it is to be cooked for. */
  readonly servings: readonly number[]
}

/** What a fit found, for a terminal: targets, amounts that change, lines that stay, what each wish costs. */
export function fitText(shown: ShownFit): string {
  const {fit, recipe, targets} = shown
  const parts = [
    ['Targets:', ...fit.rows.map((row, index) => targetText(row, targets[index]?.unit ?? 'g'))],
    amountsText(shown),
    servingsText(shown),
    staysText(recipe),
    costsText(fit),
  ]
  const lines = parts.filter((part) => part.length > 0).flatMap((part) => ['', ...part])
  return `${lines.slice(1).map(printable).join('\n')}\n`
}

function amountsText({fit, recipe}: ShownFit): readonly string[] {
  const changed = changedLines(recipe.lines, fit.grams)
  if (changed.length === 0) return ['No amount has to change.']
  const isMet = fit.rows.every(({shortfall}) => shortfall === 0)
  const rows = changed.map(({name, from, to, ratio, limit}) => [
    `  ${name}`,
    from,
    '→',
    to,
    `${ratio < 0 ? '−' : '+'}${percent(Math.abs(ratio))}`,
    limit === undefined ? '' : `as ${limit === 'low' ? 'little' : 'much'} as it may`,
  ])
  return [isMet ? 'Amounts that change:' : 'Amounts that come nearest:', ...textTable(rows)]
}

/** Every line that may change, for each number of servings: whole steps all of them. */
function servingsText({fit, recipe, servings}: ShownFit): readonly string[] {
  if (servings.length < 2) return []
  const heading = ['  for', ...servings.map(String)]
  const rows = scaledAmounts(recipe.lines, fit.grams, servings).map(({name, texts}) => [
    `  ${name}`,
    ...texts,
  ])
  return ['The same for other numbers of servings:', ...textTable([heading, ...rows])]
}

function staysText({fixed}: RecipeProblem): readonly string[] {
  if (fixed.length === 0) return []
  return ['Lines that stay:', ...fixed.map(({name, because}) => `  ${name}: ${because}`)]
}

type Unit = Target['unit']

function targetText(fitted: FittedRow, unit: Unit): string {
  const {row, before, after, shortfall} = fitted
  const figures = `(${figure(before, unit)} → ${figure(after, unit)})`
  if (shortfall === 0) return `  ${row.text}: met ${figures}`
  return `  ${row.text}: missed by ${figure(shortfall, unit)} ${figures}; ${reason(fitted, unit)}`
}

function reason({row, alone}: FittedRow, unit: Unit): string {
  if (alone === undefined) return 'no amounts do'
  const left = row.sense === '<=' ? alone - row.bound : row.bound - alone
  return left > 0
    ? `by itself it would still be missed by ${figure(left, unit)}`
    : 'by itself it could be met, but not with the others'
}

/** What a target, or a thing kept, costs is what would be saved without it. */
function costsText({rows, kept, change}: Fit): readonly string[] {
  if (change === 0) return []
  const wishes = [
    ...rows.map(({row, changeWithout}) => ({text: row.text, changeWithout})),
    ...kept.map(({kept: {text}, changeWithout}) => ({text: `keeping ${text}`, changeWithout})),
  ]
  const costs = wishes.flatMap(({text, changeWithout}) =>
    changeWithout === undefined ? [] : [`  without ${text}: ${percent(changeWithout)}`],
  )
  return costs.length === 0 ? [] : [`Sum of the changes: ${percent(change)}`, ...costs]
}

/** Small figures have a digit more: 0.45 g of salt, a proportion of 0.25. */
function figure(value: number, unit: Unit): string {
  if (unit === '') return roundedText(value, 3)
  const decimals = unit !== '%' && Math.abs(value) < 10 ? 2 : 1
  return `${roundedText(value, decimals)} ${unit}`
}

function percent(ratio: number): string {
  return `${roundedText(ratio * 100, 1)} %`
}
