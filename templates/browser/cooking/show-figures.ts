import type {Basis, Figures} from '../../../src/food/figures.ts'
import {type PublishedNutrient, publishedNutrients} from '../../../src/food/nutrients.ts'
import {type ChosenFigures, chosenFigures} from '../../../src/nutrition/chosen-figures.ts'
import {energyNutrient, kilojoules} from '../../../src/nutrition/energy-nutrient.ts'
import {energyShares} from '../../../src/nutrition/energy-shares.ts'
import {publishedFigure} from '../../../src/nutrition/published.ts'
import {formatFigure, roundedText} from '../../../src/units/format-figure.ts'
import type {ChoosingData, CookingData} from '../../parts/cooking-data.ts'
import {figureCellText, knownText, missingTexts} from '../../parts/figure-rows.ts'
import {hangsAt} from '../../parts/hangs-at.ts'
import {unpackedWords} from '../../words/carried-words.ts'
import {withDecimal} from '../../words/decimal.ts'
import {fill} from '../../words/fill.ts'
import {element} from '../page/element.ts'
import {one} from '../page/query.ts'
import {putBack, rewrite} from '../page/written.ts'
import {type CookingState, isChosen} from './state.ts'

/**
 * Sets the figures for what is cooked, worked out by the code of the build. Making more changes
 * those of the batch alone; a choice changes them all.
 */
export function showFigures(data: CookingData, state: CookingState): void {
  const figures = chosenFigures(data.recipe, state.choices, state.batches)
  const changed = isChosen(data, state)
  const isMoved = (basis: string | undefined) =>
    changed || (basis === 'batch' && state.batches !== 1)
  showHeadline(data, figures, isMoved)
  showTable(data, figures, isMoved)
  showWeights(data, figures, state)
  const {choosing} = data
  if (choosing === undefined) return
  showMissing(data, changed ? figures : undefined)
  showBeams(
    choosing,
    changed ? (figures.perServing ?? figures.per100g ?? figures.batch) : undefined,
  )
}

function showTable(
  data: CookingData,
  figures: ChosenFigures,
  isMoved: (basis: string | undefined) => boolean,
): void {
  const table = one<HTMLTableElement>('table.figures')
  const bases = [...(table?.tHead?.rows[0]?.cells ?? [])].map(({dataset}) => dataset.basis)
  for (const row of table?.tBodies[0]?.rows ?? []) {
    const nutrient = nutrientOf(row)
    for (const [column, cell] of [...row.cells].entries()) {
      const basis = bases[column]
      const on = figuresOn(basis, figures)
      if (!isMoved(basis) || !on || !nutrient) putBack(cell)
      else rewrite(cell, ...cellNodes(data, on, nutrient))
    }
  }
}

function figuresOn(basis: string | undefined, figures: ChosenFigures): Figures<Basis> | undefined {
  if (basis === 'batch') return figures.batch
  if (basis === '100 g') return figures.per100g
  return basis === 'serving' ? figures.perServing : undefined
}

function nutrientOf(place: HTMLElement | null): PublishedNutrient | undefined {
  return publishedNutrients.find((nutrient) => nutrient === place?.dataset.nutrient)
}

function showHeadline(
  {choice, words}: CookingData,
  figures: ChosenFigures,
  isMoved: (basis: string | undefined) => boolean,
): void {
  const headline = one('.headline')
  const basis = headline?.dataset.basis
  const on = figuresOn(basis, figures)
  const about = headline?.querySelector('p')
  if (isMoved(basis) && basis === 'serving' && figures.portionGrams) {
    const weight = withDecimal(formatFigure(figures.portionGrams.value, 'g'), words.carried)
    rewrite(about, fill(words.servingOf, {weight}))
  } else putBack(about)
  for (const shown of headline?.querySelectorAll<HTMLElement>('dd') ?? []) {
    const nutrient = nutrientOf(shown)
    if (!isMoved(basis) || !on || !nutrient) putBack(shown)
    else {
      const figure = publishedFigure(on, nutrient, choice)
      rewrite(shown, knownText(nutrient, figure, unpackedWords(words.carried)))
    }
  }
}

function cellNodes(
  {choice, words}: CookingData,
  figures: Figures<Basis>,
  nutrient: PublishedNutrient,
): (Node | string)[] {
  const figure = publishedFigure(figures, nutrient, choice)
  const {before, text, behind} = figureCellText(nutrient, figure, unpackedWords(words.carried))
  return [
    ...(before === undefined ? [] : [element('small', '', `${before} `)]),
    text,
    ...(behind === undefined ? [] : [element('small', '', ` ${behind}`)]),
    ...(nutrient === 'energy'
      ? [
          element(
            'small',
            '',
            ` ${formatFigure(kilojoules(figures, energyNutrient[choice.energyMethod]).value, 'kJ')}`,
          ),
        ]
      : []),
  ]
}

/** Weights among the particulars: what a serving and the whole batch come to. */
function showWeights(
  data: CookingData,
  {batchGrams, portionGrams}: ChosenFigures,
  state: CookingState,
): void {
  const changed = isChosen(data, state)
  const weight = (grams: number) => withDecimal(formatFigure(grams, 'g'), data.words.carried)
  const batch = one('.particulars [data-shows="batch"]')
  if ((changed || state.batches !== 1) && batchGrams) rewrite(batch, weight(batchGrams.value))
  else putBack(batch)
  const portion = one('.particulars [data-shows="portion"]')
  if (changed && portionGrams) rewrite(portion, weight(portionGrams.value))
  else putBack(portion)
}

function showMissing({choice, words}: CookingData, figures: ChosenFigures | undefined): void {
  const table = one('table.figures')
  const list = one('ul.missing')
  if (figures === undefined) {
    if (list?.classList.contains('added')) list.remove()
    else putBack(list)
    return
  }
  const told = publishedNutrients.filter((nutrient) => nutrient in words.carried.nutrientName)
  const texts = missingTexts(figures.batch, told, choice, unpackedWords(words.carried))
  const items = texts.map((text) => element('li', '', text))
  if (list) rewrite(list, ...items)
  else if (items.length > 0) table?.after(element('ul', 'missing added', ...items))
}

/** @param main what the beams share out; undefined where they stay as written */
function showBeams({words}: ChoosingData, main: Figures<Basis> | undefined): void {
  const list = one('.beams ul')
  putBack(list)
  const shares = main && energyShares(main)
  const [pattern] = list?.querySelectorAll('li') ?? []
  if (!list || !shares || !pattern) return
  const items = shares.map(({source, ratio}) => {
    const item = pattern.cloneNode(true)
    if (!(item instanceof HTMLElement)) return item
    const percent = roundedText(ratio * 100, 0)
    rewrite(item.querySelector('span'), fill(words.share, {name: words.energy[source], percent}))
    item.querySelector('.weight-hung')?.setAttribute('x', hangsAt(ratio))
    return item
  })
  rewrite(list, ...items)
}
