import {numberAtStart} from './number-text.ts'
import {type Parsed, parsed, type Refusal, refused} from './parsed.ts'
import {lengthNames, unitWords} from './unit-names.ts'
import {type LengthUnit, millimetresPerUnit} from './units.ts'

/** A number with its unit, where one is written. */
interface WrittenLength {
  readonly number: number
  readonly unit?: LengthUnit
}

/** Reads a length: `24 cm`, `9 in`. @returns millimetres, above 0 */
export function parseMillimetres(text: string): Parsed<number> {
  const length = writtenLength(text)
  if (!length.ok) return length
  const {number, unit} = length.value
  if (!unit) return noLength()
  return parsed(number * millimetresPerUnit[unit])
}

/** Reads two sides: `23 x 33 cm`, `9 in × 13 in`. @returns millimetres, the shorter side first */
export function parseSides(text: string): Parsed<readonly [number, number]> {
  const sides = text.split(/[x×]/i).map(writtenLength)
  const [first, second] = sides
  if (sides.length !== 2 || !first?.ok || !second?.ok || !second.value.unit) {
    return sides.find((side) => !side.ok) ?? refused('two sides such as `23 x 33 cm`')
  }
  const firstUnit = first.value.unit ?? second.value.unit
  const one = first.value.number * millimetresPerUnit[firstUnit]
  const other = second.value.number * millimetresPerUnit[second.value.unit]
  return parsed([Math.min(one, other), Math.max(one, other)])
}

function writtenLength(text: string): Parsed<WrittenLength> {
  const start = numberAtStart(text.trim())
  if (!start.ok) return start
  const {number, rest} = start.value
  if (number.halfRange > 0) return noLength()
  if (number.value === 0) return refused('a length above `0`')
  const words = unitWords(rest)
  if (words === '') return parsed({number: number.value})
  const unit = lengthNames.get(words)
  return unit ? parsed({number: number.value, unit}) : noLength()
}

function noLength(): Refusal {
  return refused('a length such as `24 cm` or `9 in`')
}
