import type {Root} from 'hast'
import type {Position} from 'unist'
import type {Cookbook, Settings} from '../../src/cookbook/cookbook.ts'
import type {Located} from '../../src/cookbook/problem.ts'
import type {IngredientLine, Method, Recipe} from '../../src/cookbook/recipe.ts'
import {type Figure, figuresOf, known, unknown} from '../../src/food/figures.ts'
import type {Food} from '../../src/food/food.ts'
import type {Nutrient} from '../../src/food/nutrients.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {type SiteInput, siteOf} from '../../src/site/render-site.ts'
import type {Amount, CountAmount, Measured, WeightAmount} from '../../src/units/amount.ts'
import {rectangular} from '../../src/units/uncertain.ts'
import type {Site} from '../../templates/site.ts'

/**
 * A cookbook typed in by hand, small enough to recompute on paper: two components, two dishes that
 * are compared, a plan, a page. Figures per 100 g are round numbers near those of USDA SR28.
 */

const place: Position = {start: {line: 1, column: 1}, end: {line: 1, column: 2}}

export function at<T>(value: T): Located<T> {
  return {value, place}
}

function measured(value: number, increment = 1): Measured {
  return {value, halfRange: 0, increment}
}

export function weight(grams: number, more: Partial<WeightAmount> = {}): WeightAmount {
  return {
    kind: 'weight',
    grams: measured(grams, grams % 1 === 0 ? 1 : 0.1),
    text: `${grams} g`,
    ...more,
  }
}

export function count(value: number, measure: string): CountAmount {
  return {kind: 'count', count: measured(value), measure, text: `${value} ${measure}`}
}

export function line(
  name: string,
  amount: Amount,
  more: Partial<IngredientLine> = {},
): IngredientLine {
  return {
    name: at(name),
    amount: at(amount),
    anchor: name.replaceAll(/[^a-z]+/g, '-'),
    isBought: false,
    isOptional: false,
    instead: [],
    ...more,
  }
}

type Per100g = Partial<Record<Nutrient, number>>

/** A food whose named figures are known to 0.1, and whose other ones nobody published. */
export function food(name: string, per100g: Per100g, more: Partial<Food> = {}): Food {
  const figure = (nutrient: Nutrient): Figure => {
    const value = per100g[nutrient]
    return value === undefined
      ? unknown(name)
      : known(rectangular(value, 0.1, {kind: 'table', subject: `${nutrient} of ${name}`}))
  }
  return {
    id: `usda/${name}`,
    name,
    also: [],
    aisle: 'other',
    from: [],
    traits: new Set(),
    contains: new Set(),
    mayContain: new Set(),
    allergensKnown: true,
    refuseRatio: 0,
    measures: new Map(),
    per100g: figuresOf(figure),
    provenance: {kind: 'table', table: 'USDA SR28', row: name},
    ...more,
  }
}

const nothing: Per100g = {
  energy: 0,
  protein: 0,
  fat: 0,
  saturated: 0,
  carbohydrate: 0,
  availableCarbohydrate: 0,
  fibre: 0,
  sugars: 0,
  salt: 0,
  sodium: 0,
}

