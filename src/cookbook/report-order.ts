import type {Problem} from './problem.ts'

/**
 * Problems as a report lists them: by path, position and id, so that two runs print the same. By
 * UTF-16 code units, whatever the locale.
 */
export function inReportOrder(problems: readonly Problem[]): readonly Problem[] {
  return problems.toSorted(
    (left, right) =>
      order(left.file, right.file) ||
      line(left) - line(right) ||
      column(left) - column(right) ||
      order(left.ruleId, right.ruleId) ||
      order(left.reason, right.reason),
  )
}

/** A problem of the file as a whole stands before those of its lines. */
function line({place}: Problem): number {
  return place?.start.line ?? 0
}

function column({place}: Problem): number {
  return place?.start.column ?? 0
}

function order(left: string, right: string): number {
  if (left === right) return 0
  return left < right ? -1 : 1
}
