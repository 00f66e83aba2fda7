/** What cooks count in: a food gives each of them its weight, or the line is refused. */

/** Singular to plural; sizes stand alone (`1 medium`, `2 large`). */
const measurePlurals: Readonly<Record<string, string>> = {
  each: 'each',
  small: 'small',
  medium: 'medium',
  large: 'large',
  'extra large': 'extra large',
  bag: 'bags',
  ball: 'balls',
  bar: 'bars',
  block: 'blocks',
  bottle: 'bottles',
  breast: 'breasts',
  bulb: 'bulbs',
  bunch: 'bunches',
  can: 'cans',
  carton: 'cartons',
  clove: 'cloves',
  cob: 'cobs',
  cube: 'cubes',
  dash: 'dashes',
  drop: 'drops',
  drumstick: 'drumsticks',
  ear: 'ears',
  fillet: 'fillets',
  floret: 'florets',
  half: 'halves',
  handful: 'handfuls',
  head: 'heads',
  jar: 'jars',
  knob: 'knobs',
  leaf: 'leaves',
  leg: 'legs',
  link: 'links',
  loaf: 'loaves',
  packet: 'packets',
  pat: 'pats',
  piece: 'pieces',
  pinch: 'pinches',
  pod: 'pods',
  pot: 'pots',
  rasher: 'rashers',
  ring: 'rings',
  rib: 'ribs',
  roll: 'rolls',
  sachet: 'sachets',
  scoop: 'scoops',
  segment: 'segments',
  sheet: 'sheets',
  slice: 'slices',
  spear: 'spears',
  spray: 'sprays',
  sprig: 'sprigs',
  square: 'squares',
  stalk: 'stalks',
  steak: 'steaks',
  stick: 'sticks',
  strip: 'strips',
  tablet: 'tablets',
  thigh: 'thighs',
  tin: 'tins',
  tub: 'tubs',
  wedge: 'wedges',
  wing: 'wings',
}

const singulars: ReadonlyMap<string, string> = new Map(
  Object.entries(measurePlurals).flatMap(([one, many]) => [
    [one, one],
    [many, one],
  ]),
)

export const measureWords: readonly string[] = [...singulars.keys()]

/**
 * The measure that words behind a number mean.
 * @param own measures of the cookbook's own foods, in the singular
 * @returns the singular, or nothing for a word nobody counts in
 */
export function measureOf(words: string, own: ReadonlySet<string>): string | undefined {
  if (own.has(words)) return words
  const known = singulars.get(words)
  if (known !== undefined) return known
  return words.endsWith('s') && own.has(words.slice(0, -1)) ? words.slice(0, -1) : undefined
}

/** `cloves` for 2 cloves; abbreviations and sizes stay as they are. */
export function measureText(measure: string, count: number): string {
  if (count <= 1) return measure
  return measurePlurals[measure] ?? `${measure}s`
}