export const foods: readonly Food[] = [
  food(
    'chicken thigh, skinless',
    {...nothing, energy: 121, protein: 19.7, fat: 4.1, saturated: 1.1, salt: 0.24, sodium: 95},
    {aisle: 'poultry'},
  ),
  food(
    'pearl barley',
    {
      ...nothing,
      energy: 352,
      protein: 9.9,
      fat: 1.2,
      saturated: 0.2,
      carbohydrate: 77.7,
      availableCarbohydrate: 62.1,
      fibre: 15.6,
      sugars: 0.8,
      salt: 0.02,
      sodium: 9,
    },
    {
      aisle: 'grains',
      contains: new Set(['barley']),
      sold: {grams: 500, price: 1.2},
      provenance: {kind: 'table', table: 'USDA SR28', row: '20005'},
    },
  ),
  food(
    'lemon',
    {
      ...nothing,
      energy: 29,
      protein: 1.1,
      fat: 0.3,
      carbohydrate: 9.3,
      availableCarbohydrate: 6.5,
      fibre: 2.8,
      sugars: 2.5,
    },
    {aisle: 'fruit', refuseRatio: 0.47, measures: new Map([['medium', 58]])},
  ),
  food(
    'butter',
    {...nothing, energy: 717, protein: 0.9, fat: 81.1, saturated: 51.4, salt: 1.6, sodium: 643},
    {
      aisle: 'dairy',
      contains: new Set(['milk']),
      sold: {grams: 250},
    },
  ),
  food(
    'carrot',
    {
      ...nothing,
      energy: 41,
      protein: 0.9,
      fat: 0.2,
      carbohydrate: 9.6,
      availableCarbohydrate: 6.8,
      fibre: 2.8,
      sugars: 4.7,
      salt: 0.17,
      sodium: 69,
    },
    {aisle: 'vegetables', refuseRatio: 0.11},
  ),
  // A packet whose panel says nothing about fibre, and a table that says nothing about allergens.
  food(
    'pepper paste',
    {energy: 90, protein: 3, fat: 1, carbohydrate: 18, salt: 4, sodium: 1600},
    {
      aisle: 'condiments',
      allergensKnown: false,
      provenance: {kind: 'label', file: 'foods.yaml', place},
    },
  ),
  food(
    'parsley',
    {...nothing, energy: 36, protein: 3, fat: 0.8, carbohydrate: 6.3},
    {aisle: 'herbs and spices'},
  ),
  food(
    'wheat flour',
    {...nothing, energy: 364, protein: 10.3, fat: 1, carbohydrate: 76.3},
    {
      aisle: 'baking',
      contains: new Set(['wheat']),
    },
  ),
  food('water', nothing, {id: 'usda/14411'}),
]

function paragraphs(...texts: string[]): Root {
  return {
    type: 'root',
    children: texts.map((value) => ({
      type: 'element',
      tagName: 'p',
      properties: {},
      children: [{type: 'text', value}],
    })),
  }
}

export function method(...texts: string[]): Method {
  return {
    body: {
      type: 'root',
      children: [
        {
          type: 'element',
          tagName: 'ol',
          properties: {},
          children: texts.map((value) => ({
            type: 'element',
            tagName: 'li',
            properties: {},
            children: [{type: 'text', value}],
          })),
        },
      ],
    },
    ingredientLinks: [],
    passages: texts.map((text) => ({kind: 'step', text, place, stretches: [], lineStarts: []})),
    images: [],
    links: [],
  }
}

export function recipe(slug: string, more: Partial<Recipe> = {}): Recipe {
  return {
    slug,
    path: `recipes/${slug}.md`,
    title: at(slug),
    tags: [],
    groups: [],
    claims: [],
    freeFrom: [],
    suits: [],
    accepted: [],
    frontMatter: place,
    frontMatterEnd: place,
    method: method(),
    ...more,
  }
}

const stock = recipe('brown-stock', {
  title: at('Brown stock'),
  summary: at('Roasted carrots and a long simmer.'),
  batch: at(weight(1000)),
  keeps: {fridgeDays: {...at(3), text: '3 days'}, freezerDays: {...at(90), text: '3 months'}},
  groups: [{lines: [line('carrot', weight(500)), line('water', weight(1200))]}],
  method: method('Roast the carrots until their edges darken.', 'Simmer for an hour and strain.'),
})

