import {nutrientName, type PublishedNutrient} from '../food/nutrients.ts'
import {nutrientFields} from './nutrient-fields.ts'
import type {Comparison} from './recipe.ts'
import {mapping, optional} from './yaml/collection-readers.ts'
import {converted, intact} from './yaml/converted.ts'
import type {Reader} from './yaml/reader.ts'
import {choice, text} from './yaml/text-readers.ts'

const fields = {
  recipe: optional(text, 'The recipe this one is compared with, by its slug'),
  food: optional(text, 'The food this one is compared with'),
  per: optional(choice(['serving', '100 g']), 'What is compared: a serving unless said otherwise'),
  ...nutrientFields(statement),
}

/** `compared with: { recipe: classic-barley-pot, energy: 40 % less }`. */
export const comparison: Reader<Comparison> = converted(
  intact(
    mapping('a comparison such as `{ recipe: classic-barley-pot, energy: 40 % less }`', fields),
  ),
  ({value: {recipe, food, per, ...statements}, place}, {report, subject}) => {
    if ((recipe === undefined) === (food === undefined)) {
      report({
        ruleId: 'readable-value',
        place: food?.place ?? place,
        reason: `${subject} names ${recipe ? 'a recipe and a food' : 'nothing'}, expected either \`recipe\` or \`food\``,
      })
      return undefined
    }
    return {
      ...(recipe && {recipe}),
      ...(food && {food}),
      basis: per?.value ?? 'serving',
      statements: Object.values(statements).flatMap((read) =>
        read
          ? [{nutrient: read.value.nutrient, text: {value: read.value.words, place: read.place}}]
          : [],
      ),
    }
  },
)

/** The words as written: whether they hold is for the checks to say. */
function statement(
  nutrient: PublishedNutrient,
): Reader<{readonly nutrient: PublishedNutrient; readonly words: string}> {
  return converted(
    {...text, expected: `words about ${nutrientName[nutrient]} such as \`40 % less\``},
    ({value}) => ({nutrient, words: value}),
  )
}
