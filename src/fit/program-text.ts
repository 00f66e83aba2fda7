import type {FitProblem, FitRow} from './fit-problem.ts'

/** What is kept as small as possible. */
export type Aim =
  /** The change, with every target met. */
  | {readonly kind: 'change'}
  /** The shortfalls, each as a share of its target. */
  | {readonly kind: 'shortfall'}
  /** One row alone, as far as the bounds let it go. */
  | {readonly kind: 'row'; readonly row: FitRow}

/**
 * A fit as a mixed-integer program in the LP format that solvers read ("CPLEX LP file format").
 * Amounts are counted in steps (`n`) unless they stay as written (`s`); `d` is a line's change and
 * `v` a target's shortfall. Everything is scaled to about 1: a solver's tolerances are absolute.
 */
export function programText({lines, rows, kept}: FitProblem, aim: Aim): string {
  const isElastic = aim.kind === 'shortfall'
  const shown = aim.kind === 'row' ? [] : rows
  const constraints = [
    ...lines.flatMap((_, index) => changeRows(lines, index)),
    ...kept.map((row) => rowText(row, lines)),
    ...shown.map((row, index) => rowText(row, lines, isElastic ? `v${index}` : undefined)),
  ]
  return [
    'Minimize',
    ` aim: ${aimText(aim, lines, rows)}`,
    'Subject To',
    ...constraints.map((constraint, index) => ` c${index}: ${constraint}`),
    'Bounds',
    ...lines.map((line, index) => {
      const {low, high} = stepsOf(line)
      return isWhole(line) ? ` ${low} <= n${index} <= ${high}` : ` 0 <= n${index} <= ${high}`
    }),
    'General',
    ` ${lines.map((_, index) => `n${index}`).join(' ')}`,
    'Binary',
    ` ${lines.flatMap((line, index) => (isWhole(line) ? [] : [`s${index}`])).join(' ')}`,
    'End',
    '',
  ].join('\n')
}

type Lines = FitProblem['lines']
type Line = Lines[number]

/** Whether the amount as written is a whole number of steps already. */
export function isWhole({grams, step}: Line): boolean {
  return Math.abs(Math.round(grams / step) * step - grams) < 1e-9
}

/** Least and most whole steps. */
function stepsOf({low, high, step}: Line): {readonly low: number; readonly high: number} {
  return {low: Math.ceil(low / step - 1e-9), high: Math.floor(high / step + 1e-9)}
}

/** A change counts whichever way it goes; an amount that stays takes no steps. */
function changeRows(lines: Lines, index: number): readonly string[] {
  const line = lines[index]
  if (line === undefined) return []
  const {low, high} = stepsOf(line)
  const share = amountTerms(line, index, 1 / line.grams)
  return [
    `${share} - d${index} <= 1`,
    `${share} + d${index} >= 1`,
    ...(isWhole(line)
      ? []
      : [`n${index} + ${high} s${index} <= ${high}`, `n${index} + ${low} s${index} >= ${low}`]),
  ]
}

/** Grams of a line, times a factor. */
function amountTerms(line: Line, index: number, factor: number): string {
  const steps = `${signed(line.step * factor)} n${index}`
  return isWhole(line) ? steps : `${steps} ${signed(line.grams * factor)} s${index}`
}

function rowText(row: FitRow, lines: Lines, slack?: string): string {
  const terms = sumText(row, lines)
  const give = slack === undefined ? '' : row.sense === '<=' ? ` - ${slack}` : ` + ${slack}`
  return `${terms}${give} ${row.sense} ${(row.bound - row.fixed) / row.scale}`
}

function sumText({perGram, scale}: FitRow, lines: Lines): string {
  const terms = lines.flatMap((line, index) => {
    const weight = (perGram[index] ?? 0) / scale
    return weight === 0 ? [] : [amountTerms(line, index, weight)]
  })
  return terms.length === 0 ? '0 d0' : terms.join(' ')
}

function aimText(aim: Aim, lines: Lines, rows: readonly FitRow[]): string {
  switch (aim.kind) {
    case 'change':
      return lines.map((_, index) => `d${index}`).join(' + ')
    case 'shortfall':
      return rows.map((_, index) => `v${index}`).join(' + ')
    case 'row': {
      const sign = aim.row.sense === '<=' ? 1 : -1
      return sumText({...aim.row, perGram: aim.row.perGram.map((one) => sign * one)}, lines)
    }
  }
}

function signed(value: number): string {
  return value < 0 ? `- ${-value}` : `+ ${value}`
}
