import type {Settings} from '../../src/cookbook/cookbook.ts'
import {type Basis, type Figure, type Figures, isComplete} from '../../src/food/figures.ts'
import type {LabelRules} from '../../src/food/label-rules.ts'
import {nutrientFigure, nutrientText} from '../../src/food/nutrient-text.ts'
import type {PublishedNutrient} from '../../src/food/nutrients.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {energyNutrient, kilojoules} from '../../src/nutrition/energy-nutrient.ts'
import {publishedFigure} from '../../src/nutrition/published.ts'
import {formatFigure} from '../../src/units/format-figure.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import type {Words} from '../words/en.ts'
import {computedOn} from './published-figures.ts'

interface Row {
  readonly nutrient: PublishedNutrient
  /** Indented below the nutrient it is part of. */
  readonly isPart?: true
  /** Left out where there is none of it, or nobody knows. */
  readonly isQuiet?: true
  /** The law that asks for it; the other asks for its counterpart. */
  readonly rules?: LabelRules
}

const rows: readonly Row[] = [
  {nutrient: 'energy'},
  {nutrient: 'protein'},
  {nutrient: 'carbohydrate'},
  {nutrient: 'sugars', isPart: true},
  {nutrient: 'addedSugars', isPart: true, isQuiet: true},
  {nutrient: 'polyols', isPart: true, isQuiet: true},
  {nutrient: 'fibre'},
  {nutrient: 'fat'},
  {nutrient: 'saturated', isPart: true},
  {nutrient: 'trans', isPart: true, isQuiet: true},
  {nutrient: 'alcohol', isQuiet: true},
  {nutrient: 'salt', rules: 'eu'},
  {nutrient: 'sodium', rules: 'us'},
  {nutrient: 'cholesterol'},
  {nutrient: 'potassium'},
  {nutrient: 'calcium'},
  {nutrient: 'iron'},
  {nutrient: 'vitaminD'},
]

/** Every computed figure with its ±: per serving, per 100 g, whole batch. */
export function figuresTable({cookbook: {settings}, words}: Site, computed: Computed): Part {
  const columns = (['serving', '100 g', 'batch'] as const).flatMap((basis) => {
    const figures = computedOn(basis, computed)
    return figures ? [{basis, figures}] : []
  })
  const shown = rowsFor(settings).filter((row) => isShown(row, computed, settings))
  return (
    <table class="figures">
      <thead>
        <tr>
          <th scope="col">{words.figures.nutrient}</th>
          {columns.map(({basis}) => (
            <th scope="col" class="number">
              {heading(basis, words)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {shown.map(({nutrient, isPart}) => (
          <tr class={isPart ? 'part' : undefined}>
            <th scope="row">
              {(isPart && words.nutrientPart[nutrient]) ?? words.nutrient[nutrient]}
            </th>
            {columns.map(({figures}) => (
              <td class="number">
                {figureCell(nutrient, publishedFigure(figures, nutrient, settings), words)}
                {nutrient === 'energy' ? kilojoulesGiven(figures, settings) : undefined}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function rowsFor(settings: Settings): readonly Row[] {
  return rows.filter(({rules}) => rules === undefined || rules === settings.rules)
}

/** A row of nothing but "unknown" or "at least 0" says less than the list of what is missing. */
function isShown({nutrient, isQuiet}: Row, computed: Computed, settings: Settings): boolean {
  const figure = publishedFigure(computed.perServing ?? computed.batch, nutrient, settings)
  const isSome = Number.parseFloat(nutrientText(nutrient, figure.value)) > 0
  return isSome || (isComplete(figure) && !isQuiet)
}

function heading(basis: Basis, words: Words): string {
  if (basis === 'serving') return words.figures.serving
  return basis === '100 g' ? words.figures.per100g : words.figures.batch
}

/** A computed figure in a cell: the value, its ± smaller below. */
export function figureCell(nutrient: PublishedNutrient, figure: Figure, words: Words): Part {
  if (!isComplete(figure)) {
    const text = nutrientText(nutrient, figure.value)
    return (
      <>
        <span class="give">{words.atLeastBefore} </span>
        {text}
      </>
    )
  }
  const {value, plusMinus, unit} = nutrientFigure(nutrient, figure)
  return (
    <>
      {`${value} ${unit}`}
      {plusMinus === undefined ? undefined : (
        <span class="give"> {words.plusMinus(plusMinus)}</span>
      )}
    </>
  )
}

function kilojoulesGiven(figures: Figures<Basis>, {energyMethod = 'foods'}: Settings): Part {
  const {value} = kilojoules(figures, energyNutrient[energyMethod])
  return <span class="give"> {formatFigure(value, 'kJ')}</span>
}

/** Names the foods that leave a figure incomplete, nutrient by nutrient; undefined when none does. */
export function missingFigures({cookbook: {settings}, words}: Site, computed: Computed): Part {
  const told = rowsFor(settings).flatMap((row) => {
    const {nutrient, isQuiet} = row
    const {missing} = publishedFigure(computed.batch, nutrient, settings)
    const isTold = missing.size > 0 && (!isQuiet || isShown(row, computed, settings))
    return !isTold ? [] : [{nutrient, foods: [...missing].join(', ')}]
  })
  if (told.length === 0) return undefined
  const byFoods = new Map<string, string[]>()
  for (const {nutrient, foods} of told) {
    const names = byFoods.get(foods) ?? []
    byFoods.set(foods, [...names, words.nutrientName[nutrient]])
  }
  return (
    <ul class="missing">
      {[...byFoods].map(([foods, names]) => (
        <li>{words.figures.missing(words.and(names), foods)}</li>
      ))}
    </ul>
  )
}
