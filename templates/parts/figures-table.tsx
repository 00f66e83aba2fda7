import {type Basis, type Figure, isComplete} from '../../src/food/figures.ts'
import {nutrientFigure} from '../../src/food/nutrient-text.ts'
import {kilojoulesPerKilocalorie, type PublishedNutrient} from '../../src/food/nutrients.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {publishedFigure} from '../../src/nutrition/published.ts'
import {formatFigure} from '../../src/units/format-figure.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import type {Words} from '../words/en.ts'
import {computedOn, knownText} from './published-figures.ts'

interface Row {
  readonly nutrient: PublishedNutrient
  /** Indented below the nutrient it is part of. */
  readonly isPart?: true
  /** Left out where there is none of it, or nobody knows. */
  readonly isQuiet?: true
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
  {nutrient: 'salt'},
  {nutrient: 'sodium', isPart: true},
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
  const shown = rows.filter(({nutrient, isQuiet}) => {
    const figure = publishedFigure(computed.batch, nutrient, settings)
    return !isQuiet || (isComplete(figure) && figure.value > 0)
  })
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
            <th scope="row">{words.nutrient[nutrient]}</th>
            {columns.map(({figures}) => (
              <td class="number">
                {figureCell(nutrient, publishedFigure(figures, nutrient, settings), words)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function heading(basis: Basis, words: Words): string {
  if (basis === 'serving') return words.figures.serving
  return basis === '100 g' ? words.figures.per100g : words.figures.batch
}

/** A computed figure in a cell: the value, its ± smaller below, kJ below the kcal. */
export function figureCell(nutrient: PublishedNutrient, figure: Figure, words: Words): Part {
  if (!isComplete(figure)) return knownText(nutrient, figure, words)
  const {value, plusMinus, unit} = nutrientFigure(nutrient, figure)
  return (
    <>
      {`${value} ${unit}`}
      {plusMinus === undefined ? undefined : (
        <span class="give"> {words.plusMinus(plusMinus)}</span>
      )}
      {nutrient === 'energy' ? (
        <span class="give"> {formatFigure(figure.value * kilojoulesPerKilocalorie, 'kJ')}</span>
      ) : undefined}
    </>
  )
}

/** Names the foods that leave a figure incomplete, nutrient by nutrient; undefined when none does. */
export function missingFigures({cookbook: {settings}, words}: Site, computed: Computed): Part {
  const told = rows.flatMap(({nutrient}) => {
    const {missing} = publishedFigure(computed.batch, nutrient, settings)
    return missing.size === 0 ? [] : [{nutrient, foods: [...missing].join(', ')}]
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
