/**
 * The candidate a writer most likely meant, for a message that suggests it.
 * @param word as written; case does not matter
 * @returns the candidate with the fewest slips of the pen (one letter more, less, other or swapped
 *   with its neighbour), or nothing when even that one needs more than a third of the word's length
 */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  const lower = word.toLowerCase()
  const most = lower.length < 2 ? 0 : Math.max(1, Math.floor(lower.length / 3))
  let best: string | undefined
  let fewest = most + 1
  for (const candidate of candidates) {
    const count = slips(lower, candidate.toLowerCase(), fewest)
    if (count >= fewest) continue
    best = candidate
    fewest = count
  }
  return best
}

/**
 * Edit distance with swapped neighbours as one slip (optimal string alignment).
 * @param limit the count from which the exact number no longer matters
 */
export function slips(left: string, right: string, limit: number): number {
  if (Math.abs(left.length - right.length) >= limit) return limit
  let beforeLast: readonly number[] = []
  let last: readonly number[] = Array.from({length: right.length + 1}, (_, index) => index)
  for (let row = 1; row <= left.length; row++) {
    const current = [row]
    for (let column = 1; column <= right.length; column++) {
      const isSame = left[row - 1] === right[column - 1]
      const isSwapped =
        row > 1 &&
        column > 1 &&
        left[row - 1] === right[column - 2] &&
        left[row - 2] === right[column - 1]
      current.push(
        Math.min(
          cell(last, column) + 1,
          cell(current, column - 1) + 1,
          cell(last, column - 1) + (isSame ? 0 : 1),
          isSwapped ? cell(beforeLast, column - 2) + 1 : Number.POSITIVE_INFINITY,
        ),
      )
    }
    if (Math.min(...current) >= limit) return limit
    beforeLast = last
    last = current
  }
  return Math.min(cell(last, right.length), limit)
}

function cell(row: readonly number[], column: number): number {
  return row[column] ?? Number.POSITIVE_INFINITY
}
