import {parseMillimetres, parseSides} from '../units/parse-length.ts'
import {type Parsed, parsed} from '../units/parsed.ts'
import type {Pan} from './recipe.ts'
import {mapping, optional} from './yaml/collection-readers.ts'
import {converted, intact} from './yaml/converted.ts'
import type {Reader} from './yaml/reader.ts'
import {parsedText} from './yaml/text-readers.ts'

/** The tin from above. */
type Outline = Omit<Pan, 'depthMillimetres'>

const fields = {
  round: optional(across('round'), 'Diameter of a round tin'),
  square: optional(across('square'), 'Side of a square tin'),
  rectangle: optional(
    parsedText('two sides such as `23 x 33 cm`', rectangle, ['23 x 33 cm']),
    'Both sides of a rectangular tin',
  ),
  ring: optional(across('ring'), 'Diameter of a ring tin'),
  tube: optional(length(), 'Diameter of the tube of a ring tin'),
  depth: optional(length(), 'Depth of the tin'),
}

/** `pan: { round: 24 cm, depth: 7 cm }`: one shape, with its depth. */
export const pan: Reader<Pan> = converted(
  intact(mapping('a tin such as `{ round: 24 cm, depth: 7 cm }`', fields)),
  ({value: {depth, tube, ...shapes}, place}, {report, subject}) => {
    const [outline, second] = Object.values(shapes).filter((shape) => shape !== undefined)
    if (!outline || second) {
      report({
        ruleId: 'readable-value',
        place: second?.place ?? place,
        reason: `${subject} has ${second ? 'more than one shape' : 'no shape'}, expected one of \`round\`, \`square\`, \`rectangle\`, \`ring\``,
      })
      return undefined
    }
    if (tube && outline.value.shape !== 'ring') {
      report({
        ruleId: 'readable-value',
        place: tube.place,
        reason: `${subject} has a \`tube\` without a \`ring\`, expected both or neither`,
      })
    }
    return {
      ...outline.value,
      ...(tube && {secondMillimetres: tube.value.millimetres}),
      ...(depth && {
        depthMillimetres: depth.value.millimetres,
        text: `${outline.value.text}, ${depth.value.text} deep`,
      }),
    }
  },
)

function across(shape: Pan['shape']): Reader<Outline> {
  return converted(length(), ({value: {millimetres, text}}) => ({
    shape,
    acrossMillimetres: millimetres,
    text,
  }))
}

function length(): Reader<{readonly millimetres: number; readonly text: string}> {
  return parsedText(
    'a length such as `24 cm`',
    (text) => {
      const millimetres = parseMillimetres(text)
      return millimetres.ok ? parsed({millimetres: millimetres.value, text}) : millimetres
    },
    ['24 cm', '9 in'],
  )
}

function rectangle(text: string): Parsed<Outline> {
  const sides = parseSides(text)
  if (!sides.ok) return sides
  const [short, long] = sides.value
  return parsed({shape: 'rectangle', acrossMillimetres: long, secondMillimetres: short, text})
}
