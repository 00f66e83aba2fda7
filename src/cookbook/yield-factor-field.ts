import {numberAtStart} from '../units/number-text.ts'
import {type Parsed, parsed, refused} from '../units/parsed.ts'
import type {YieldFactor} from './recipe.ts'
import {parsedText} from './yaml/text-readers.ts'

const expected =
  'a number such as `0.73`, or a cooked food such as `chicken breast, skinless, grilled`'

/** More than any dry grain or pulse takes up. */
const largestFactor = 20

/** `0.73`, or the cooked food of the table that shows it. */
export const yieldFactor = parsedText(expected, parseYieldFactor, [
  '0.73',
  'chicken breast, skinless, grilled',
])

function parseYieldFactor(written: string): Parsed<YieldFactor> {
  if (/^\p{Letter}/u.test(written)) return parsed({kind: 'like', cooked: written})
  const start = numberAtStart(written)
  if (!start.ok) return start
  const {number, rest} = start.value
  const isFactor = rest === '' && number.halfRange === 0 && number.value > 0
  if (!isFactor || number.value > largestFactor) return refused(expected)
  return parsed({kind: 'ratio', ratio: number.value, increment: number.increment})
}
