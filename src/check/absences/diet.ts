import {isComplete} from '../../food/figures.ts'
import type {Allergen, Food, Origin} from '../../food/food.ts'
import {meats, seafood} from '../../food/meats.ts'
import {againstFreeFrom} from './free-from.ts'
import type {Objection} from './objection.ts'
import type {OtherWord} from './promise.ts'

/** A way of eating that the ingredients of a dish can be held to. */
export interface Diet {
  readonly name: string
  readonly also: readonly string[]
  /** What the ingredients leave open, one sentence for the page. */
  readonly leavesOpen?: string
  /** The foods of which that is left open; absent: any dish. */
  isOpenFor?(food: Food): boolean
  against(food: Food): Objection | undefined
}

const animalAllergens: readonly Allergen[] = ['fish', 'crustacean', 'mollusc']

/**
 * What a vegetarian or vegan dish is made without is common practice; no law of either market
 * defines it (Regulation (EU) 1169/2011 Article 36(3)(b) asks for one).
 */
export const diets: readonly Diet[] = [
  {
    name: 'vegetarian',
    also: ['vegetarians', 'lacto-ovo vegetarian'],
    leavesOpen: 'Some cheese is set with rennet from calves: read its packet.',
    isOpenFor: mayHaveRennet,
    against: (food) => against(food, [...meats, ...seafood, 'gelatine'], animalAllergens),
  },
  {
    name: 'vegan',
    also: ['vegans', 'plant-based'],
    leavesOpen: 'Some wine and vinegar is cleared with egg, milk or fish: read the packet.',
    isOpenFor: ({name}) => cleared.test(name),
    against: (food) =>
      against(
        food,
        [...meats, ...seafood, 'gelatine', 'egg', 'dairy', 'honey'],
        [...animalAllergens, 'egg', 'milk'],
      ),
  },
  {
    name: 'pescatarian',
    also: ['pescetarian', 'pescatarians'],
    // Gelatine is of pork or beef more often than of fish.
    against: (food) => against(food, [...meats, 'gelatine'], []),
  },
  {
    name: 'pork-free',
    also: ['no pork', 'without pork'],
    against: (food) => against(food, ['pork', 'gelatine'], []),
  },
  {
    name: 'beef-free',
    also: ['no beef', 'without beef'],
    against: (food) => against(food, ['beef', 'veal', 'gelatine'], []),
  },
  {
    name: 'alcohol-free',
    also: ['no alcohol', 'without alcohol'],
    against: againstNoAlcohol,
  },
  {
    name: 'gluten-free ingredients',
    also: ['no gluten-containing ingredients', 'made without gluten-containing ingredients'],
    leavesOpen:
      'By its ingredients only: whether it holds less than 20 mg of gluten in a kilogram takes a measurement.',
    against: againstNoGluten,
  },
]

const cleared = /\b(?:wine|vinegar|vinaigrette|sherry|port|marsala|madeira|vermouth|beer|cider)\b/i

/** What is made of milk without setting it: all else on the shelf is cheese, whatever its name. */
const unset =
  /\b(?:milk|buttermilk|cream|yog(?:h)?urt|skyr|kefir|quark|butter|ghee|dulce de leche|custard)\b/i
const calledCheese = /cheese|\bcurds?\b/i

function mayHaveRennet({name, from, aisle, traits}: Food): boolean {
  if (calledCheese.test(name) || /\bwhey\b/i.test(name)) return true
  if (!from.includes('dairy') || aisle !== 'dairy') return false
  return !unset.test(name) && !traits.has('fat')
}

/** Whether a dish of these foods has what a diet's sentence is about. */
export function leavesSomethingOpen({leavesOpen, isOpenFor}: Diet, foods: Iterable<Food>): boolean {
  if (leavesOpen === undefined) return false
  return isOpenFor === undefined || [...foods].some((food) => isOpenFor(food))
}

function against(
  food: Food,
  origins: readonly Origin[],
  allergens: readonly Allergen[],
): Objection | undefined {
  const origin = food.from.find((each) => origins.includes(each))
  if (origin) return {kind: 'no', why: `is made from ${origin}`}
  const allergen = allergens.find((each) => food.contains.has(each))
  if (allergen) return {kind: 'no', why: `contains ${allergen}`}
  return food.from.length > 0 ? undefined : originNotStated
}

const originNotStated: Objection = {
  kind: 'unknown',
  key: 'made from',
  why: 'does not say what it is made from',
}

/**
 * Heat drives off part of the alcohol, never all: a line that simmered counts as well. A packet's
 * panel has no line for alcohol, so a labelled food is judged by its traits.
 */
function againstNoAlcohol(food: Food): Objection | undefined {
  const {alcohol} = food.per100g
  if (food.traits.has('alcohol') || alcohol.value > 0) return {kind: 'no', why: 'holds alcohol'}
  return isComplete(alcohol) || food.from.length > 0 ? undefined : originNotStated
}

/**
 * The cereals with gluten of Regulation (EU) 1169/2011 Annex II. 21 CFR 101.91 leaves oats out;
 * they are counted under either law, because ordinary oats carry barley and wheat along (common
 * practice, no source).
 */
const glutenCereals = {
  name: 'gluten',
  also: [],
  allergens: ['wheat', 'rye', 'barley', 'oats'],
} as const

function againstNoGluten(food: Food): Objection | undefined {
  return againstFreeFrom(glutenCereals, food)
}

const byWord: ReadonlyMap<string, Diet> = new Map(
  diets.flatMap((diet) => [diet.name, ...diet.also].map((word) => [word, diet] as const)),
)

/** The diet a word of `suits` means; undefined where ingredients cannot tell. */
export function dietOf(word: string): Diet | undefined {
  return byWord.get(word.toLowerCase())
}

export const dietNames: readonly string[] = diets.map(({name}) => name)

/** Words that a list of ingredients cannot answer for, or that stand elsewhere. */
const otherDiets: readonly (OtherWord & {readonly words: RegExp})[] = [
  {
    words: /^gluten[- ]free$|^c(?:o)?eliac/,
    write: 'gluten-free ingredients',
    why: '`gluten-free` means less than 20 mg/kg, measured (21 CFR 101.91; Regulation (EU) 828/2014); a recipe can only say that no ingredient contains gluten.',
  },
  {
    words: /^(?:halal|kosher|jain|hindu|buddhist)\b/,
    why: 'It depends on how food is slaughtered, kept and prepared and on who certifies it; say it in the text, in your own words.',
  },
  {
    words: /^(?:diabetic|diabetes|low[- ]fodmap|renal|pregnan\w*|babies|infants|weaning)\b/,
    why: 'That is medical advice, which a recipe cannot give; licensed practice comes first.',
  },
  {
    words: /^(?:dairy|milk|egg|nut|peanut|soya?|sesame|fish|shellfish|wheat|lactose)[- ]free$/,
    write: 'free from',
    why: 'Allergens stand in `free from`, without "free".',
  },
  {
    words: /^(?:low|high|no|reduced)[- ]/,
    write: 'claims',
    why: 'Words about nutrition stand in `claims` and have rules.',
  },
]

/** What is to say of a word that means no diet of the list; undefined where nothing is known of it. */
export function otherDietOf(word: string): OtherWord | undefined {
  return otherDiets.find(({words}) => words.test(word.toLowerCase()))
}
