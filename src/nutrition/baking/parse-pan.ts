import type {Pan} from '../../cookbook/recipe.ts'
import {parseMillimetres, parseSides} from '../../units/parse-length.ts'
import {type Parsed, parsed, refused} from '../../units/parsed.ts'

const expected =
  'a tin such as `24 cm round`, `20 cm square`, `23 x 33 cm` or `26 cm ring, tube 8 cm`, with `, 7 cm deep` where it matters'

/** Reads a tin in a few words: shape and size, then the tube and the depth after commas. */
export function parsePan(text: string): Parsed<Pan> {
  const [outline = '', ...details] = text.split(',').map((part) => part.trim())
  let pan = parseOutline(outline)
  for (const detail of details) pan = pan.ok ? withDetail(pan.value, detail) : pan
  return pan
}

function parseOutline(text: string): Parsed<Pan> {
  const words = /^(?:(round|square|ring)\s+)?(.*?)(?:\s+(round|square|ring))?$/i.exec(text)
  const shape = (words?.[1] ?? words?.[3])?.toLowerCase()
  const size = words?.[2] ?? ''
  if (shape === undefined) {
    const sides = parseSides(size)
    if (!sides.ok) return refused(expected)
    const [short, long] = sides.value
    return parsed({shape: 'rectangle', acrossMillimetres: long, secondMillimetres: short, text})
  }
  const across = parseMillimetres(size)
  if (!across.ok || !isShape(shape)) return refused(expected)
  return parsed({shape, acrossMillimetres: across.value, text})
}

function withDetail(pan: Pan, detail: string): Parsed<Pan> {
  const tube = /^tube\s+(.+)$/i.exec(detail)?.[1]
  const depth = /^(.+?)\s+deep$/i.exec(detail)?.[1]
  const length = parseMillimetres(tube ?? depth ?? '')
  if (!length.ok || (tube !== undefined && pan.shape !== 'ring')) return refused(expected)
  if (tube === undefined) {
    return parsed({...pan, depthMillimetres: length.value, text: `${pan.text}, ${detail}`})
  }
  return length.value < pan.acrossMillimetres
    ? parsed({...pan, secondMillimetres: length.value, text: `${pan.text}, ${detail}`})
    : refused(expected)
}

function isShape(word: string): word is 'round' | 'square' | 'ring' {
  return word === 'round' || word === 'square' || word === 'ring'
}
