/** Lines around a change that are shown unchanged. */
const contextLines = 3

interface Line {
  readonly sign: ' ' | '-' | '+'
  readonly text: string
}

/**
 * The difference of two texts in the unified format, which `patch` and `git apply` take. Source:
 * IEEE Std 1003.1-2024 (POSIX), `diff -u`.
 * @param file named as before and after
 * @returns empty where the texts are the same
 */
export function unifiedDiff(file: string, before: string, after: string): string {
  if (before === after) return ''
  const lines = changedLines(linesOf(before), linesOf(after))
  const hunks = hunkRanges(lines).map((range) => hunkText(lines, range))
  return [`--- a/${file}\n`, `+++ b/${file}\n`, ...hunks].join('')
}

/** Lines with what ends them, so that nothing is lost. */
function linesOf(text: string): readonly string[] {
  return text.match(/[^\n]*\n|[^\n]+$/g) ?? []
}

/**
 * Both texts in one, line beside line: right for any two texts, and short where lines were
 * changed or one was added or taken out, as a mend does.
 */
function changedLines(before: readonly string[], after: readonly string[]): readonly Line[] {
  const lines: Line[] = []
  let [row, column] = [0, 0]
  while (row < before.length || column < after.length) {
    const [left, right] = [before[row], after[column]]
    if (left !== undefined && left === right) {
      lines.push({sign: ' ', text: left})
      row++
      column++
      continue
    }
    const isAdded = left !== undefined && after[column + 1] === left
    const isTakenOut = !isAdded && right !== undefined && before[row + 1] === right
    if (left !== undefined && !isAdded) {
      lines.push({sign: '-', text: left})
      row++
    }
    if (right !== undefined && !isTakenOut) {
      lines.push({sign: '+', text: right})
      column++
    }
  }
  return lines
}

interface Range {
  readonly from: number
  readonly to: number
}

/** Changes with their context; those that touch are one hunk. */
function hunkRanges(lines: readonly Line[]): readonly Range[] {
  const ranges: Range[] = []
  for (const [index, {sign}] of lines.entries()) {
    if (sign === ' ') continue
    const from = Math.max(0, index - contextLines)
    const to = Math.min(lines.length, index + 1 + contextLines)
    const last = ranges.at(-1)
    if (last && from <= last.to) ranges.splice(-1, 1, {from: last.from, to})
    else ranges.push({from, to})
  }
  return ranges
}

function hunkText(lines: readonly Line[], {from, to}: Range): string {
  const hunk = lines.slice(from, to)
  const count = (side: readonly Line[], sign: Line['sign']) =>
    side.filter((line) => line.sign !== sign).length
  const span = (without: Line['sign']) => {
    const length = count(hunk, without)
    const start = count(lines.slice(0, from), without)
    // An empty side names the line before it.
    return `${length === 0 ? start : start + 1},${length}`
  }
  const written = hunk.map(({sign, text}) =>
    text.endsWith('\n') ? `${sign}${text}` : `${sign}${text}\n\\ No newline at end of file\n`,
  )
  return `@@ -${span('+')} +${span('-')} @@\n${written.join('')}`
}
