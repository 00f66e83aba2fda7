import {isMap, isPair, isScalar, parseDocument, visit} from 'yaml'

/** Where a cursor stands in YAML that is still being typed. */
export interface YamlCursor {
  readonly kind: 'key' | 'value'
  /** The keys that lead to the mapping of a key, or to a value. */
  readonly path: readonly string[]
  /** The whole key or value under the cursor, and the part before it. */
  readonly text: string
  readonly typed: string
  /** Offsets of `text`. */
  readonly from: number
  readonly to: number
  /** Within braces or brackets, where a comma ends a text. */
  readonly isFlow: boolean
  /** The key has its colon already. */
  readonly hasColon: boolean
  /** The other keys of the mapping, for a key. */
  readonly siblings: readonly string[]
}

/** Stands for the text under the cursor while the rest is parsed; no writer's key looks like it. */
const stand = '\uE000'

/** @param offset in `yaml`, 0 up to its length */
export function cursorInYaml(yaml: string, offset: number): YamlCursor | undefined {
  const token = tokenAt(yaml, offset)
  if (!token) return undefined
  const {kind, from, to, hasColon} = token
  const standing = kind === 'key' && !hasColon ? `${stand}: 0` : stand
  const found = keysTo(yaml.slice(0, from) + standing + yaml.slice(to))
  return (
    found && {
      ...token,
      ...found,
      text: yaml.slice(from, to),
      typed: yaml.slice(from, Math.max(from, offset)),
    }
  )
}

type Token = Pick<YamlCursor, 'kind' | 'from' | 'to' | 'isFlow' | 'hasColon'>

/** Finds the key or value by its line alone, so that slips elsewhere do not matter. */
function tokenAt(yaml: string, offset: number): Token | undefined {
  const lineStart = yaml.lastIndexOf('\n', offset - 1) + 1
  const lineEnd = yaml.indexOf('\n', offset)
  const line = yaml.slice(lineStart, lineEnd < 0 ? yaml.length : lineEnd)
  const column = offset - lineStart
  const opened: string[] = []
  let start = 0
  let isValue = false
  for (let at = 0; at < column; at++) {
    const sign = line[at] ?? ''
    const isApart = /[\s{[,:]/.test(line[at - 1] ?? ' ')
    if (/["']/.test(sign) && isApart) {
      const close = line.indexOf(sign, at + 1)
      if (close >= 0 && close < column) at = close
    } else if (sign === '#' && isApart) return undefined
    else if (/[{[]/.test(sign) && isApart) {
      opened.push(sign)
      start = at + 1
      isValue = sign === '['
    } else if (/[}\]]/.test(sign) && opened.length > 0) {
      opened.pop()
      start = at + 1
    } else if (sign === ',' && opened.length > 0) {
      start = at + 1
      isValue = opened.at(-1) === '['
    } else if (sign === ':' && /\s|^$/.test(line[at + 1] ?? '') && at + 1 <= column) {
      start = at + 1
      isValue = true
    } else if (sign === '-' && opened.length === 0 && /^\s*-\s/.test(line.slice(0, at + 2))) {
      start = at + 1
      isValue = true
    }
  }
  const blank = /^\s*/.exec(line.slice(start))?.[0].length ?? 0
  const from = Math.min(start + blank, column)
  const isFlow = opened.length > 0
  const rest = line.slice(from)
  const ending = isFlow ? /\s*(?:[,}\]]|:(?=\s|$)|$)/ : /\s*(?:\s#|:(?=\s|$)|$)/
  const valueEnding = isFlow ? /\s*(?:[,}\]]|$)/ : /\s*(?:\s#|$)/
  const length = rest.search(isValue ? valueEnding : ending)
  const to = Math.max(from + length, column)
  return {
    kind: isValue ? 'value' : 'key',
    from: lineStart + from,
    to: lineStart + to,
    isFlow,
    hasColon: !isValue && /^\s*:(?:\s|$)/.test(line.slice(to)),
  }
}

/** The keys above the stand-in, and those beside it. */
function keysTo(yaml: string): Pick<YamlCursor, 'path' | 'siblings'> | undefined {
  const document = parseDocument(yaml, {
    schema: 'failsafe',
    uniqueKeys: false,
    strict: false,
    prettyErrors: false,
  })
  let found: Pick<YamlCursor, 'path' | 'siblings'> | undefined
  visit(document, {
    Scalar(_, scalar, ancestors) {
      // Where more than the stand-in was read, a slip above has swallowed the place.
      if (scalar.value !== stand) return undefined
      const mapping = ancestors.findLast(isMap)
      const path = ancestors.flatMap((node) =>
        isPair(node) && isScalar(node.key) && node.key !== scalar ? [String(node.key.value)] : [],
      )
      const siblings = (mapping?.items ?? []).flatMap(({key}) =>
        isScalar(key) && key !== scalar ? [String(key.value)] : [],
      )
      found = {path, siblings}
      return visit.BREAK
    },
  })
  return found
}
