import {formatFigure, roundedText} from '../../../src/units/format-figure.ts'
import type {CookingData} from '../../parts/cooking-data.ts'
import {withDecimal} from '../../words/decimal.ts'
import {element} from '../page/element.ts'
import {all} from '../page/query.ts'
import {putBack, rewrite} from '../page/written.ts'
import {amountTexts} from './amount-texts.ts'
import type {CookingState} from './state.ts'

/** Sets the amounts of the list, of the method and of the notes for what is cooked. */
export function showAmounts(data: CookingData, state: CookingState): void {
  for (const index of data.lines.keys()) showLine(data, state, index)
  for (const shown of all('main [data-scaled]')) {
    const {scaled, unit} = shown.dataset
    const amount = Number(scaled) * state.batches
    if (state.batches === 1) putBack(shown)
    else rewrite(shown, withDecimal(scaledText(amount, unit), data.words.carried))
  }
}

function scaledText(amount: number, unit: string | undefined): string {
  return unit === '%' ? `${roundedText(amount, 0)} %` : formatFigure(amount, 'g')
}

function showLine(
  {lines, words}: CookingData,
  {batches, choices}: CookingState,
  index: number,
): void {
  const line = lines[index]
  const chosen = Math.max(0, choices[index] ?? 0)
  const choice = line?.choices[chosen]
  if (line === undefined || choice === undefined) return
  const row = document.getElementById(line.anchor)
  const parts = ['.weight', '.name', '.measure'].map((name) => row?.querySelector(name))
  row?.classList.toggle('swapped', chosen > 0)
  const used = all(`.amount[data-anchor="${CSS.escape(line.anchor)}"]`)
  for (const amount of used) amount.classList.toggle('swapped', chosen > 0)
  if (batches === 1 && chosen === 0) {
    for (const part of [...parts, ...used]) putBack(part)
    return
  }
  const {weight, measure} = amountTexts(choice, batches, words.carried)
  const beside = measure === undefined ? '' : `, ${measure}`
  const [weightPart, namePart, measurePart] = parts
  rewrite(weightPart, weight)
  putBack(namePart)
  const behind = measurePart ? [] : [element('span', 'measure', beside)]
  if (chosen > 0) rewrite(namePart, choice.name, ...behind)
  rewrite(measurePart, beside)
  for (const amount of used) {
    rewrite(amount, `${weight}${beside}${chosen > 0 ? ` ${choice.name}` : ''}`)
  }
}
