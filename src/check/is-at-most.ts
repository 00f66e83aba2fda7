/**
 * Slack for floating-point error alone, as a share of the larger number: a difference that is
 * exactly on a boundary passes.
 */
const floatSlackRatio = 1e-9

/** Whether `left` is no more than `right`, but for floating-point error. */
export function isAtMost(left: number, right: number): boolean {
  return left <= right + floatSlackRatio * Math.max(Math.abs(left), Math.abs(right))
}
