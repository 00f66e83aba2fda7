import {formatFigure} from '../../units/format-figure.ts'
import {expandedUncertainty} from '../../units/uncertain.ts'
import {isAtMost} from '../is-at-most.ts'
import type {Rule} from '../rule.ts'

export const batchWeight: Rule = {
  id: 'batch-weight',
  severity: 'error',
  summary: 'A finished batch weighs no more than what went into it.',
  why: 'A batch that is too heavy makes every figure per 100 g too low, and so every recipe that uses it by weight.',
  source: 'Conservation of mass.',
  *check({recipe, computed: {batchGrams, mixedGrams}}) {
    if (!recipe.batch || !batchGrams) return
    const slack = expandedUncertainty(mixedGrams) + expandedUncertainty(batchGrams)
    if (isAtMost(batchGrams.value, mixedGrams.value + slack)) return
    const {text} = recipe.batch.value
    const most = formatFigure(mixedGrams.value, 'g', 0)
    yield {
      place: recipe.batch.place,
      reason: `Yield \`${text}\`, expected \`${most}\` or less: the counted ingredients weigh no more`,
      actual: text,
      expected: [most],
      note: 'Cooking only loses weight: list the water or stock that was added, or weigh the batch again.',
    }
  },
}
