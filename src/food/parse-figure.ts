import {numberAtStart} from '../units/number-text.ts'
import {type Parsed, parsed, refused} from '../units/parsed.ts'
import {
  kilojoulesPerKilocalorie,
  type Nutrient,
  type NutrientUnit,
  nutrientUnit,
} from './nutrients.ts'

/** A nutrient figure as a packet or a page has it, in the nutrient's own unit. */
export interface WrittenFigure {
  readonly value: number
  /** Unit of the last written digit, same unit as `value`. */
  readonly increment: number
}

/** How many of the nutrient's own unit one of the written unit is. */
const factors: Readonly<Record<NutrientUnit, ReadonlyMap<string, number>>> = {
  kcal: new Map([
    ['kcal', 1],
    ['kj', 1 / kilojoulesPerKilocalorie],
  ]),
  g: new Map([
    ['g', 1],
    ['mg', 1e-3],
    ['µg', 1e-6],
  ]),
  mg: new Map([
    ['mg', 1],
    ['g', 1e3],
    ['µg', 1e-3],
  ]),
  µg: new Map([
    ['µg', 1],
    ['mg', 1e3],
    ['g', 1e6],
  ]),
}

/**
 * Reads a nutrient figure: `455 kcal`, `1900 kJ`, `38 g`, `120 mg`, `2 µg`. `< 0.5 g`, as labels
 * print traces, may be anything from 0 up to it: the middle, known to the whole of it.
 * @returns value and last digit in the nutrient's own unit, 0 or more
 */
export function parseFigure(nutrient: Nutrient, text: string): Parsed<WrittenFigure> {
  const trimmed = text.trim()
  const isTrace = trimmed.startsWith('<')
  const start = numberAtStart(isTrace ? trimmed.slice(1).trim() : trimmed)
  if (!start.ok) return start
  const {number, rest} = start.value
  const own = nutrientUnit[nutrient]
  const factor = factors[own].get(asUnit(rest))
  if (factor === undefined)
    return wrongUnit(own, trimmed.slice(0, trimmed.length - rest.length), rest)
  if (number.halfRange > 0) return refused('one figure, not a range')
  const [value, increment] = [number.value * factor, number.increment * factor]
  return parsed(isTrace ? {value: value / 2, increment: value} : {value, increment})
}

/** The micro sign, the Greek letter and the usual stand-ins mean one unit. */
function asUnit(rest: string): string {
  return rest
    .trim()
    .toLowerCase()
    .replace(/^(?:μg|ug|mcg)$/, 'µg')
}

function wrongUnit(own: NutrientUnit, digits: string, rest: string): Parsed<WrittenFigure> {
  const instead = `${digits.trim()} ${own}`
  if (rest.trim() === '') return refused(`a unit: \`${instead}\``, {instead: [instead]})
  if (own === 'kcal' && /^cal(?:orie)?s?$/i.test(rest.trim())) {
    return refused(`kilocalories: \`${instead}\``, {instead: [instead]})
  }
  return refused(own === 'kcal' ? '`kcal` or `kJ`' : '`g`, `mg` or `µg`')
}
