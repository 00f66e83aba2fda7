import type {Nutrient, PublishedNutrient} from '../../src/food/nutrients.ts'
import type {Computed, ComputedLine} from '../../src/nutrition/computed.ts'
import {energyNutrient} from '../../src/nutrition/energy-nutrient.ts'
import {
  type PackedLine,
  type PackedRecipe,
  packedRecipe,
} from '../../src/nutrition/packed-recipe.ts'
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
export interface CookingData extends Omit<CarriedCooking, 'lines' | 'recipe'> {
  readonly recipe: PackedRecipe
  /** In the order of the recipe's lines. */
  readonly lines: readonly CookedLine[]
}

/** The same without what stands on the page already. */
export interface CarriedCooking {
  readonly slug: string
  /** 0 for a line about which nothing can be chosen. */
  readonly recipe: Omit<PackedRecipe, 'lines'> & {readonly lines: readonly (PackedLine | 0)[]}
  readonly choice: FigureChoice
  /** In the order of the ledger on the page, which has their anchors and names. */
  readonly lines: readonly (CarriedLine | number)[]
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

export interface CarriedLine extends Omit<CookedChoice, 'name'> {
  readonly instead?: readonly CookedChoice[]
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
export function cookingData(site: Site, computed: Computed): CarriedCooking {
  const {cookbook, words} = site
  const {recipe} = computed
  const {figures} = publishedFigures(computed, cookbook.settings)
  const headed = figures.map(({nutrient}) => nutrient)
  const choice = figureChoice(cookbook.settings, computed)
  const rows = toldRows(computed.perServing ?? computed.batch, choice).map((row) => row.nutrient)
  const named = [...new Set([...rows, ...headed])]
  const packed = packedRecipe(computed, shownNutrients(named, choice), drawnOnly)
  const lacking = lackingNutrients(packed)
  const spoken = named.filter(
    (name) => headed.includes(name) || lacking.has(internalNutrient(name, choice)),
  )
  return {
    slug: recipe.slug,
    recipe: {...packed, lines: packed.lines.map((line) => (line.adds.length > 0 ? line : 0))},
    choice,
    lines: computed.lines.map(carriedLine),
    caption: {
      allergens: allergenSentences(site, computed),
      full: words.caption.full,
      ifWanted: words.recipe.ifWanted,
    },
    words: cookingWords(words, spoken),
    ...(packed.lines.some(({adds}) => adds.length > 0) && {choosing: choosingData(words)}),
  }
}

/** Grams alone, where there is no more to say. */
function carriedLine({line, grams, purchasedGrams, instead}: ComputedLine): CarriedLine | number {
  const listed = line.isBought ? purchasedGrams : grams.value
  const choices = instead.map(({name, choice, grams: other}) => ({
    name,
    ...carriedAmount(choice.amount.value, other.value),
  }))
  const written = carriedAmount(line.amount.value, listed)
  if (choices.length > 0) return {...written, instead: choices}
  return written.measure === undefined && typeof written.grams === 'number'
    ? written.grams
    : written
}

function carriedAmount(amount: Amount, grams: number): Omit<CookedChoice, 'name'> {
  if (amount.kind !== 'weight') return {grams, measure: measureOf(amount)}
  const {value, halfRange} = amount.grams
  const ends = halfRange === 0 ? value : ([value - halfRange, value + halfRange] as const)
  return {grams: ends, ...(amount.beside && {measure: measureOf(amount.beside)})}
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

/** Those that some food has no figure for: a page names them. */
function lackingNutrients({nutrients, always, lines}: PackedRecipe): ReadonlySet<Nutrient> {
  const figures = [always, ...lines.flatMap(({adds}) => adds)]
  const places = figures.flatMap(({missing = {}}) => Object.keys(missing))
  return new Set(places.flatMap((place) => nutrients[Number(place)] ?? []))
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
