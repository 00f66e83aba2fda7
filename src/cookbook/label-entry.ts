/** A packet as an entry of foods.yaml, every value as the writer gave it. */
export interface LabelEntry {
  readonly name: string
  /** Lines of the panel by the keys of foods.yaml, `per` among them, in writing order. */
  readonly panel: ReadonlyMap<string, string>
  /** What stands beside the panel; a list that is empty says there are none. */
  readonly contains?: readonly string[]
  readonly mayContain?: readonly string[]
  readonly madeFrom?: readonly string[]
  /** `weight`, `price` and `aisle`, those that are given. */
  readonly sold: ReadonlyMap<string, string>
}

/**
 * foods.yaml with an entry behind everything that is in it: not a byte before it changes, but for
 * the line end that a last line may lack. Lines end as those of the file do.
 */
export function withEntry(text: string, entry: LabelEntry): string {
  const lineEnd = text.includes('\r\n') ? '\r\n' : '\n'
  const isOpen = text !== '' && !text.endsWith('\n')
  const gap = text === '' ? '' : lineEnd
  return text + (isOpen ? lineEnd : '') + gap + entryLines(entry).join(lineEnd) + lineEnd
}

/** The lines of an entry, as foods.yaml has them. */
export function entryLines(entry: LabelEntry): readonly string[] {
  const {name, panel, contains, mayContain, madeFrom, sold} = entry
  return [
    `${quotedWhereNeeded(name)}:`,
    '  label:',
    ...Array.from(panel, ([key, value]) => `    ${keyValue([key, value])}`),
    ...(sold.size > 0 ? [`  sold: { ${Array.from(sold, keyValue).join(', ')} }`] : []),
    ...listLine('contains', contains),
    ...listLine('may contain', mayContain),
    ...listLine('made from', madeFrom),
  ]
}

function listLine(key: string, values: readonly string[] | undefined): readonly string[] {
  return values ? [`  ${key}: [${values.map(quotedWhereNeeded).join(', ')}]`] : []
}

/** A price is a number, and stays one. */
function keyValue([key, value]: readonly [string, string]): string {
  const isNumber = /^\d+(?:\.\d+)?$/.test(value)
  return `${quotedWhereNeeded(key)}: ${isNumber ? value : quotedWhereNeeded(value)}`
}

/** Words that YAML reads as something else than text, or might. */
const otherwise = /^(?:true|false|null|yes|no|on|off|y|n)$/iu

/**
 * A text as a YAML value: as it is where that is safe inside `[…]` and `{…}` too, else in double
 * quotes, which YAML shares with JSON.
 */
function quotedWhereNeeded(text: string): string {
  const isPlain = /^[\p{L}\p{N}<](?:[\p{L}\p{N} '’()%.<&/-]*[\p{L}\p{N})%.])?$/u.test(text)
  const isNumber = !Number.isNaN(Number(text))
  return isPlain && !isNumber && !otherwise.test(text) ? text : JSON.stringify(text)
}
