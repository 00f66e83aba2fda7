import type {Span} from '../../units/span.ts'
import type {Nutrient} from '../nutrients.ts'
import {
  type Declared,
  declarations,
  everyStep,
  type RoundingScheme,
  significantFigures,
  spanBehind,
} from './scheme.ts'

// Source of every band: European Commission (DG Health and Consumers), guidance document on
// tolerances, December 2012, rounding guidelines, as a laboratory reproduces them; the sodium row
// is from memory. What is small may be declared as 0, as "less than", or rounded like the rest.

const upwards = Number.POSITIVE_INFINITY

const energy: RoundingScheme = {
  bands: everyStep(1),
  zeroBelow: 0.5,
  isLimitSmall: false,
  zero: 'may',
}

const grams: RoundingScheme = {
  bands: [
    {below: 10, step: 0.1},
    {below: upwards, step: 1},
  ],
  zeroBelow: 0.5,
  isLimitSmall: true,
  zero: 'may',
  lessThan: {limit: 0.5, from: 0, below: 0.5},
}

const saturates: RoundingScheme = {
  ...grams,
  zeroBelow: 0.1,
  lessThan: {limit: 0.1, from: 0, below: 0.1},
}

const salt: RoundingScheme = {
  bands: [
    {below: 1, step: 0.01},
    {below: upwards, step: 0.1},
  ],
  zeroBelow: 0.0125,
  isLimitSmall: true,
  zero: 'may',
  lessThan: {limit: 0.01, from: 0, below: 0.0125},
}

/** In milligrams, as sodium is everywhere in the program; the guidance has grams. */
const sodium: RoundingScheme = {
  bands: [
    {below: 1000, step: 10},
    {below: upwards, step: 100},
  ],
  zeroBelow: 5,
  isLimitSmall: true,
  zero: 'may',
  lessThan: {limit: 5, from: 0, below: 5},
}

/** The guidance has no zero for vitamins and minerals. */
function figures(count: number): RoundingScheme {
  return {bands: significantFigures(count), zeroBelow: 0, isLimitSmall: false, zero: 'may'}
}

const schemes: Readonly<Partial<Record<Nutrient, RoundingScheme>>> = {
  energy,
  protein: grams,
  fat: grams,
  saturated: saturates,
  availableCarbohydrate: grams,
  fibre: grams,
  sugars: grams,
  polyols: grams,
  salt,
  sodium,
  potassium: figures(3),
  calcium: figures(3),
  iron: figures(2),
  vitaminD: figures(2),
}

/**
 * What an EU table may declare for an amount in 100 g, the usual form first. `energy` serves for
 * kcal and for kJ alike.
 * @param unrounded 0 or more, in the nutrient's own unit (kJ for energy in kJ)
 * @returns empty for what an EU table has no line for (cholesterol, trans, alcohol, water)
 */
export function euDeclarations(nutrient: Nutrient, unrounded: number): readonly Declared[] {
  const scheme = schemes[nutrient]
  return scheme ? declarations(scheme, unrounded) : []
}

/** The amounts in 100 g that an EU table declares so; undefined where it never would. */
export function euSpan(nutrient: Nutrient, declared: Declared): Span | undefined {
  const scheme = schemes[nutrient]
  return scheme && spanBehind(scheme, declared)
}
