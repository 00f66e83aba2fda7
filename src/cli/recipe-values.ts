import {printable} from '../report/printable.ts'
import {parseWeight} from '../units/parse-amount.ts'
import {type Parsed, parsed, refused} from '../units/parsed.ts'

/** Longer titles are sentences, and do not fit into a file name. */
const longestTitle = 80

/** A title, trimmed. */
export function parseTitle(written: string): Parsed<string> {
  const title = written.trim()
  if (title !== '' && title.length <= longestTitle && printable(title) === title) {
    return parsed(title)
  }
  return refused(`one line of up to ${longestTitle} characters`)
}

/** How many servings: a whole number, as front matter takes it. */
export function parseServes(written: string): Parsed<string> {
  return /^[1-9]\d{0,3}$/u.test(written) ? parsed(written) : refused('a whole number from 1 up')
}

/** The weight of a finished batch. */
export function parseYield(written: string): Parsed<string> {
  // Only weights pass, so the cookbook's cups do not matter here.
  const read = parseWeight(written, {cups: 'metric', measures: new Set()})
  return read.ok ? parsed(written) : read
}
