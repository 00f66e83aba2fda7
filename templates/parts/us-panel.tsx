import {nutrientUnit} from '../../src/food/nutrients.ts'
import {declaredNumber} from '../../src/food/rounding/declared-number.ts'
import type {Declaration, DeclaredRow} from '../../src/nutrition/declaring/declaration.ts'
import type {DeclaredNutrient} from '../../src/nutrition/declaring/declared-rows.ts'
import {formatFigure} from '../../src/units/format-figure.ts'
import type {Part} from '../part.ts'
import type {Words} from '../words/en.ts'

/** Lines set in bold: 21 CFR 101.9(d)(1)(iv), nutrients that are not indented. */
const bold: ReadonlySet<DeclaredNutrient> = new Set([
  'fat',
  'cholesterol',
  'sodium',
  'carbohydrate',
  'protein',
])

/** Below the second heavy bar: 21 CFR 101.9(d)(8). */
const belowTheBar: ReadonlySet<DeclaredNutrient> = new Set([
  'vitaminD',
  'calcium',
  'iron',
  'potassium',
])

export interface Served {
  readonly servings: number
  readonly portionGrams?: number
}

/**
 * The vertical panel of 21 CFR 101.9(d)(12), as the rule of 2016 draws it: heading, servings, calories,
 * the % Daily Value column, bars and hairlines, footnote. What the drawing is made of is from memory.
 */
export function usPanel({kilocalories, rows}: Declaration, served: Served, words: Words): Part {
  const {panel} = words.declared
  const {servings, portionGrams} = served
  const weight = portionGrams === undefined ? '' : ` (${closedUp(formatFigure(portionGrams, 'g'))})`
  return (
    <section class="us-panel" aria-labelledby="panel-heading">
      <h3 id="panel-heading">{panel.heading}</h3>
      <p>{panel.perContainer(servings)}</p>
      <p class="us-serving">
        <span>{panel.servingSize}</span> <span>{`${panel.share(servings)}${weight}`}</span>
      </p>
      <p class="us-per">{panel.amountPerServing}</p>
      <p class="us-calories">
        <span>{words.declared.name.us.energy}</span>{' '}
        <span>{amountText(kilocalories, words, '')}</span>
      </p>
      <table>
        <thead>
          <tr>
            <th scope="col" colSpan={2}>
              {panel.dailyValue}
            </th>
          </tr>
        </thead>
        {lines(
          rows.filter(({nutrient}) => !belowTheBar.has(nutrient)),
          words,
        )}
        {lines(
          rows.filter(({nutrient}) => belowTheBar.has(nutrient)),
          words,
        )}
      </table>
      <p class="us-footnote">{panel.footnote}</p>
    </section>
  )
}

function lines(rows: readonly DeclaredRow[], words: Words): Part {
  return <tbody>{rows.map((row) => line(row, words))}</tbody>
}

function line(row: DeclaredRow, words: Words): Part {
  const {nutrient, depth, perServing: figure} = row
  const name = words.declared.name.us[nutrient]
  const amount = amountText(row, words, nutrientUnit[nutrient])
  const percent = figure === undefined || figure === 'unknown' ? undefined : figure.percent
  return (
    <tr class={depth === 0 ? undefined : `us-depth-${depth}`}>
      <th scope="row">
        {nutrient === 'addedSugars' && figure !== 'unknown' ? (
          words.declared.panel.includes(amount)
        ) : (
          <>
            {bold.has(nutrient) ? <strong>{name}</strong> : name} {amount}
          </>
        )}
      </th>
      <td>{percent === undefined ? '' : percentPart(percent, nutrient)}</td>
    </tr>
  )
}

function percentPart(percent: number, nutrient: DeclaredNutrient): Part {
  const text = `${percent}%`
  return belowTheBar.has(nutrient) ? text : <strong>{text}</strong>
}

function amountText({nutrient, perServing}: DeclaredRow, words: Words, unit: string): string {
  if (perServing === undefined || perServing === 'unknown') return words.declared.notKnown
  const amount = `${declaredNumber('us', nutrient, perServing)}${closedUp(unit)}`
  return perServing.kind === 'less than' ? words.declared.panel.lessThan(amount) : amount
}

/** The panel writes `370g` and `2mcg`. */
function closedUp(text: string): string {
  return text.replace(' ', '').replace('µg', 'mcg')
}
