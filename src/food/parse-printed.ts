import {type Parsed, parsed, refused} from '../units/parsed.ts'
import type {LabelLine, Printed} from './label.ts'
import {kilojoulesPerKilocalorie} from './nutrients.ts'
import {parseFigure, type WrittenFigure} from './parse-figure.ts'

/** A figure of a panel before its place is known. */
export type PrintedText = Omit<Printed, 'place'>

/**
 * Reads a figure as a packet prints it: `98 kcal`, `0.13 g`, `less than 1 g`, `<0.5 g`.
 * @returns value and last digit in the line's own unit (kJ for `energyKilojoules`), 0 or more
 */
export function parsePrinted(line: LabelLine, text: string): Parsed<PrintedText> {
  const figure = figureOf(line, text.trim())
  if (!figure.ok) return figure
  const {value, increment, isLessThan} = figure.value
  if (isLessThan && value === 0) return refused('a limit above `0`')
  return parsed({
    value: withoutNoise(value),
    increment: withoutNoise(increment),
    isLessThan,
    text: text.trim(),
  })
}

function figureOf(line: LabelLine, text: string): Parsed<WrittenFigure> {
  const isInKilojoules = /kj$/i.test(text)
  if (line === 'energyKilojoules') {
    if (!isInKilojoules) return refused('kilojoules, such as `410 kJ`')
    const energy = parseFigure('energy', text)
    return energy.ok ? parsed(times(energy.value, kilojoulesPerKilocalorie)) : energy
  }
  if (line === 'energy' && isInKilojoules) {
    return refused(`\`kcal\`, with \`energy kJ: ${text}\` beside it or instead`)
  }
  return parseFigure(line, text)
}

function times({value, increment, isLessThan}: WrittenFigure, factor: number): WrittenFigure {
  return {value: value * factor, increment: increment * factor, isLessThan}
}

/** 290 mg × 0.001 is 0.29 g and not 0.29000000000000004: what a packet prints has few digits. */
function withoutNoise(value: number): number {
  return Number(value.toPrecision(12))
}
