import type {Settings} from '../../src/cookbook/cookbook.ts'
import {type Basis, type Figure, type Figures, isComplete} from '../../src/food/figures.ts'
import type {LabelRules} from '../../src/food/label-rules.ts'
import {nutrientFigure, nutrientText} from '../../src/food/nutrient-text.ts'
import type {PublishedNutrient} from '../../src/food/nutrients.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {type Publishing, publishedBy, publishedFigure} from '../../src/nutrition/published.ts'
import type {CarriedWords} from '../words/carried-words.ts'
import {withDecimal} from '../words/decimal.ts'

/** Which figures a recipe's table shows and how they read: for a build, and for a page's script. */

export interface FigureRow {
  readonly nutrient: PublishedNutrient
  /** Indented below the nutrient it is part of. */
  readonly isPart?: true
  /** Left out where there is none of it, or nobody knows. */
  readonly isQuiet?: true
  /** The law that asks for it; the other asks for its counterpart. */
  readonly rules?: LabelRules
}

const rows: readonly FigureRow[] = [
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

/** What of the settings decides which figures are shown. */
export interface FigureChoice extends Publishing, Pick<Settings, 'rules'> {}

export function figureChoice(settings: Settings, {recipe}: Computed): FigureChoice {
  return {rules: settings.rules, ...publishedBy(settings, recipe)}
}

export function figureRows({rules: law}: FigureChoice): readonly FigureRow[] {
  return rows.filter(({rules}) => rules === undefined || rules === law)
}

/** A row of nothing but "unknown" or "at least 0" says less than the list of what is missing. */
export function isRowShown(
  {nutrient, isQuiet}: FigureRow,
  figures: Figures<Basis>,
  choice: FigureChoice,
): boolean {
  const figure = publishedFigure(figures, nutrient, choice)
  const isSome = Number.parseFloat(nutrientText(nutrient, figure.value)) > 0
  return isSome || (isComplete(figure) && !isQuiet)
}

/** A figure in the pieces a cell sets differently: `at least` or the ± are smaller. */
export interface FigureCellText {
  readonly before?: string
  readonly text: string
  readonly behind?: string
}

export function figureCellText(
  nutrient: PublishedNutrient,
  figure: Figure,
  words: Pick<CarriedWords, 'atLeastBefore' | 'plusMinus' | 'decimal'>,
): FigureCellText {
  if (!isComplete(figure)) {
    return {
      before: words.atLeastBefore,
      text: withDecimal(nutrientText(nutrient, figure.value), words),
    }
  }
  const {value, plusMinus, unit} = nutrientFigure(nutrient, figure)
  return {
    text: withDecimal(`${value} ${unit}`, words),
    ...(plusMinus !== undefined && {behind: words.plusMinus(withDecimal(plusMinus, words))}),
  }
}

/** The rows of a recipe that are in its table, or lack a figure and are named below it. */
export function toldRows(figures: Figures<Basis>, choice: FigureChoice): readonly FigureRow[] {
  return figureRows(choice).filter((row) => !row.isQuiet || isRowShown(row, figures, choice))
}

/** Names the foods that leave one of the figures incomplete, a line for each set of foods. */
export function missingTexts(
  batch: Figures<'batch'>,
  nutrients: readonly PublishedNutrient[],
  choice: FigureChoice,
  words: Pick<CarriedWords, 'nutrientName' | 'and' | 'missing'>,
): readonly string[] {
  const byFoods = new Map<string, string[]>()
  for (const nutrient of nutrients) {
    const {missing} = publishedFigure(batch, nutrient, choice)
    if (missing.size === 0) continue
    const foods = [...missing].join(', ')
    byFoods.set(foods, [...(byFoods.get(foods) ?? []), words.nutrientName[nutrient] ?? nutrient])
  }
  return [...byFoods].map(([foods, names]) => words.missing(words.and(names), foods))
}

/** `38 g`, `at least 4.2 g`, `unknown`. */
export function knownText(
  nutrient: PublishedNutrient,
  figure: Figure,
  words: Pick<CarriedWords, 'atLeast' | 'unknown' | 'decimal'>,
): string {
  const text = withDecimal(nutrientText(nutrient, figure.value), words)
  if (isComplete(figure)) return text
  return figure.value > 0 ? words.atLeast(text) : words.unknown
}