const pot = recipe('barley-pot', {
  title: at('Barley pot with lemon chicken'),
  summary: at('One pot, four bowls, warm hands.'),
  serves: at(4),
  batch: at(weight(1480)),
  handsOnMinutes: at(20),
  totalMinutes: at(65),
  oven: at('200 °C'),
  pan: at({shape: 'round', acrossMillimetres: 240, text: 'round, 24 cm'}),
  keeps: {fridgeDays: {...at(3), text: '3 days'}},
  tags: [at('one pot'), at('batch cooking')],
  groups: [
    {
      lines: [
        line('chicken thigh, skinless', weight(600)),
        line('pearl barley', weight(180)),
        line('lemon', weight(58, {text: '58 g (1 medium)', beside: count(1, 'medium')}), {
          isBought: true,
        }),
        line('brown stock', weight(900), {recipe: at('brown-stock')}),
        line('parsley', weight(10), {isOptional: true}),
      ],
    },
    {
      title: at('For the paste'),
      lines: [
        line(
          'pepper paste',
          weight(30, {
            beside: {
              kind: 'volume',
              text: '2 tbsp',
              measure: 'tbsp',
              count: measured(2),
              millilitres: measured(30),
            },
          }),
          {
            instead: [{name: at('butter'), amount: at(weight(20))}],
          },
        ),
        line('wheat flour', weight(3), {uncounted: {because: at('dusting, stays on the board')}}),
      ],
    },
  ],
  stated: {
    basis: 'serving',
    place,
    figures: [
      {nutrient: 'energy', value: 395, increment: 1, text: '395 kcal', place},
      {nutrient: 'protein', value: 35, increment: 1, text: '35 g', place},
      {nutrient: 'carbohydrate', value: 47, increment: 1, text: '47 g', place},
      {nutrient: 'fat', value: 7, increment: 1, text: '7 g', place},
      {nutrient: 'fibre', value: 10, increment: 1, text: '10 g', place},
    ],
  },
  comparison: {
    recipe: at('classic-pot'),
    basis: 'serving',
    statements: [{nutrient: 'energy', text: at('20 % less')}],
  },
  method: method(
    'Brown the chicken.',
    'Add barley and stock; simmer for 35 minutes.',
    'Finish with lemon.',
  ),
})

const classic = recipe('classic-pot', {
  title: at('Classic barley pot'),
  serves: at(4),
  groups: [
    {
      lines: [
        line('chicken thigh, skinless', weight(600)),
        line('pearl barley', weight(200)),
        line('butter', weight(60)),
      ],
    },
  ],
  method: method('Fry everything in the butter, then simmer.'),
})

export const settings: Settings = {
  title: 'Sample cookbook',
  description: 'Three dishes, typed in.',
  language: 'en-GB',
  currency: 'EUR',
  scaleGrams: 1,
  rules: 'eu',
  carbohydrate: 'total',
  tolerance: 'household',
  tolerances: new Map(),
  cups: 'metric',
  severities: new Map(),
  checks: [],
  print: {paper: 'A4', cards: 'A6'},
}

export const cookbook: Cookbook = {
  settings,
  foods: {
    lookUp: (name) => foods.find((one) => one.name === name),
    nearest: () => [],
    isRefused: () => false,
    all: () => foods,
    own: foods.filter(({provenance}) => provenance.kind === 'label'),
  },
  recipes: new Map([pot, stock, classic].map((one) => [one.slug, one])),
  plans: [
    {
      slug: 'sunday',
      path: 'plans/sunday.md',
      title: at('Sunday batch'),
      summary: at('Eight bowls for the week.'),
      servings: [
        {recipe: at('barley-pot'), servings: 6},
        {recipe: at('classic-pot'), servings: 2},
      ],
      body: paragraphs('Start the stock first.'),
    },
  ],
  pages: [
    {
      slug: 'about',
      path: 'pages/about.md',
      title: at('About'),
      body: paragraphs('Typed in for the tests.'),
    },
  ],
  images: new Set(),
  refusedRecipes: new Set(),
}

/** What the site is rendered from; `change` replaces settings. */
export function siteInput(change: Partial<Settings> = {}, more: Partial<Cookbook> = {}): SiteInput {
  const changed: Cookbook = {...cookbook, ...more, settings: {...settings, ...change}}
  const {computed, problems} = computeCookbook(changed)
  return {
    cookbook: changed,
    computed,
    problems,
    rules: [
      {
        id: 'stated-macros',
        severity: 'error',
        summary: 'A stated figure follows from the ingredients.',
        why: 'Readers plan by it.',
      },
    ],
    images: [],
    assets: [{path: 'assets/site.css', content: ''}],
  }
}

/** What a template sees of the sample. */
export function sampleSite(change: Partial<Settings> = {}, more: Partial<Cookbook> = {}): Site {
  return siteOf(siteInput(change, more))
}

/** The sample with one more recipe, and that recipe computed. */
export function siteWith(
  one: Recipe,
  change: Partial<Settings> = {},
): {readonly site: Site; readonly computed: Computed} {
  const site = sampleSite(change, {recipes: new Map([...cookbook.recipes, [one.slug, one]])})
  return {site, computed: computedOf(site, one.slug)}
}

export function computedOf(site: Site, slug: string): Computed {
  const computed = site.computed.get(slug)
  if (computed === undefined) throw new Error(`${slug} was not computed`)
  return computed
}
