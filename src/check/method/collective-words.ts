import type {Food, Origin, Trait} from '../../food/food.ts'
import type {ComputedLine} from '../../nutrition/computed.ts'
import {nameWords} from './ingredient-words.ts'
import {wordsOf} from './words.ts'

/** Words a method uses for every ingredient of a kind. */
const byTrait: Partial<Record<Trait, string>> = {
  herb: 'herb herbs garnish aromatics bouquet',
  spice: 'spice spices seasoning seasonings season seasoned aromatics',
  salt: 'season seasoning seasonings seasoned salted',
  leavening: 'raising',
  flour: 'flour dust dusted',
  fat: 'fat grease oil oiled greased',
  liquid: 'liquid liquids',
  stock: 'stock broth liquid',
  juice: 'juice liquid',
  alcohol: 'alcohol liquid',
  sugar: 'sugar sugars sweeten',
  sweetener: 'sweetener sweeten',
  rice: 'rice grain grains',
  'kidney bean': 'bean beans pulses',
  garlic: 'aromatics',
  ground: 'mince meat patties',
  nut: 'nut nuts seeds',
  yeast: 'yeast',
  'protein powder': 'powder',
}

const byOrigin: Partial<Record<Origin, string>> = {
  beef: 'meat steak roast joint',
  pork: 'meat chops roast joint',
  lamb: 'meat chops roast joint',
  veal: 'meat',
  game: 'meat',
  poultry: 'meat bird breasts thighs pieces skin',
  fish: 'fish fillet fillets',
  crustacean: 'seafood shellfish',
  mollusc: 'seafood shellfish',
  egg: 'egg eggs yolk yolks white whites',
}

const byAisle: Partial<Record<Food['aisle'], string>> = {
  vegetables: 'vegetable vegetables veg roots salad greens leaves',
  fruit: 'fruit fruits berries',
  nuts: 'nut nuts seeds',
  pulses: 'pulses beans lentils',
  grains: 'grain grains',
  breads: 'bread slices toast loaf',
  dairy: 'dairy',
}

/** Stems of every word that can stand for a line besides its own name. */
function collectiveWords({line, group, ingredient}: ComputedLine): ReadonlySet<string> {
  const names = [line.name.value, ...(group === undefined ? [] : [group])]
  const isWater = /\bwater\b/i.test(line.name.value)
  const kinds = isWater ? ['boil boiling poach soak'] : []
  if (ingredient.kind === 'component') {
    names.push(ingredient.recipe.title.value)
  } else {
    names.push(ingredient.food.name, ...ingredient.food.also)
    kinds.push(...kindWords(ingredient.food))
  }
  return new Set([
    ...names.flatMap((name) => [...nameWords(name).nouns]),
    ...kinds.flatMap((words) => wordsOf(words).map(({stem}) => stem)),
  ])
}

function kindWords({traits, from, aisle, state}: Food): readonly string[] {
  return [
    state === 'canned' ? 'tin tins can cans jar' : '',
    ...[...traits].map((trait) => byTrait[trait] ?? ''),
    ...from.map((origin) => byOrigin[origin] ?? ''),
    byAisle[aisle] ?? '',
  ]
}

/** Words for all there is: `everything`, `the rest of the ingredients`. */
export const everything =
  /\beverything\b|\bwhatever\b|\bthe lot\b|\b(?:all|rest|remaining|other|every|each|the)\b[^.;:]{0,30}\bingredients?\b/i

/** `The dry ingredients` and `the wet` are two halves of a batter. */
const dryIngredients =
  /\bdry(?:\s+(?:ingredients|mix|mixture|things|bowl)|\b(?=\s*(?:into|to|and|with)))/i
const wetIngredients = /\b(?:wet|liquid)s?\s+(?:ingredients|mix|mixture|things)\b/i

/**
 * Tells whether words of a text that name no ingredient stand for one.
 * @param text without the names in it
 */
export function standsFor(text: string): (entry: ComputedLine) => boolean {
  const stems = new Set(wordsOf(text).flatMap(({stem}) => [stem, worked(stem)]))
  const [hasDry, hasWet] = [dryIngredients.test(text), wetIngredients.test(text)]
  return (entry) => {
    const words = collectiveWords(entry)
    for (const stem of stems) if (words.has(stem) || isEndOf(stem, words)) return true
    return (hasDry && isDry(entry)) || (hasWet && isWet(entry))
  }
}

/** Shortest end of a compound that still says what it is: the `cress` of `watercress`. */
const shortestEnd = 4

function isEndOf(stem: string, words: ReadonlySet<string>): boolean {
  if (stem.length < shortestEnd) return false
  for (const word of words) if (word.endsWith(stem)) return true
  return false
}

/** What was done with an ingredient: `salting`, `buttered`. */
function worked(stem: string): string {
  return stem.replace(/(?<=...)(?:ing|ed)$/, '')
}

const dryTraits: readonly Trait[] = ['flour', 'sugar', 'salt', 'leavening', 'spice', 'sweetener']
const wetTraits: readonly Trait[] = ['liquid', 'juice', 'fat', 'alcohol']

function isDry({ingredient}: ComputedLine): boolean {
  if (ingredient.kind === 'component') return false
  const {state, traits} = ingredient.food
  return state === 'dry' || dryTraits.some((trait) => traits.has(trait))
}

function isWet({ingredient}: ComputedLine): boolean {
  if (ingredient.kind === 'component') return true
  const {from, traits} = ingredient.food
  return (
    from.includes('egg') || from.includes('dairy') || wetTraits.some((trait) => traits.has(trait))
  )
}
