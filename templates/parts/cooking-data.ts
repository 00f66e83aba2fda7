import type {Nutrient} from '../../src/food/nutrients.ts'
import type {Computed, ComputedLine} from '../../src/nutrition/computed.ts'
import {energyNutrient} from '../../src/nutrition/energy-nutrient.ts'
import {type PackedRecipe, packedRecipe} from '../../src/nutrition/packed-recipe.ts'
import {internalNutrient} from '../../src/nutrition/published.ts'
import type {Amount} from '../../src/units/amount.ts'
import {measureWord} from '../../src/units/format-amount.ts'
import {absoluteHref, recipePath} from '../addresses.ts'
import type {Site} from '../site.ts'
import {type PackedWords, packedWords} from '../words/carried-words.ts'
import type {Words} from '../words/en.ts'
import {allergenSentences} from './allergen-texts.ts'
import {type FigureChoice, type FigureRow, toldRows} from './figure-rows.ts'
import {publishedFigures} from './published-figures.ts'

/** What the script of a recipe page works with; made by the same build, so that it is trusted. */
export interface CookingData {
  readonly slug: string
  readonly title: string
  readonly recipe: PackedRecipe
  readonly choice: FigureChoice
  /** The figures of the table, and those that are named below it. */
  readonly rows: readonly FigureRow[]
  /** In the order of the recipe's lines. */
  readonly lines: readonly CookedLine[]
  readonly caption: {
    readonly allergens: string
    readonly link?: string
    readonly full: string
    readonly ifWanted: string
  }
  readonly words: CookingWords
}

export interface CookedLine {
  readonly anchor: string
  /** As written first, then its alternatives. */
  readonly choices: readonly CookedChoice[]
}

export interface CookedChoice {
  readonly name: string
  /** Grams as listed: one number, or the ends of a range. */
  readonly grams: readonly number[]
  /** The kitchen measure beside the weight, or instead of it. */
  readonly measure?: Measure
}

/** How many of what: `{count: 3, one: 'clove', many: 'cloves'}`. */
export interface Measure {
  readonly count: number
  readonly one: string
  readonly many: string
}

/** What the form says from the start, the script need not know. */
type CookingTexts = Omit<
  Words['cooking'],
  | 'title'
  | 'servings'
  | 'batches'
  | 'have'
  | 'haveOf'
  | 'tin'
  | 'awake'
  | 'again'
  | 'csv'
  | 'jsonld'
  | 'csvColumns'
>

export interface CookingWords extends CookingTexts {
  readonly carried: PackedWords
  readonly energy: Omit<Words['energy'], 'share' | 'title'>
  readonly share: string
  readonly serving: string
  readonly servingOf: string
}

/** The data block of a recipe's page. */
export function cookingData(site: Site, computed: Computed): CookingData {
  const {cookbook, words} = site
  const {recipe} = computed
  const {rules, carbohydrate, energyMethod, address} = cookbook.settings
  const choice = {rules, carbohydrate, ...(energyMethod && {energyMethod})}
  return {
    slug: recipe.slug,
    title: recipe.title.value,
    recipe: packedRecipe(computed, shownNutrients(site, computed, choice)),
    choice,
    rows: toldRows(computed.perServing ?? computed.batch, choice),
    lines: computed.lines.map(cookedLine),
    caption: {
      allergens: allergenSentences(site, computed),
      ...(address && {link: absoluteHref(address, recipePath(recipe.slug))}),
      full: words.caption.full,
      ifWanted: words.recipe.ifWanted,
    },
    words: cookingWords(words),
  }
}

function cookedLine({line, grams, purchasedGrams, instead}: ComputedLine): CookedLine {
  const listed = line.isBought ? purchasedGrams : grams.value
  return {
    anchor: line.anchor,
    choices: [
      cookedChoice(line.name.value, line.amount.value, listed),
      ...instead.flatMap((choice, index) => {
        const amount = line.instead[index]?.amount.value
        return amount ? [cookedChoice(choice.name, amount, choice.grams.value)] : []
      }),
    ],
  }
}

function cookedChoice(name: string, amount: Amount, grams: number): CookedChoice {
  if (amount.kind !== 'weight') return {name, grams: [grams], measure: measureOf(amount)}
  const {value, halfRange} = amount.grams
  const ends = halfRange === 0 ? [value] : [value - halfRange, value + halfRange]
  return {name, grams: ends, ...(amount.beside && {measure: measureOf(amount.beside)})}
}

function measureOf(amount: Exclude<Amount, {kind: 'weight'}>): Measure {
  const {value} = amount.kind === 'batch' ? amount.batches : amount.count
  return {count: value, one: measureWord(amount, 1), many: measureWord(amount, 2)}
}

/** Everything that stands in the tables, the headline and the beams of the page. */
function shownNutrients(site: Site, computed: Computed, choice: FigureChoice): readonly Nutrient[] {
  const {figures} = publishedFigures(computed, site.cookbook.settings)
  const main = computed.perServing ?? computed.batch
  const rows = toldRows(main, choice)
  const names = [...figures, ...rows].map(({nutrient}) => nutrient)
  const isEu = energyNutrient[choice.energyMethod ?? 'foods'] === 'energyEu'
  return [
    ...new Set<Nutrient>([
      ...names.map((nutrient) => internalNutrient(nutrient, choice)),
      ...(isEu ? (['energyEuKilojoules'] as const) : []),
      'protein',
      'fat',
      'carbohydrate',
      'availableCarbohydrate',
      'fibre',
      'polyols',
      'alcohol',
    ]),
  ]
}

function cookingWords(words: Words): CookingWords {
  const {share, title: _, ...energy} = words.energy
  const {cooking} = words
  return {
    copy: cooking.copy,
    status: cooking.status,
    scaledServings: cooking.scaledServings,
    chosen: cooking.chosen,
    with: cooking.with,
    insteadOf: cooking.insteadOf,
    putIn: cooking.putIn,
    takeInstead: cooking.takeInstead,
    tick: cooking.tick,
    servingCount: cooking.servingCount,
    timers: cooking.timers,
    startTimer: cooking.startTimer,
    timerOf: cooking.timerOf,
    timerEnded: cooking.timerEnded,
    stopTimer: cooking.stopTimer,
    carried: packedWords(words),
    energy,
    share: share('{name}', '{percent}'),
    serving: words.figures.serving,
    servingOf: words.figures.servingOf('{weight}'),
  }
}
