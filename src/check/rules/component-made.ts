import {batchesUsed} from '../../nutrition/batches-used.ts'
import type {Computed, ComputedLine} from '../../nutrition/computed.ts'
import {wholeGrams} from '../../nutrition/whole-grams.ts'
import {formatFigure} from '../../units/format-figure.ts'
import {isAtMost} from '../is-at-most.ts'
import type {Finding, Rule} from '../rule.ts'

export const componentMade: Rule = {
  id: 'component-made',
  severity: 'warning',
  summary: 'A recipe uses no more of a component than one batch of it makes.',
  why: 'Who cooks along would stand there with too little sauce.',
  *check({computed}) {
    const used = new Map<Computed, number>()
    for (const line of computed.lines) {
      if (line.ingredient.kind !== 'component' || line.role !== 'counted') continue
      const component = line.ingredient.computed
      const before = used.get(component) ?? 0
      const batches = before + batchesUsed(line, component)
      used.set(component, batches)
      // Told once, at the line that goes past what one batch gives.
      if (isAtMost(before, 1) && !isAtMost(batches, 1)) yield tooMuch(line, component, batches)
    }
  },
}

function tooMuch({line}: ComputedLine, component: Computed, batches: number): Finding {
  const {text} = line.amount.value
  const most = formatFigure(wholeGrams(component).value, 'g', 0)
  return {
    place: line.amount.place,
    reason: `Amount \`${text}\` of \`${component.recipe.slug}\`, expected \`${most}\` or less in all: one batch makes no more`,
    actual: text,
    expected: [most],
    note: `Say in the method that ${Math.ceil(batches)} batches are made, and accept this finding, or make the component's batch larger.`,
  }
}
