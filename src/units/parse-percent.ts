import {numberAtStart} from './number-text.ts'
import {type Parsed, parsed, refused} from './parsed.ts'

/** Reads a percentage: `40 %`, `7.5%`. @returns a ratio, 0 or more */
export function parsePercent(text: string): Parsed<number> {
  const start = numberAtStart(text.trim())
  if (!start.ok) return start
  const {number, rest} = start.value
  if (rest.trim() !== '%' || number.halfRange > 0) return refused('a percentage such as `20 %`')
  return parsed(number.value / 100)
}
