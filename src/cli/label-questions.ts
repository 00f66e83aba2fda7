import {aisles, allergens, origins} from '../food/food.ts'
import type {LabelLine} from '../food/label.ts'
import {labelRules} from '../food/label-rules.ts'
import {nutrientName} from '../food/nutrients.ts'
import {parsePrinted} from '../food/parse-printed.ts'
import {parseWeight} from '../units/parse-amount.ts'
import {type Parsed, parsed, refused} from '../units/parsed.ts'
import type {Question} from './ask.ts'

export const nameQuestion: Question = {
  key: 'name',
  text: 'Name, as recipes will call it',
  isOptional: false,
  read: (answer) => (answer === '' ? refused('a name') : parsed(answer)),
}

/** Every line a panel may have, in the order packets print them. */
const panelLines = [
  'energyKilojoules',
  'energy',
  'fat',
  'saturated',
  'trans',
  'cholesterol',
  'carbohydrate',
  'fibre',
  'sugars',
  'addedSugars',
  'polyols',
  'protein',
  'salt',
  'sodium',
  'calcium',
  'iron',
  'potassium',
  'vitaminD',
  'alcohol',
] as const satisfies readonly LabelLine[]

export const panelQuestions: readonly Question[] = [
  {
    key: 'per',
    text: 'Figures are for (100 g, or one serving: 30 g)',
    isOptional: false,
    read: weight,
  },
  {...oneOf('rules', 'Rules of the panel', labelRules), isOptional: true},
  ...panelLines.map(lineQuestion),
]

export const soldQuestions: readonly Question[] = [
  {key: 'weight', text: 'Weight of a pack (450 g)', isOptional: true, read: weight},
  {
    key: 'price',
    text: 'Price of a pack (2.39)',
    isOptional: true,
    read: (answer) =>
      /^\d+(?:\.\d+)?$/.test(answer) ? parsed(answer) : refused('a number such as `2.39`'),
  },
  {...oneOf('aisle', 'Aisle', aisles), isOptional: true},
]

export const allergenWords: readonly string[] = allergens
export const originWords: readonly string[] = origins

function lineQuestion(line: LabelLine): Question {
  const key = line === 'energyKilojoules' ? 'energy kJ' : nutrientName[line]
  return {
    key,
    text: line === 'energy' ? 'energy kcal' : key,
    isOptional: true,
    read: (answer) => {
      const figure = parsePrinted(line, answer)
      return figure.ok ? parsed(figure.value.text) : figure
    },
  }
}

function weight(answer: string): Parsed<string> {
  // Only weights pass, so the cookbook's cups do not matter here.
  const read = parseWeight(answer, {cups: 'metric', measures: new Set()})
  return read.ok ? parsed(answer) : read
}

function oneOf(
  key: string,
  text: string,
  choices: readonly string[],
): Omit<Question, 'isOptional'> {
  return {
    key,
    text: `${text} (${choices.join(', ')})`,
    read: (answer) => wordAmong(answer, choices),
  }
}

/** Reads one of a list of words, case aside. */
export function wordAmong(answer: string, choices: readonly string[]): Parsed<string> {
  const found = choices.find((choice) => choice === answer.toLowerCase())
  return found === undefined ? refused(`one of ${choices.join(', ')}`) : parsed(found)
}
