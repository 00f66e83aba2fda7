import {type Judged, judge} from '../../src/check/verdict.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {methodOf} from '../../src/nutrition/energy-nutrient.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {withDecimal} from '../words/decimal.ts'
import type {Words} from '../words/en.ts'
import {figureCell} from './figures-table.tsx'
import {verdictMark} from './verdict-mark.ts'

/** Each stated figure beside the computed one, with the verdict; undefined where none is stated. */
export function statedTable({cookbook, words}: Site, computed: Computed): Part {
  const {stated} = computed.recipe
  const judged = stated === undefined ? [] : judge(stated, computed, cookbook.settings)
  if (judged.length === 0) return undefined
  return (
    <table class="stated">
      <thead>{statedHead(words)}</thead>
      <tbody>{judged.map((figure) => statedRow(figure, words))}</tbody>
    </table>
  )
}

export function statedHead(words: Words): Part {
  return (
    <tr>
      <th scope="col">{words.figures.nutrient}</th>
      <th scope="col" class="number">
        {words.figures.stated}
      </th>
      <th scope="col" class="number">
        {words.figures.computed}
      </th>
      <th scope="col">{words.figures.verdict}</th>
    </tr>
  )
}

export function statedRow({stated, computed, against, verdict}: Judged, words: Words): Part {
  const {nutrient, text} = stated
  const method = methodOf(against)
  return (
    <tr>
      <th scope="row">
        {words.nutrient[nutrient]}
        {method && <small> {words.declared.energyMethod[method]}</small>}
      </th>
      <td>{withDecimal(text, words)}</td>
      <td>{figureCell(nutrient, computed, words)}</td>
      <td>{verdictMark(verdict, words)}</td>
    </tr>
  )
}
