import type {Measured} from './amount.ts'
import {formatFigure, roundedText} from './format-figure.ts'

/** Digits after the point that a weight was written with; a scale shows two at most. */
function writtenDecimals({increment}: Measured): number {
  const decimals = increment < 1 ? Math.ceil(-Math.log10(increment) - 1e-9) : 0
  return Math.min(2, decimals)
}

/** A weight as written, in grams: `13.5 g`, `680 g` for 1½ lb, `10–12 g` for a range. */
export function formatWrittenGrams(grams: Measured): string {
  const decimals = writtenDecimals(grams)
  const {value, halfRange} = grams
  if (halfRange === 0) return formatFigure(value, 'g', decimals)
  return `${roundedText(value - halfRange, decimals)}–${formatFigure(value + halfRange, 'g', decimals)}`
}
