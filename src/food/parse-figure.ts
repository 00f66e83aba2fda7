import {numberAtStart} from '../units/number-text.ts'
import {type Parsed, parsed, type Refusal, refused} from '../units/parsed.ts'
import {
  kilojoulesPerKilocalorie,
  type Nutrient,
  type NutrientUnit,
  nutrientUnit,
} from './nutrients.ts'

/** A nutrient figure as a packet or a page has it, in the nutrient's own unit. */
export interface WrittenFigure {
  /** For `less than`, the limit. */
  readonly value: number
  /** `<0.5 g`, `less than 1 g`, as labels print traces. */
  readonly isLessThan: boolean
  /** Unit of the last written digit, same unit as `value`. */
  readonly increment: number
}

/** How many of the nutrient's own unit (outside) one of the written unit (inside) is. */
const factors: Readonly<Record<NutrientUnit, ReadonlyMap<string, number>>> = {
  kcal: new Map([
    ['kcal', 1],
    ['kj', 1 / kilojoulesPerKilocalorie],
  ]),
  kJ: new Map([
    ['kj', 1],
    ['kcal', kilojoulesPerKilocalorie],
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
 * Reads a nutrient figure: `455 kcal`, `1900 kJ`, `38 g`, `120 mg`, `2 µg`, `<0.5 g`.
 * @returns a figure of 0 or more
 */
export function parseFigure(nutrient: Nutrient, text: string): Parsed<WrittenFigure> {
  const unit = nutrientUnit[nutrient]
  const trimmed = text.trim()
  const sign = /^(?:<|less than)\s*/i.exec(trimmed)?.[0] ?? ''
  const start = numberAtStart(trimmed.slice(sign.length))
  if (!start.ok) return start
  const {number, rest} = start.value
  const factor = factors[unit].get(asUnit(rest))
  if (factor === undefined) {
    return wrongUnit(
      rest.trim(),
      `${trimmed.slice(0, trimmed.length - rest.length).trim()} ${unit}`,
    )
  }
  if (number.halfRange > 0) return refused('one figure, not a range')
  return parsed({
    value: number.value * factor,
    increment: number.increment * factor,
    isLessThan: sign !== '',
  })
}

/** The micro sign, the Greek letter and the usual stand-ins mean one unit. */
function asUnit(rest: string): string {
  return rest
    .trim()
    .toLowerCase()
    .replace(/^(?:μg|ug|mcg)$/, 'µg')
}

function wrongUnit(written: string, instead: string): Refusal {
  if (written === '') return refused(`a unit: \`${instead}\``, {instead: [instead], isSure: true})
  const isEnergy = /kcal|kJ$/.test(instead)
  if (isEnergy && /^cal(?:orie)?s?$/i.test(written)) {
    return refused(`kilocalories: \`${instead}\``, {instead: [instead], isSure: true})
  }
  return refused(isEnergy ? '`kcal` or `kJ`' : '`g`, `mg` or `µg`')
}
