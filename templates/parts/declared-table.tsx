import type {LabelRules} from '../../src/food/label-rules.ts'
import {nutrientUnit} from '../../src/food/nutrients.ts'
import {declaredNumber} from '../../src/food/rounding/declared-number.ts'
import type {
  Declaration,
  DeclaredFigure,
  DeclaredRow,
} from '../../src/nutrition/declaring/declaration.ts'
import type {Part} from '../part.ts'
import {withDecimal} from '../words/decimal.ts'
import type {Words} from '../words/en.ts'

type Column = 'per100g' | 'perServing'

/** What a law has declared, in its order: 100 g, one serving, and the share of a day. */
export function declaredTable(declared: Declaration, words: Words): Part {
  const {rules, kilojoules, kilocalories, rows} = declared
  const columns = (['per100g', 'perServing'] as const).filter((one) => kilocalories[one])
  const shared = columns.at(-1)
  if (shared === undefined) return undefined
  const {reference, referenceOf100g} = words.declared
  return (
    <table class="declared">
      <thead>
        <tr>
          <th scope="col">{words.figures.nutrient}</th>
          {columns.map((column) => (
            <th scope="col">
              {column === 'per100g' ? words.figures.per100g : words.figures.serving}
            </th>
          ))}
          <th scope="col">{(shared === 'perServing' ? reference : referenceOf100g)[rules]}</th>
        </tr>
      </thead>
      <tbody>
        {[...(kilojoules ? [kilojoules] : []), kilocalories, ...rows].map((row) => (
          <tr class={depthClass(row)}>
            <th scope="row">{words.declared.name[rules][row.nutrient]}</th>
            {columns.map((column) => (
              <td>{figureText(row, column, rules, words)}</td>
            ))}
            <td>{percentText(row[shared])}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function depthClass({depth, nutrient}: DeclaredRow): string | undefined {
  if (nutrient === 'energyEuKilojoules') return 'upper'
  return depth === 0 ? undefined : depth === 1 ? 'part' : 'part deep'
}

function figureText(row: DeclaredRow, column: Column, rules: LabelRules, words: Words): string {
  const figure = row[column]
  if (figure === undefined || figure === 'unknown') return words.declared.notKnown
  const {nutrient} = row
  // Number and unit stay on one line of a phone.
  const number = withDecimal(declaredNumber(rules, nutrient, figure), words)
  const amount = `${number}\u00a0${nutrientUnit[nutrient]}`
  return figure.kind === 'less than' ? words.declared.lessThan(amount) : amount
}

function percentText(figure: DeclaredFigure | undefined): string {
  if (figure === undefined || figure === 'unknown' || figure.percent === undefined) return ''
  return `${figure.percent} %`
}
