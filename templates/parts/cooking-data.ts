import type {Nutrient, PublishedNutrient} from '../../src/food/nutrients.ts'
import type {Computed, ComputedLine} from '../../src/nutrition/computed.ts'
import {energyNutrient} from '../../src/nutrition/energy-nutrient.ts'
import {type PackedRecipe, packedRecipe} from '../../src/nutrition/packed-recipe.ts'
import {internalNutrient} from '../../src/nutrition/published.ts'
import type {Amount} from '../../src/units/amount.ts'
import {measureWord} from '../../src/units/format-amount.ts'
import type {Site} from '../site.ts'
import {type PackedWords, packedWords} from '../words/carried-words.ts'
import type {Words} from '../words/en.ts'
import {allergenSentences} from './allergen-texts.ts'
import {type FigureChoice, figureChoice, toldRows} from './figure-rows.ts'
import {publishedFigures} from './published-figures.ts'

/** What the script of a recipe page works with; made by the same build, so that it is trusted. */
export interface CookingData {
  readonly slug: string
  readonly recipe: PackedRecipe
  readonly choice: FigureChoice
  /** In the order of the recipe's lines. */
  readonly lines: readonly CookedLine[]
  readonly caption: {
    readonly allergens: string
    readonly full: string
    readonly ifWanted: string
  }
  readonly words: CookingWords
  /** Absent where the recipe leaves no choice. */
  readonly choosing?: ChoosingData
}

export interface ChoosingData {
  readonly words: ScriptTexts['choosing'] & {
    readonly energy: Omit<Words['energy'], 'share' | 'title'>
    readonly share: string
  }
}

export interface CookedLine {
  readonly anchor: string
  /** As written first, then its alternatives. */
  readonly choices: readonly CookedChoice[]
}

export interface CookedChoice {
  readonly name: string
  /** Grams as listed, or the ends of a range. */
  readonly grams: number | readonly [low: number, high: number]
  /** The kitchen measure beside the weight, or instead of it. */
  readonly measure?: Measure
}

/** How many of what: `{count: 3, one: 'clove', many: 'cloves'}`. */
export interface Measure {
  readonly count: number
  readonly one: string
  readonly many: string
}

type ScriptTexts = Words['cooking']['script']

export interface CookingWords extends Omit<ScriptTexts, 'choosing'> {
  readonly carried: PackedWords
  readonly servingOf: string
}

/** The data block of a recipe's page. */
export function cookingData(site: Site, computed: Computed): CookingData {
  const {cookbook, words} = site
  const {recipe} = computed
  const {figures} = publishedFigures(computed, cookbook.settings)
  const headed = figures.map(({nutrient}) => nutrient)
  const choice = figureChoice(cookbook.settings, computed)
  const rows = toldRows(computed.perServing ?? computed.batch, choice).map((row) => row.nutrient)
  const named = [...new Set([...rows, ...headed])]
  const packed = packedRecipe(computed, shownNutrients(named, choice), drawnOnly)
  return {
    slug: recipe.slug,
    recipe: packed,
    choice,
    lines: computed.lines.map(cookedLine),
    caption: {
      allergens: allergenSentences(site, computed),
      full: words.caption.full,
      ifWanted: words.recipe.ifWanted,
    },
    words: cookingWords(words, named),
    ...(packed.lines.some(({adds}) => adds.length > 0) && {choosing: choosingData(words)}),
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
  if (amount.kind !== 'weight') return {name, grams, measure: measureOf(amount)}
  const {value, halfRange} = amount.grams
  const ends = halfRange === 0 ? value : ([value - halfRange, value + halfRange] as const)
  return {name, grams: ends, ...(amount.beside && {measure: measureOf(amount.beside)})}
}

function measureOf(amount: Exclude<Amount, {kind: 'weight'}>): Measure {
  const {value} = amount.kind === 'batch' ? amount.batches : amount.count
  return {count: value, one: measureWord(amount, 1), many: measureWord(amount, 2)}
}

/** The published figures by their internal names, and what their kilojoules need. */
function shownNutrients(
  published: readonly PublishedNutrient[],
  choice: FigureChoice,
): readonly Nutrient[] {
  const isEu = energyNutrient[choice.energyMethod] === 'energyEu'
  return [
    ...published.map((nutrient) => internalNutrient(nutrient, choice)),
    ...(isEu ? (['energyEuKilojoules'] as const) : []),
    ...(['carbohydrate', 'availableCarbohydrate', 'fibre'] as const),
  ].filter((nutrient, index, all) => all.indexOf(nutrient) === index)
}

/** The beams draw these as far as they are known. */
const drawnOnly = ['polyols', 'alcohol'] as const

function cookingWords(words: Words, named: readonly PublishedNutrient[]): CookingWords {
  const {choosing: _, ...texts} = words.cooking.script
  return {
    ...texts,
    carried: packedWords(words, named),
    servingOf: words.figures.servingOf('{weight}'),
  }
}

function choosingData(words: Words): ChoosingData {
  const {share, title: _, ...energy} = words.energy
  const {choosing} = words.cooking.script
  return {words: {...choosing, energy, share: share('{name}', '{percent}')}}
}
