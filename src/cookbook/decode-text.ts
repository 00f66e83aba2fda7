import type {Point} from 'unist'

/** Text of a file, or why it is none and where. */
export type Decoded =
  | {readonly kind: 'text'; readonly text: string}
  | {readonly kind: 'not text'; readonly what: string; readonly at: Point}

/** U+FEFF in UTF-8. */
const byteOrderMark = [0xef, 0xbb, 0xbf]

const fileStart: Point = {line: 1, column: 1, offset: 0}

/**
 * The characters of a UTF-8 file, without its byte order mark, or its several: programs that put
 * files together leave one more each time. Anything else (a picture renamed,
 * another encoding) is refused at the first byte that is not text, never guessed at.
 */
export function decodeText(bytes: Uint8Array): Decoded {
  if (startsWith(bytes, [0xff, 0xfe]) || startsWith(bytes, [0xfe, 0xff])) {
    return {kind: 'not text', what: 'UTF-16 text', at: fileStart}
  }
  let body = bytes
  while (startsWith(body, byteOrderMark)) body = body.subarray(byteOrderMark.length)
  const text = decoded(body)
  if (text === undefined) return firstBadLine(body)
  const nul = text.indexOf('\0')
  if (nul < 0) return {kind: 'text', text}
  const before = text.slice(0, nul)
  const line = before.split('\n').length
  return {kind: 'not text', what: 'a NUL byte', at: pointIn(line, before, nul)}
}

/** The line that cannot be decoded, as one must be: a line feed is never part of another character. */
function firstBadLine(bytes: Uint8Array): Decoded {
  let start = 0
  let offset = 0
  for (let line = 1; ; line++) {
    const feed = bytes.indexOf(0x0a, start)
    const end = feed < 0 ? bytes.length : feed
    const content = bytes.subarray(start, end)
    const text = decoded(content)
    if (text === undefined) {
      const before = longestDecodable(content)
      const byte = content.at(new TextEncoder().encode(before).length) ?? 0
      const what = `the byte \`${byte.toString(16).toUpperCase().padStart(2, '0')}\``
      return {kind: 'not text', what, at: pointIn(line, before, offset + before.length)}
    }
    offset += text.length + 1
    start = end + 1
  }
}

/** What stands before the first byte that is not UTF-8. */
function longestDecodable(bytes: Uint8Array): string {
  const decoder = new TextDecoder('utf-8', {fatal: true, ignoreBOM: true})
  let text = ''
  try {
    for (const byte of bytes) text += decoder.decode(Uint8Array.of(byte), {stream: true})
  } catch {
    return text
  }
  return text
}

function decoded(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', {fatal: true, ignoreBOM: true}).decode(bytes)
  } catch {
    return undefined
  }
}

function startsWith(bytes: Uint8Array, mark: readonly number[]): boolean {
  return mark.every((byte, index) => bytes[index] === byte)
}

/** The point behind `before`, whose last line is line `line` of the file. */
function pointIn(line: number, before: string, offset: number): Point {
  return {line, column: before.length - before.lastIndexOf('\n'), offset}
}
