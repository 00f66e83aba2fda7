import type {Basis, Figure, Figures} from '../../src/food/figures.ts'
import type {PublishedNutrient} from '../../src/food/nutrients.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {energyNutrient, kilojoules} from '../../src/nutrition/energy-nutrient.ts'
import {publishedFigure} from '../../src/nutrition/published.ts'
import {formatFigure} from '../../src/units/format-figure.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {carriedWords} from '../words/carried-words.ts'
import type {Words} from '../words/en.ts'
import {
  type FigureChoice,
  figureCellText,
  figureChoice,
  figureRows,
  isRowShown,
  missingTexts,
  toldRows,
} from './figure-rows.ts'
import {computedOn} from './published-figures.ts'

/** Every computed figure with its ±: per serving, per 100 g, whole batch. */
export function figuresTable({cookbook: {settings}, words}: Site, computed: Computed): Part {
  const columns = (['serving', '100 g', 'batch'] as const).flatMap((basis) => {
    const figures = computedOn(basis, computed)
    return figures ? [{basis, figures}] : []
  })
  const choice = figureChoice(settings, computed)
  const main = computed.perServing ?? computed.batch
  const shown = figureRows(choice).filter((row) => isRowShown(row, main, choice))
  return (
    <table class="figures">
      <thead>
        <tr>
          <th scope="col">{words.figures.nutrient}</th>
          {columns.map(({basis}) => (
            <th scope="col" data-basis={basis}>
              {heading(basis, words)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {shown.map(({nutrient, isPart}) => (
          <tr class={isPart ? 'part' : undefined} data-nutrient={nutrient}>
            <th scope="row">
              {(isPart && words.nutrientPart[nutrient]) ?? words.nutrient[nutrient]}
            </th>
            {columns.map(({figures}) => (
              <td>
                {figureCell(nutrient, publishedFigure(figures, nutrient, choice), words)}
                {nutrient === 'energy' ? kilojoulesGiven(figures, choice) : undefined}
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

/** A computed figure in a cell: the value, its ± smaller below. */
export function figureCell(nutrient: PublishedNutrient, figure: Figure, words: Words): Part {
  const {before, text, behind} = figureCellText(nutrient, figure, words)
  return (
    <>
      {before === undefined ? undefined : <small>{before} </small>}
      {text}
      {behind === undefined ? undefined : <small> {behind}</small>}
    </>
  )
}

function kilojoulesGiven(figures: Figures<Basis>, {energyMethod}: FigureChoice): Part {
  const {value} = kilojoules(figures, energyNutrient[energyMethod])
  return <small> {formatFigure(value, 'kJ')}</small>
}

/** Names the foods that leave a figure incomplete, nutrient by nutrient; undefined when none does. */
export function missingFigures({cookbook: {settings}, words}: Site, computed: Computed): Part {
  const {batch, perServing} = computed
  const choice = figureChoice(settings, computed)
  const told = toldRows(perServing ?? batch, choice).map(({nutrient}) => nutrient)
  const texts = missingTexts(batch, told, choice, carriedWords(words))
  if (texts.length === 0) return undefined
  return (
    <ul class="missing">
      {texts.map((text) => (
        <li>{text}</li>
      ))}
    </ul>
  )
}
