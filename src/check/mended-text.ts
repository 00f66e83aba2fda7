import type {Fix} from '../cookbook/problem.ts'

/**
 * A text with its fixes in place and every other character as it was. Of two that overlap the
 * first stands: the next check sees what is left.
 */
export function mendedText(text: string, fixes: readonly Fix[]): string {
  const lineEnding = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n'
  const inOrder = fixes.toSorted((left, right) => startOf(left) - startOf(right))
  let mended = ''
  let behind = 0
  for (const fix of inOrder) {
    const start = startOf(fix)
    const end = fix.place.end.offset ?? start
    if (start < behind) continue
    const quote = quoteAround(text.slice(start, end))
    const written = fix.text.replaceAll('\n', lineEnding)
    mended += `${text.slice(behind, start)}${quote}${written}${quote}`
    behind = end
  }
  return mended + text.slice(behind)
}

function startOf({place}: Fix): number {
  // Every place that was read from a file has its offset.
  return place.start.offset ?? Number.NaN
}

function quoteAround(value: string): string {
  const [first = ''] = value
  const isQuoted = /["']/.test(first) && value.length > 1 && value.endsWith(first)
  return isQuoted ? first : ''
}
