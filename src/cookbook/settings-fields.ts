import {labelRules} from '../food/label-rules.ts'
import {nutrientUnit, type PublishedNutrient} from '../food/nutrients.ts'
import {parseFigure} from '../food/parse-figure.ts'
import {parseWeight} from '../units/parse-amount.ts'
import {parseDays} from '../units/parse-duration.ts'
import {parsePercent} from '../units/parse-percent.ts'
import {type Parsed, parsed, refused} from '../units/parsed.ts'
import {cupSystems} from '../units/units.ts'
import {type NutrientTolerance, toleranceNames} from './cookbook.ts'
import {energyMethods} from './energy-method.ts'
import {nutrientFields} from './nutrient-fields.ts'
import {list, mapping, openMapping, optional, type Values} from './yaml/collection-readers.ts'
import type {Reader} from './yaml/reader.ts'
import {choice, flag, parsedText, text} from './yaml/text-readers.ts'

/** A tolerance of the writer's own, for one nutrient. */
export type WrittenTolerance = NutrientTolerance & {readonly nutrient: PublishedNutrient}

const language = parsedText(
  'a language tag such as `en` or `en-GB`',
  (written) =>
    /^[a-z]{2,3}(?:-[a-z0-9]{2,8})*$/i.test(written)
      ? parsed(written)
      : refused('a language tag such as `en` or `en-GB`'),
  ['en', 'en-GB'],
)

const address = parsedText(
  'the address of the site such as `https://example.org/recipes/`',
  parseAddress,
  ['https://example.org/recipes/'],
)

/** @returns the address ending in `/`, so that pages can be joined to it */
function parseAddress(written: string): Parsed<string> {
  const url = URL.canParse(written) ? new URL(written) : undefined
  const isWeb = url?.protocol === 'https:' || url?.protocol === 'http:'
  if (!url || !isWeb || url.search !== '' || url.hash !== '' || url.username !== '') {
    return refused('the address of the site such as `https://example.org/recipes/`')
  }
  return parsed(url.href.endsWith('/') ? url.href : `${url.href}/`)
}

const currency = parsedText(
  'three letters of ISO 4217 such as `EUR`',
  (written) =>
    /^[A-Z]{3}$/.test(written)
      ? parsed(written)
      : refused('three letters of ISO 4217 such as `EUR`'),
  ['EUR', 'GBP', 'USD'],
)

const scale = parsedText(
  'the smallest step of the scale such as `1 g`',
  (written): Parsed<number> => {
    const weight = parseWeight(written, {cups: 'metric', measures: new Set()})
    return weight.ok ? parsed(weight.value.grams.value) : weight
  },
  ['1 g', '0.1 g', '5 g'],
)

function tolerance(nutrient: PublishedNutrient): Reader<WrittenTolerance> {
  const expected = `a share or an amount such as \`10 %\` or \`5 ${nutrientUnit[nutrient]}\``
  return parsedText(
    expected,
    (written): Parsed<WrittenTolerance> => {
      if (written.endsWith('%')) {
        const ratio = parsePercent(written)
        return ratio.ok ? parsed({kind: 'ratio', ratio: ratio.value, nutrient}) : ratio
      }
      const amount = parseFigure(nutrient, written)
      if (!amount.ok) return amount
      if (amount.value.isLessThan) return refused(expected)
      return parsed({kind: 'amount', amount: amount.value.value, nutrient})
    },
    ['10 %', `5 ${nutrientUnit[nutrient]}`],
  )
}

/** Every key of cookbook.yaml. */
const fields = {
  title: optional(text, 'Name of the cookbook'),
  description: optional(text, 'The cookbook in a sentence'),
  language: optional(language, 'Language of the pages, a BCP 47 tag'),
  address: optional(address, 'Where the site is published'),
  currency: optional(currency, 'Currency of the prices in foods.yaml, ISO 4217'),
  scale: optional(scale, 'Smallest step of the kitchen scale'),
  rules: optional(choice(labelRules), 'Whose law labels and wording follow'),
  carbohydrate: optional(
    choice(['total', 'available']),
    'Which carbohydrate is published: with fibre (total) or without (available)',
  ),
  'energy method': optional(
    choice(energyMethods),
    'How stated energy is arrived at: from the foods, or by the factors of a law',
  ),
  declare: optional(
    choice([...labelRules, 'plain']),
    'By whose rules pages also declare the figures; plain, the default, shows them as computed only',
  ),
  'net carbohydrate': optional(
    flag,
    'Whether pages show net carbohydrate, a convention of readers that no law defines',
  ),
  tolerance: optional(
    choice(toleranceNames),
    'How far a stated figure may be from the computed one',
  ),
  tolerances: optional(
    mapping('tolerances such as `{ protein: 10 %, energy: 20 kcal }`', nutrientFields(tolerance)),
    'Tolerances of your own, per nutrient',
  ),
  cups: optional(choice(cupSystems), 'Which cup a recipe means: 236.6, 250 or 284.1 ml'),
  checks: optional(
    openMapping('severities by rule id', choice(['error', 'warning', 'note', 'off'])),
    'How strict single rules are',
  ),
  'label age': optional(
    parsedText('a time such as `12 months`', parseDays, ['12 months']),
    'How long a packet’s figures count as fresh; each label says when it was read',
  ),
  print: optional(
    mapping('sizes such as `{ paper: A4, cards: A6 }`', {
      paper: optional(choice(['A4', 'Letter', 'A5']), 'Paper of the printed cookbook'),
      cards: optional(choice(['A6', '6x4', '5x3']), 'Size of the cards; 6x4 and 5x3 in inches'),
      sections: optional(
        list('a list such as `[breakfast, soup]`', text),
        'Tags that make the sections of the cookbook, in this order; other sections follow',
      ),
    }),
    'Sizes of what is printed, and the order of the cookbook',
  ),
}

export type SettingsValues = Values<typeof fields>

/** cookbook.yaml; its schema describes every key for an editor. */
export const settingsReader: Reader<SettingsValues> = mapping('the keys of a cookbook', fields)
