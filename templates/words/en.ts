import {type AllergenGroup, allergenName, declaredAllergens} from '../../src/food/allergens.ts'
import type {CookingMethod} from '../../src/food/cooking-methods.ts'
import {baking} from './en-baking.ts'
import {book, cards} from './en-book.ts'
import {claims} from './en-claims.ts'
import {cooking} from './en-cooking.ts'
import {declared} from './en-declared.ts'
import {finding} from './en-finding.ts'
import {
  aisle,
  basis,
  nutrient,
  nutrientName,
  nutrientPart,
  severity,
  tolerance,
  verdict,
  verdictMeaning,
} from './en-names.ts'
import {safety} from './en-safety.ts'
import {list, shopping} from './en-shopping.ts'
import {stylePage} from './en-style.ts'
import {timetable} from './en-timetable.ts'

function plural(count: number, one: string, many: string): string {
  return count === 1 ? one : many
}

/** Every text of the pages in English. A second language has the same shape. */
export const en = {
  /** BCP 47, of the catalogue itself. */
  language: 'en',
  /** What stands before the parts of a whole, as `Intl.NumberFormat` has it for the language. */
  decimal: '.',
  nutrient,
  nutrientPart,
  nutrientName,
  basis,
  verdict,
  verdictMeaning,
  severity,
  tolerance,
  aisle,
  declaredAllergens,
  allergenName,
  allergenGroup: ({name}: AllergenGroup) => name,
  book,
  cards,
  declared,
  claims,
  baking,
  cooking,
  finding,
  list,
  shopping,
  safety,
  timetable,
  stylePage,

  nav: {
    label: 'Pages',
    recipes: 'Recipes',
    shopping: 'Shopping list',
    figures: 'Figures',
    foods: 'Foods',
    skip: 'Skip to the text',
  },

  footer: {
    caution:
      'Figures and allergens follow from the weighed ingredients and the tables and labels named ' +
      'under Foods. Packets change: read yours. Nothing here is medical advice; local rules and ' +
      'licensed practice come first.',
    checked: 'How these figures are checked',
    rules: 'The rules',
  },

  and: (names: readonly string[]) =>
    names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`,
  atLeastBefore: 'at least',
  atLeast: (amount: string) => `at least ${amount}`,
  plusMinus: (amount: string) => `± ${amount}`,
  unknown: 'unknown',
  minutes: (minutes: number) => `${minutes} min`,
  hours: (hours: number, minutes: number) =>
    minutes === 0 ? `${hours} h` : `${hours} h ${minutes} min`,
  days: (days: number) => `${days} ${plural(days, 'day', 'days')}`,
  weeks: (weeks: number) => `${weeks} ${plural(weeks, 'week', 'weeks')}`,
  months: (months: number) => `${months} ${plural(months, 'month', 'months')}`,
  servings: (servings: number) => `${servings} ${plural(servings, 'serving', 'servings')}`,

  recipe: {
    ingredients: 'Ingredients',
    method: 'Method',
    figures: 'Figures',
    keeping: 'Keeping',
    cautions: 'To stay well',
    cautionSources: 'Sources',
    allergens: 'Allergens',
    usedIn: 'Used in',
    tags: 'Filed under',
    serves: 'Serves',
    servingWeighs: 'One serving',
    batchWeighs: 'Whole batch',
    handsOn: 'Hands on',
    totalTime: 'Start to finish',
    oven: 'Oven',
    pan: 'Pan',
    fridge: 'In the fridge',
    freezer: 'In the freezer',
    room: 'At room temperature',
    card: 'Print a card',
    caption: 'Plain text to copy',
    optional: 'if wanted; not in the figures',
    ifWanted: 'if wanted',
    uncounted: (because: string) => `not in the figures: ${because}`,
    eaten: (amount: string) => `${amount} of it is eaten`,
    pouredOff: (amount: string, what: 'fat' | 'liquid') => `${amount} of ${what} poured off`,
    pouredOffLike: (cooked: string) => `fat poured off until it is ${cooked}`,
    cooked: (method: CookingMethod) => `${method}: part of it is lost`,
    trimmed: (amount: string) => `${amount} cut off and thrown away`,
    because: (text: string, because: string) => `${text} (${because})`,
    simmered: (time: string) => `cooks for ${time}, so part of its alcohol is gone`,
    bought: (amount: string) => `as bought; ${amount} of it is eaten`,
    ofBatch: (share: string) => `${share} of a batch`,
    or: (amount: string, name: string) => `Or ${amount} ${name}`,
    orChanges: (changes: string) => `one serving then has ${changes}`,
    orChangesNothing: 'the figures stay within a gram',
    brings: (names: string) => `brings ${names}`,
    countedWhole: 'counted whole, nothing poured or cut off',
    more: (amount: string, name: string) => `${amount} more ${name}`,
    less: (amount: string, name: string) => `${amount} less ${name}`,
  },

  figures: {
    stated: 'Stated',
    computed: 'Computed',
    verdict: 'Verdict',
    nutrient: 'Nutrient',
    serving: 'One serving',
    servingOf: (weight: string) => `One serving, ${weight}`,
    per100g: '100 g',
    batch: 'Whole batch',
    computedBeside: 'Stated and computed',
    noStated: 'Nothing is stated for this recipe: the figures shown are the computed ones.',
    rest: 'The ± is what the kitchen scale, the rounding of packet labels and the table leave open (twice the standard uncertainty).',
    missing: (nutrientName: string, foods: string) => `No figure for ${nutrientName}: ${foods}.`,
  },

  energy: {
    title: 'Where the energy comes from',
    share: (name: string, percent: string) => `${name} ${percent} %`,
    protein: 'Protein',
    fat: 'Fat',
    carbohydrate: 'Carbohydrate',
    fibre: 'Fibre',
    polyols: 'Polyols',
    alcohol: 'Alcohol',
  },

  comparison: {
    title: 'Beside',
    basis: (per: string) => `Compared by ${per}.`,
    sameWeight: 'Compared by the weight of one serving.',
    here: 'this recipe',
  },

  allergens: {
    contains: 'Contains',
    none: 'No ingredient is known to contain one.',
    outside: 'Outside that law, but of note',
    optional: 'In what is optional or may stand instead',
    mayContain: 'May contain, as the packets say',
    notStated: 'Not stated for',
    freeFrom: 'Free from, through every component and packet',
    suits: 'Suits',
    lawUs: 'By the nine allergens of US law. Read the packets you use.',
    lawEu: 'By the fourteen allergens of EU law. Read the packets you use.',
  },

  index: {
    title: 'Recipes',
    intro: (count: number) =>
      `${count} ${plural(count, 'recipe', 'recipes')}. Figures are for one serving.`,
    recipe: 'Recipe',
    serving: 'Serving',
    time: 'Time',
    components: 'Made ahead',
    componentsIntro:
      'Stocks, doughs and sauces that other recipes use by weight. Figures are for 100 g.',
    batch: 'Batch',
    keeps: 'Keeps',
    planned: 'Plans',
    parts: 'All recipes by name',
    componentParts: 'All that is made ahead, by name',
  },

  plan: {
    cooks: 'What is cooked',
    list: 'To buy',
    figures: 'Figures are for one serving.',
    tick: 'Tick off and add to this list',
  },

  figuresPage: {
    title: 'Figures',
    intro:
      'Every figure these pages publish, beside what the weighed ingredients give. A figure that no longer follows stops the build, so none of that kind is here.',
    computedOnly: 'Nothing stated; the computed figures are published.',
    tolerance: (name: string) => `The tolerance of this cookbook is ${name}.`,
    legend: 'What the verdicts mean',
    open: 'What was left open',
    openIntro: 'Warnings and notes that came up when these pages were made.',
  },

  foodsPage: {
    title: 'Foods',
    intro:
      'The foods in use, per 100 g edible portion, and where their figures come from. USDA SR28 is the USDA National Nutrient Database for Standard Reference, Release 28 (Agricultural Research Service, 2015, revised 2016); its rows are NDB numbers.',
    food: 'Food',
    usedBy: 'Used by',
    fromTable: (table: string, row: string) => `${table}, row ${row}`,
    fromLabel: 'Packet label, copied by the cook',
  },

  rulesPage: {
    title: 'Rules',
    intro: 'What is checked before a page is published.',
    source: 'Source',
    example: 'Example',
    fails: 'This is told',
    passes: 'And this passes:',
  },

  card: {
    title: (recipe: string) => `Card: ${recipe}`,
    size: 'Card size',
    sizes: {A6: 'A6 (105 × 148 mm)', '6x4': '6 × 4 in', '5x3': '5 × 3 in'},
    front: (recipe: string) => `Front: ${recipe}`,
    back: (recipe: string) => `Back: ${recipe}`,
    print: 'Print from the browser’s own menu, both sides, at actual size.',
    backToRecipe: 'Back to the recipe',
    scan: 'The page of this recipe',
  },

  notFound: {
    title: 'Nothing on this pan',
    text: 'There is no page at this address. The recipes are all listed on the first page.',
    link: 'All recipes',
  },

  caption: {
    full: 'Recipe',
  },
}

export type Words = typeof en
