import {type FitLine, type FitProblem, shortfall} from '../../src/fit/fit-problem.ts'

/** The amounts with the least change of all that meet every row, by trying every one of them. */
export function triedOut({lines, rows, kept}: FitProblem): readonly number[] | undefined {
  const all = [...rows, ...kept.flatMap((one) => one.rows)]
  let best: readonly number[] | undefined
  let least = Number.POSITIVE_INFINITY
  const walk = (grams: readonly number[], change: number): void => {
    // What has changed more than the best so far need not be looked at.
    if (change >= least) return
    const line = lines[grams.length]
    if (line !== undefined) {
      for (const one of choices(line)) {
        walk([...grams, one], change + Math.abs(one - line.grams) / line.grams)
      }
      return
    }
    if (all.some((row) => shortfall(row, grams) > 0)) return
    best = grams
    least = change
  }
  walk([], 0)
  return best
}

/** Every amount a line may become. */
export function choices({grams, amounts}: FitLine): readonly number[] {
  if (amounts.kind === 'listed') return amounts.grams
  const {low, high, step, mayStay} = amounts
  const first = Math.ceil(low / step)
  const steps = Array.from(
    {length: Math.floor(high / step) - first + 1},
    (_, index) => (first + index) * step,
  )
  return mayStay ? [grams, ...steps] : steps
}
