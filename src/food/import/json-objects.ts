/** One object of the list in a JSON download. */
export interface ListedObject {
  readonly kind: 'object'
  readonly value: unknown
  /** Its place in the list, from 1. */
  readonly number: number
  /** Line of the file it begins on, from 1. */
  readonly line: number
}

/** Why the text cannot be read further. */
export interface JsonFault {
  readonly kind: 'fault'
  /** The object it lies in or behind, from 1; 0 before the first. */
  readonly number: number
  readonly line: number
  /** Goes on after "expected". */
  readonly expected: string
}

/** Objects and lists within one another; FoodData Central has 5. */
const mostLevels = 20

/** Characters of one object. A Foundation food with all its samples has some 500,000. */
const longestObject = 16_777_216

/** Characters before the first object. */
const longestHead = 1_000

const head = /^\s*\{\s*"(?<key>[^"\\]*)"\s*:\s*\[$/

/** What comes next, by what has been read. */
const wanted = {
  start: 'an object with one list of objects',
  'open list': 'an object or `]`',
  object: 'the rest of the object',
  'after object': '`,` or `]`',
  'after comma': 'an object',
  'closed list': '`}`',
  done: 'nothing more',
} as const

/**
 * Reads `{"Name": [{…}, {…}]}` piece by piece, holding no more than one object. The objects are
 * found by brackets and quotes alone; each is then read by JSON.parse, so nothing passes that is
 * no JSON (RFC 8259).
 */
export class ObjectsReader {
  #state: keyof typeof wanted = 'start'
  #isFaulty = false
  #key: string | undefined
  /** What has been read of the head, or of an object. */
  #held = ''
  #levels = 0
  #inString = false
  #isEscaped = false
  #line = 1
  #firstLine = 1
  #number = 0

  /** Key of the list, once it has been read. */
  get key(): string | undefined {
    return this.#key
  }

  /** The objects that are whole after another piece of the text; nothing follows a fault. */
  *push(text: string): Iterable<ListedObject | JsonFault> {
    let at = 0
    while (at < text.length && !this.#isFaulty) {
      const isWithin = this.#state === 'start' || this.#state === 'object'
      const end = isWithin ? this.#endOfPart(text, at) : at + 1
      const part = text.slice(at, end)
      at = end
      if (this.#state === 'start') yield* this.#toldOfHead(part)
      else if (this.#state === 'object') yield* this.#toldOfObject(part)
      else yield* this.#toldOfSign(part)
    }
  }

  /** What is missing behind the last piece; undefined where nothing is. */
  end(): JsonFault | undefined {
    if (this.#state === 'done' || this.#isFaulty) return undefined
    return this.#fault(`${wanted[this.#state]}, not the end`)
  }

  #fault(expected: string, line = this.#line): JsonFault {
    this.#isFaulty = true
    return {kind: 'fault', number: this.#number, line, expected}
  }

  /** Behind the bracket that opens the list or closes the object; the text's length where it goes on. */
  #endOfPart(text: string, from: number): number {
    for (let at = from; at < text.length; at++) {
      const letter = text.charCodeAt(at)
      if (letter === sign.lineFeed) this.#line++
      if (this.#inString) this.#stepInString(letter)
      else if (letter === sign.quote) this.#inString = true
      else if (letter === sign.openBrace) this.#levels++
      else if (letter === sign.openBracket) {
        if (this.#state === 'start') return at + 1
        this.#levels++
      } else if (letter === sign.closeBrace || letter === sign.closeBracket) {
        this.#levels--
        if (this.#levels === 0) return at + 1
      }
      if (this.#levels > mostLevels) return at + 1
    }
    return text.length
  }

  #stepInString(letter: number): void {
    if (this.#isEscaped) this.#isEscaped = false
    else if (letter === sign.backslash) this.#isEscaped = true
    else if (letter === sign.quote) this.#inString = false
  }

  *#toldOfHead(part: string): Iterable<JsonFault> {
    this.#held += part
    if (!part.endsWith('[') && this.#held.length <= longestHead) return
    this.#key = head.exec(this.#held)?.groups?.key
    this.#held = ''
    if (this.#key === undefined) yield this.#fault(wanted.start)
    this.#state = 'open list'
  }

  *#toldOfObject(part: string): Iterable<ListedObject | JsonFault> {
    this.#held += part
    if (this.#levels > mostLevels) yield this.#fault(`at most ${mostLevels} levels of nesting`)
    else if (this.#held.length > longestObject) yield this.#fault('a shorter object')
    else if (this.#levels === 0) {
      const text = this.#held
      this.#held = ''
      this.#state = 'after object'
      yield this.#parsedObject(text)
    }
  }

  #parsedObject(text: string): ListedObject | JsonFault {
    try {
      const value: unknown = JSON.parse(text)
      return {kind: 'object', value, number: this.#number, line: this.#firstLine}
    } catch {
      return this.#fault('an object in JSON', this.#firstLine)
    }
  }

  *#toldOfSign(written: string): Iterable<JsonFault> {
    const state = this.#state
    const mayOpen = state === 'open list' || state === 'after comma'
    if (/[ \t\r\n]/.test(written)) {
      if (written === '\n') this.#line++
    } else if (written === '{' && mayOpen) {
      this.#number++
      this.#state = 'object'
      this.#held = written
      this.#levels = 1
      this.#firstLine = this.#line
    } else if (written === ',' && state === 'after object') this.#state = 'after comma'
    else if (written === ']' && (state === 'open list' || state === 'after object')) {
      this.#state = 'closed list'
    } else if (written === '}' && state === 'closed list') this.#state = 'done'
    else yield this.#fault(`${wanted[state]}, not \`${written}\``)
  }
}

/** Code units of the signs that matter. */
const sign = {
  lineFeed: 10,
  quote: 34,
  openBracket: 91,
  backslash: 92,
  closeBracket: 93,
  openBrace: 123,
  closeBrace: 125,
} as const
