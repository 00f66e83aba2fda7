import type {Food, Origin, Trait} from '../../food/food.ts'
import type {ComputedLine} from '../../nutrition/computed.ts'
import {nameWords} from './ingredient-words.ts'
import {stemOf, wordsOf} from './words.ts'

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
  vegetables: 'vegetable vegetables veg salad greens leaves',
  fruit: 'fruit fruits berries',
  nuts: 'nut nuts seeds',
  pulses: 'pulses beans lentils',
  grains: 'grain grains',
  breads: 'bread',
  dairy: 'dairy',
}

/** Stems of every word that can stand for a line besides its own name. */
function collectiveWords({line, group, ingredient}: ComputedLine): ReadonlySet<string> {
  const texts =
    ingredient.kind === 'component'
      ? [...nameWords(ingredient.recipe.title.value).nouns]
      : foodWords(ingredient.food)
  const titles = group === undefined ? [] : [...nameWords(group).nouns]
  const water = /\bwater\b/i.test(line.name.value) ? 'boil boiling poach soak' : ''
  return new Set([...texts, ...titles, ...water.split(' ')].filter(Boolean).map(stemOf))
}

function foodWords({traits, from, aisle, name, also}: Food): readonly string[] {
  return [
    ...[...traits].map((trait) => byTrait[trait] ?? ''),
    ...from.map((origin) => byOrigin[origin] ?? ''),
    byAisle[aisle] ?? '',
  ]
    .flatMap((words) => words.split(' '))
    .concat([name, ...also].flatMap((each) => [...nameWords(each).nouns]))
}

/** Words for all there is: `everything`, `the rest of the ingredients`. */
export const everything =
  /\beverything\b|\b(?:all|rest|remaining|other|every|each|the)\b[^.;:]{0,30}\bingredients?\b/i

/** `The dry ingredients` and `the wet` are two halves of a batter. */
const dryIngredients =
  /\bdry(?:\s+(?:ingredients|mix|mixture|things|bowl)|\b(?=\s*(?:into|to|and|with)))/i
const wetIngredients = /\b(?:wet|liquid)s?\s+(?:ingredients|mix|mixture|things)\b/i

/**
 * Tells whether words of a text that name no ingredient stand for one.
 * @param text without the names in it
 */
export function standsFor(text: string): (entry: ComputedLine) => boolean {
  const stems = new Set(wordsOf(text).map(({stem}) => stem))
  const [hasDry, hasWet] = [dryIngredients.test(text), wetIngredients.test(text)]
  return (entry) => {
    for (const stem of collectiveWords(entry)) if (stems.has(stem)) return true
    return (hasDry && isDry(entry)) || (hasWet && isWet(entry))
  }
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
