import {formatFigure} from '../../units/format-figure.ts'
import {isAtMost} from '../is-at-most.ts'
import type {Rule} from '../rule.ts'

export const componentMade: Rule = {
  id: 'component-made',
  severity: 'warning',
  summary: 'A recipe uses no more of a component than one batch of it makes.',
  why: 'Who cooks along would stand there with too little sauce.',
  *check({computed}) {
    for (const {line, ingredient, grams} of computed.lines) {
      if (ingredient.kind !== 'component') continue
      const made = ingredient.computed.batchGrams
      if (made === undefined || isAtMost(grams.value, made.value)) continue
      const batches = Math.ceil(grams.value / made.value)
      const most = formatFigure(made.value, 'g', 0)
      yield {
        place: line.amount.place,
        reason: `Amount \`${line.amount.value.text}\` of \`${ingredient.recipe.slug}\`, expected \`${most}\` or less: one batch makes no more`,
        actual: line.amount.value.text,
        expected: [most],
        note: `Say in the method that ${batches} batches are made, and accept this finding, or make the component's batch larger.`,
      }
    }
  },
}
