import {nutrientUnit, type PublishedNutrient} from '../food/nutrients.ts'
import {parseFigure} from '../food/parse-figure.ts'
import {type Parsed, parsed} from '../units/parsed.ts'
import {nutrientFields} from './nutrient-fields.ts'
import type {Stated, StatedBasis, StatedFigure} from './recipe.ts'
import {mapping, optional} from './yaml/collection-readers.ts'
import {converted} from './yaml/converted.ts'
import type {Reader} from './yaml/reader.ts'
import {choice, parsedText} from './yaml/text-readers.ts'

/** The figures as written; what they refer to may be left to `serves`. */
export interface WrittenStated extends Omit<Stated, 'basis'> {
  readonly basis?: StatedBasis
}

const fields = {
  per: optional(
    choice(['serving', '100 g', 'batch']),
    'What the figures refer to: a serving unless said otherwise',
  ),
  ...nutrientFields(statedFigure),
}

/** `stated: { energy: 455 kcal, protein: 38 g }`, in writing order. */
export const stated: Reader<WrittenStated> = converted(
  mapping('figures such as `{ energy: 455 kcal, protein: 38 g }`', fields),
  ({value: {per, ...figures}, place}) => ({
    ...(per && {basis: per.value}),
    figures: Object.values(figures).flatMap((figure) =>
      figure ? [{...figure.value, place: figure.place}] : [],
    ),
    place,
  }),
)

function statedFigure(nutrient: PublishedNutrient): Reader<Omit<StatedFigure, 'place'>> {
  const example = `38 ${nutrientUnit[nutrient]}`
  return parsedText(
    `a figure such as \`${example}\``,
    (text): Parsed<Omit<StatedFigure, 'place'>> => {
      const figure = parseFigure(nutrient, text)
      if (!figure.ok) return figure
      const {value, increment, isLessThan} = figure.value
      // "Less than 1 g" is anywhere from 0 to 1: the middle, known to the whole of it.
      const known = isLessThan ? {value: value / 2, increment: value} : {value, increment}
      return parsed({nutrient, ...known, text})
    },
    [example],
  )
}
