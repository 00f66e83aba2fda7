/**
 * Whole percentages that add up to 100, by largest remainders: of rounded ones a reader would
 * add up 99 or 101.
 * @param shares 0 or more each, not all 0; need not add up to 1
 */
export function percentages(shares: readonly number[]): readonly number[] {
  const total = shares.reduce((sum, share) => sum + share, 0)
  const exact = shares.map((share) => (100 * share) / total)
  const whole = exact.map(Math.floor)
  const left = 100 - whole.reduce((sum, percent) => sum + percent, 0)
  const byRemainder = exact
    .map((percent, index) => ({index, remainder: percent - Math.floor(percent)}))
    .toSorted((one, other) => other.remainder - one.remainder || one.index - other.index)
  const raised = new Set(byRemainder.slice(0, left).map(({index}) => index))
  return whole.map((percent, index) => percent + (raised.has(index) ? 1 : 0))
}
