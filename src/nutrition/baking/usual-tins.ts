import type {Pan} from '../../cookbook/recipe.ts'
import {lengthUnit} from './length-unit.ts'
import {panArea, panScale} from './pan-size.ts'
import {parsePan} from './parse-pan.ts'

/** Tins that kitchens have; common practice, no source. */
const usualTins: readonly Pan[] = [
  '18 cm round, 7 cm deep',
  '20 cm round, 7 cm deep',
  '23 cm round, 7 cm deep',
  '26 cm round, 7 cm deep',
  '20 cm square, 5 cm deep',
  '11 x 21 cm, 6 cm deep',
  '23 x 33 cm, 5 cm deep',
  '24 cm ring, tube 8 cm, 8 cm deep',
  '8 in round, 2 in deep',
  '9 in square, 2 in deep',
  '9 x 13 in, 2 in deep',
].flatMap((text) => {
  const pan = parsePan(text)
  return pan.ok ? [pan.value] : []
})

/** How much of a recipe another tin takes. */
export interface OtherTin {
  readonly pan: Pan
  readonly byArea: number
  /** Absent where the recipe does not say how deep its own tin is. */
  readonly byVolume?: number
}

/** The usual tins in the unit of a recipe's own, smallest first, without those of its very size. */
export function otherTins(own: Pan): readonly OtherTin[] {
  return usualTins
    .filter((pan) => lengthUnit(pan) === lengthUnit(own))
    .map((pan) => ({pan, ...panScale(own, pan)}))
    .filter(({byArea, byVolume = byArea}) => byArea !== 1 || byVolume !== 1)
    .toSorted((left, right) => panArea(left.pan) - panArea(right.pan))
}
