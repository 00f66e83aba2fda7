/**
 * Units of weight, volume and length. Sources: NIST Handbook 44 (2023), Appendix C, and NIST
 * Special Publication 811 (2008), Appendix B, for the pound, ounce, US gallon and inch; UK Weights
 * and Measures Act 1985, Schedule 1, for the imperial gallon.
 */

/** Which cup a recipe means; they differ by up to 20 %. */
export const cupSystems = ['us', 'metric', 'imperial'] as const

export type CupSystem = (typeof cupSystems)[number]

/** Grams in one of the unit, exact. */
export const gramsPerUnit = {
  g: 1,
  kg: 1000,
  oz: 28.349523125,
  lb: 453.59237,
  mg: 0.001,
} as const

export type WeightUnit = keyof typeof gramsPerUnit

const usGallonMillilitres = 3785.411784
const imperialGallonMillilitres = 4546.09

const litres = {ml: 1, cl: 10, dl: 100, l: 1000} as const

/** Spoons hold 5 and 15 ml in metric kitchens, British ones too (common practice, no source). */
const spoons = {tsp: 5, tbsp: 15} as const

const imperial = {
  'fl oz': imperialGallonMillilitres / 160,
  pint: imperialGallonMillilitres / 8,
  quart: imperialGallonMillilitres / 4,
} as const

/** Millilitres in one of the unit, exact, in the system the cookbook measures by. */
export const millilitresPerUnit = {
  us: {
    ...litres,
    tsp: usGallonMillilitres / 768,
    tbsp: usGallonMillilitres / 256,
    cup: usGallonMillilitres / 16,
    'fl oz': usGallonMillilitres / 128,
    pint: usGallonMillilitres / 8,
    quart: usGallonMillilitres / 4,
  },
  // 250 ml is the cup of Australia, Canada and New Zealand; a pint there is imperial.
  metric: {...litres, ...spoons, cup: 250, ...imperial},
  // Half a pint.
  imperial: {...litres, ...spoons, cup: imperialGallonMillilitres / 16, ...imperial},
} as const satisfies Record<CupSystem, Record<string, number>>

export type VolumeUnit = keyof typeof millilitresPerUnit.us

/** Millimetres in one of the unit, exact. */
export const millimetresPerUnit = {mm: 1, cm: 10, in: 25.4} as const

export type LengthUnit = keyof typeof millimetresPerUnit
