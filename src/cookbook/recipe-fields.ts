import type {Kitchen} from '../units/parse-amount.ts'
import {parseDays, parseMinutes} from '../units/parse-duration.ts'
import {type Parsed, parsed, refused} from '../units/parsed.ts'
import {weightReader} from './amount-readers.ts'
import {comparison} from './comparison-fields.ts'
import {energyMethods} from './energy-method.ts'
import {ingredientsReader} from './ingredients-field.ts'
import {pan} from './pan-fields.ts'
import type {Located} from './problem.ts'
import type {Acceptance, KeepingTime, Keeps, Picture} from './recipe.ts'
import {stated} from './stated-fields.ts'
import {
  list,
  mapping,
  openMapping,
  optional,
  required,
  textOrMapping,
  type Values,
} from './yaml/collection-readers.ts'
import {converted} from './yaml/converted.ts'
import type {Reader} from './yaml/reader.ts'
import {choice, parsedText, text, wholeNumber} from './yaml/text-readers.ts'
import {yieldFactor} from './yield-factor-field.ts'

/** More servings than any kitchen gives from one batch. */
const mostServings = 10_000

const minutes = parsedText('a time such as `20 min`', parseMinutes, ['20 min', '1 h 30 min'])
const days = parsedText('a time such as `3 days`', writtenDays, ['3 days', '3 months'])

interface WrittenDays {
  readonly days: number
  readonly text: string
}

function writtenDays(text: string): Parsed<WrittenDays> {
  const read = parseDays(text)
  return read.ok ? parsed({days: read.value, text: text.trim()}) : read
}

function keepingTime({value, place}: Located<WrittenDays>): KeepingTime {
  return {value: value.days, text: value.text, place}
}

const keeps: Reader<Keeps> = converted(
  mapping('times such as `{ fridge: 3 days, freezer: 3 months }`', {
    fridge: optional(days, 'How long it keeps in the fridge'),
    freezer: optional(days, 'How long it keeps in the freezer'),
    room: optional(days, 'How long it keeps at room temperature'),
  }),
  ({value: {fridge, freezer, room}}) => ({
    ...(fridge && {fridgeDays: keepingTime(fridge)}),
    ...(freezer && {freezerDays: keepingTime(freezer)}),
    ...(room && {roomDays: keepingTime(room)}),
  }),
)

/** Below images/, with `/`; with or without the folder's name in front. */
const imageFile = parsedText(
  'the name of a picture in images/ such as `barley-pot.jpg`',
  (written) => {
    const path = written.replace(/^(?:\.\.\/)?images\//, '')
    const isInside =
      path !== '' && !/^\/|\\|^[a-z]+:/i.test(path) && !path.split('/').includes('..')
    return isInside
      ? parsed(path)
      : refused('the name of a picture in images/ such as `barley-pot.jpg`')
  },
  ['barley-pot.jpg'],
)

const image = converted(
  mapping('a picture such as `{ file: barley-pot.jpg, alt: A bowl of barley }`', {
    file: required(imageFile, 'The picture, below images/', 'which picture is it?'),
    alt: required(text, 'What the picture shows, for who cannot see it', 'what does it show?'),
  }),
  ({value: {file, alt}}): Located<Picture> => ({
    value: {path: file.value, alt: alt.value},
    place: file.place,
  }),
)

const reasons = openMapping('ingredients or quoted texts, with a reason each', text)

const accepted = converted(
  openMapping('rule ids with a reason each', textOrMapping(text, reasons)),
  ({value}) =>
    value.flatMap(({key: ruleId, value: {value: written, place}}): readonly Acceptance[] =>
      typeof written === 'string'
        ? [{ruleId, because: {value: written, place}}]
        : written.map(({key: only, value: because}) => ({ruleId, only, because})),
    ),
)

/** Every key of a recipe's front matter. */
function recipeFields(kitchen: Kitchen) {
  const weight = weightReader(kitchen)
  return {
    title: required(text, 'Name of the dish', 'what is the dish called?'),
    summary: optional(text, 'The dish in a sentence'),
    serves: optional(wholeNumber({from: 1, to: mostServings}), 'How many portions the batch gives'),
    yield: optional(weight, 'Weight of the finished batch'),
    'yield factor': optional(
      yieldFactor,
      'Finished weight ÷ weight of the ingredients, where the batch was not weighed: a number, or a cooked food that shows it',
    ),
    'left behind': optional(weight, 'What stays in the pot and bowl, weighed: nobody eats it'),
    portion: optional(weight, 'Weight of one portion, where the page states it'),
    time: optional(
      mapping('times such as `{ hands-on: 20 min, total: 65 min }`', {
        'hands-on': optional(minutes, 'How long the cook is busy'),
        total: optional(minutes, 'How long it takes from start to table'),
      }),
      'How long it takes',
    ),
    oven: optional(text, 'Oven setting, such as 200 °C'),
    pan: optional(pan, 'The tin'),
    pieces: optional(
      wholeNumber({from: 1, to: mostServings}),
      'How many equal pieces the dough is divided into',
    ),
    piece: optional(weight, 'Weight of one piece, where the dough is divided by weight'),
    keeps: optional(keeps, 'How long it keeps'),
    tags: optional(list('a list such as `[one pot, batch cooking]`', text), 'Words to find it by'),
    image: optional(image, 'A picture of the dish'),
    ingredients: required(
      ingredientsReader(kitchen),
      'Ingredients with their amounts, in the order of use; a mapping of them is a group',
      'what goes in, and how much?',
    ),
    stated: optional(stated, 'The figures the page publishes; checked against the ingredients'),
    'energy method': optional(
      choice(energyMethods),
      'How the stated energy was arrived at, where it is not as cookbook.yaml says',
    ),
    claims: optional(
      list('a list such as `[high protein]`', text),
      'Words about nutrition that the page uses',
    ),
    'free from': optional(list('a list such as `[milk, egg]`', text), 'What the dish is free from'),
    suits: optional(list('a list such as `[vegetarian]`', text), 'Diets the dish suits'),
    'compared with': optional(comparison, 'A recipe or food this one is compared with'),
    accepted: optional(accepted, 'Findings that are accepted, by rule id, with the reason'),
  }
}

export type RecipeValues = Values<ReturnType<typeof recipeFields>>

/** The front matter of a recipe; its schema describes every key for an editor. */
export function recipeReader(kitchen: Kitchen): Reader<RecipeValues> {
  return mapping('the keys of a recipe', recipeFields(kitchen))
}
