import type {Pan} from '../../cookbook/recipe.ts'

/** Area of the bottom, mm²: π(d/2)², side², length × width, a ring without its tube. */
export function panArea(pan: Pan): number {
  const {shape, acrossMillimetres: across, secondMillimetres: second = 0} = pan
  switch (shape) {
    case 'round':
      return disc(across)
    case 'square':
      return across ** 2
    case 'rectangle':
      return across * second
    case 'ring':
      return disc(across) - disc(second)
  }
}

/** What fits, mm³; undefined where the depth is not said. */
export function panVolume(pan: Pan): number | undefined {
  return pan.depthMillimetres === undefined ? undefined : panArea(pan) * pan.depthMillimetres
}

/** How much more batter another tin takes. */
export interface PanScale {
  /** For the same depth of batter: area ÷ area. */
  readonly byArea: number
  /** Filled to the same share: volume ÷ volume; absent where a depth is not said. */
  readonly byVolume?: number
}

/** Factors for the ingredients when a tin is changed; baking time does not scale with them. */
export function panScale(from: Pan, to: Pan): PanScale {
  const [volumeFrom, volumeTo] = [panVolume(from), panVolume(to)]
  return {
    byArea: panArea(to) / panArea(from),
    ...(volumeFrom !== undefined && volumeTo !== undefined && {byVolume: volumeTo / volumeFrom}),
  }
}

function disc(diameterMillimetres: number): number {
  return Math.PI * (diameterMillimetres / 2) ** 2
}
