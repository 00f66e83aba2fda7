import {
  asWritten,
  type FitLine,
  type FitProblem,
  type FitRow,
  type LinearSum,
  type ListedAmounts,
  type SteppedAmounts,
  sumValue,
} from './fit-problem.ts'

/** What is kept as small as possible. */
export type Aim =
  /** The change, with every target met. */
  | {readonly kind: 'change'}
  /** The shortfalls, each as a share of its target. */
  | {readonly kind: 'shortfall'}
  /** One row alone, against its bound, as far as the amounts let it go. */
  | {readonly kind: 'row'; readonly row: FitRow}

type Lines = readonly FitLine[]

/**
 * A fit as a mixed-integer program in the LP format that solvers read ("CPLEX LP file format").
 * Amounts are counted in steps (`n`) unless they stay as written (`s`), or are one of a list (`b`);
 * `d` is a line's change and `v` a target's shortfall. Everything is scaled to about 1: a solver's
 * tolerances are absolute.
 */
export function programText({lines, rows, kept}: FitProblem, aim: Aim): string {
  const isElastic = aim.kind === 'shortfall'
  const shown = aim.kind === 'row' ? [] : rows
  const constraints = [
    ...lines.flatMap(changeRows),
    ...kept.flatMap((one) => one.rows.map((row) => rowText(row, lines))),
    ...shown.map((row, index) => rowText(row, lines, isElastic ? `v${index}` : undefined)),
  ]
  return [
    'Minimize',
    ` aim: ${aimText(aim, lines, rows)}`,
    'Subject To',
    ...constraints.map((constraint, index) => ` c${index}: ${constraint}`),
    'Bounds',
    ...lines.flatMap(boundsText),
    'General',
    ` ${lines.flatMap(({amounts}, index) => (amounts.kind === 'steps' ? [`n${index}`] : [])).join(' ')}`,
    'Binary',
    ` ${lines.flatMap(binaries).join(' ')}`,
    'End',
    '',
  ].join('\n')
}

/** Whether the amount as written may stay though it is no whole number of steps. */
export function staysApart(grams: number, {step, mayStay}: SteppedAmounts): boolean {
  return mayStay && Math.abs(Math.round(grams / step) * step - grams) >= 1e-9
}

/** Least and most whole steps. */
function stepsOf({low, high, step}: SteppedAmounts): {readonly low: number; readonly high: number} {
  return {low: Math.ceil(low / step - 1e-9), high: Math.floor(high / step + 1e-9)}
}

function boundsText({grams, amounts}: FitLine, index: number): readonly string[] {
  if (amounts.kind === 'listed') return []
  const {low, high} = stepsOf(amounts)
  return [` ${staysApart(grams, amounts) ? 0 : low} <= n${index} <= ${high}`]
}

function binaries({grams, amounts}: FitLine, index: number): readonly string[] {
  if (amounts.kind === 'listed') return choices(amounts, index)
  return staysApart(grams, amounts) ? [`s${index}`] : []
}

function choices({grams}: ListedAmounts, index: number): readonly string[] {
  return grams.map((_, choice) => choiceName(index, choice))
}

/** The variable that is 1 where a line takes that weight of its list. */
export function choiceName(line: number, choice: number): string {
  return `b${line}_${choice}`
}

/** A change counts whichever way it goes; an amount that stays takes no steps; one of a list is taken. */
function changeRows(line: FitLine, index: number): readonly string[] {
  const {grams, amounts} = line
  const share = amountTerms(line, index, 1 / grams)
  const change = [`${share} - d${index} <= 1`, `${share} + d${index} >= 1`]
  if (amounts.kind === 'listed') return [...change, `${choices(amounts, index).join(' + ')} = 1`]
  if (!staysApart(grams, amounts)) return change
  const {low, high} = stepsOf(amounts)
  return [
    ...change,
    `n${index} + ${high} s${index} <= ${high}`,
    `n${index} + ${low} s${index} >= ${low}`,
  ]
}

/** Grams of a line, times a factor. */
function amountTerms({grams, amounts}: FitLine, index: number, factor: number): string {
  if (amounts.kind === 'listed') {
    return amounts.grams
      .map((each, choice) => `${signed(each * factor)} ${choiceName(index, choice)}`)
      .join(' ')
  }
  const steps = `${signed(amounts.step * factor)} n${index}`
  return staysApart(grams, amounts) ? `${steps} ${signed(grams * factor)} s${index}` : steps
}

function rowText(row: FitRow, lines: Lines, slack?: string): string {
  const {perGram, fixed} = againstBound(row, lines)
  const give = slack === undefined ? '' : row.sense === '<=' ? ` - ${slack}` : ` + ${slack}`
  return `${sumText(perGram, lines)}${give} ${row.sense} ${-fixed}`
}

/** What a row is above its bound, as a share of its scale; a quotient times what is below its line. */
function againstBound({over, under, bound, scale}: FitRow, lines: Lines): LinearSum {
  const {perGram, fixed} = under ?? {perGram: [], fixed: 1}
  const size = scale * (under ? sumValue(under, asWritten({lines})) : 1)
  return {
    perGram: over.perGram.map((weight, index) => (weight - bound * (perGram[index] ?? 0)) / size),
    fixed: (over.fixed - bound * fixed) / size,
  }
}

function sumText(perGram: readonly number[], lines: Lines): string {
  const terms = lines.flatMap((line, index) => {
    const weight = perGram[index] ?? 0
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
      const {perGram} = againstBound(aim.row, lines)
      return sumText(
        perGram.map((weight) => sign * weight),
        lines,
      )
    }
  }
}

function signed(value: number): string {
  return value < 0 ? `- ${-value}` : `+ ${value}`
}
