import {formatFigure} from '../../units/format-figure.ts'
import {expandedUncertainty} from '../../units/uncertain.ts'
import {isAtMost} from '../is-at-most.ts'
import type {Rule} from '../rule.ts'

export const portionWeight: Rule = {
  id: 'portion-weight',
  severity: 'error',
  summary: 'A serving weighs its share of the finished batch.',
  why: 'Who weighs a serving out to log it gets other figures when the weights do not fit together.',
  *check({recipe, computed: {portionGrams}}) {
    const {portion, serves} = recipe
    if (!portion || !serves || !portionGrams) return
    const {value, halfRange, increment} = portion.value.grams
    const slack = Math.max(halfRange, increment / 2, expandedUncertainty(portionGrams))
    if (isAtMost(Math.abs(value - portionGrams.value), slack)) return
    const share = formatFigure(portionGrams.value, 'g', 0)
    yield {
      place: portion.place,
      reason: `Portion \`${portion.value.text}\`, expected \`${share}\`: the yield shared by \`${serves.value}\``,
      actual: portion.value.text,
      expected: [share],
      note: 'Mend `portion`, `serves` or `yield`, whichever changed last.',
    }
  },
}
