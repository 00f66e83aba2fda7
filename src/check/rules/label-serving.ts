import {printedSpan} from '../../food/label.ts'
import {formatFigure, roundedText} from '../../units/format-figure.ts'
import type {CookbookRule} from '../rule.ts'

/**
 * Share of the energy that rounding may take either way before a panel is a poor reference. The
 * project's choice: a panel per 100 g stays below 1 %, one of a 100 kcal serving at 5 %.
 */
const poorRatio = 0.06

/** kcal per 100 g that a printed 0 may hide: of it there is no share. The project's choice. */
const mostHiddenKcal = 6

/** A serving of 100 g or more is no tiny one: nothing finer could be asked for. */
const leastLargeGrams = 100

export const labelServing: CookbookRule = {
  id: 'label-serving',
  severity: 'note',
  summary: 'A panel’s serving is large enough for its rounded figures to mean something per 100 g.',
  why: 'A label of 30 kcal for 10 g stands for anything from 275 to 325 kcal per 100 g, and a recipe that uses 200 g of it inherits that.',
  source: 'Rounding of declared values: 21 CFR 101.9(c), EU guidance of December 2012.',
  *check({cookbook}) {
    for (const {name, label, provenance} of cookbook.foods.own) {
      const printed = label?.printed.get('energy')
      if (!label || !printed || provenance.kind !== 'label') continue
      // 5 kcal of a large serving are little in any recipe, however much they are of themselves.
      if (label.perGrams >= leastLargeGrams) continue
      const {value, low, high} = printedSpan('energy', printed, label.rules)
      const ratio = Math.max(high - value, value - low) / value
      const isPoor =
        value === 0 ? (high * 100) / label.perGrams > mostHiddenKcal : ratio > poorRatio
      if (!isPoor) continue
      const per100g = (kcal: number) => roundedText((kcal * 100) / label.perGrams, 0)
      yield {
        place: printed.place,
        file: provenance.file,
        reason: `Energy \`${printed.text}\` of \`${name}\` per \`${label.perText}\`, expected a panel per 100 g: this one stands for \`${per100g(low)}\` to \`${formatFigure((high * 100) / label.perGrams, 'kcal', 0)}\` per 100 g`,
        actual: printed.text,
        note: `${value === 0 ? 'What is printed as 0 need not be nothing.' : `Rounding alone is ± ${roundedText(ratio * 100, 0)} %.`} Look for the maker's figures per 100 g, or use the nearest table food.`,
      }
    }
  },
}
