import {expect, test} from 'vitest'
import type {Allergen} from '../../src/food/food.ts'
import {coreRows} from './core-rows.ts'

interface Sign {
  readonly allergen: Allergen
  /** Words of a name or description that give the allergen away. */
  readonly says: RegExp
  /** Words that only look like it (common practice, no source): peanut butter is not milk. */
  readonly misleads: RegExp
}

const nothing = /^$/g

const signs: readonly Sign[] = [
  {
    allergen: 'milk',
    says: /milk|butter|cheese|cream|yogh?urt|whey|casein|kefir|ghee|quark|custard/,
    misleads:
      /(?:almond|rice|soya?|coconut|oat|hemp) ?milk|soymilk|without milk|creamed|cream style|coconut cream|cream of tartar|(?:peanut|almond|cashew|sunflower seed|sesame|fruit|apple|cocoa|nut)s? butter|fruit butters|butter ?beans|butternut|butterhead|bread and butter|butterfish|without milk|non-?dairy|-like|butter-type/g,
  },
  {
    allergen: 'egg',
    says: /\beggs?\b|mayonnaise|meringue|hollandaise/,
    misleads: /eggplant|egg ?less|made with tofu|egg-free|without egg/g,
  },
  {
    allergen: 'fish',
    says: /\bfish\b|anchov|salmon|\btuna|\bcod\b|worcestershire/,
    misleads: nothing,
  },
  {
    allergen: 'crustacean',
    says: /shrimp|prawn|\bcrabs?\b|lobster|crayfish/,
    misleads: /crabapple|imitation/g,
  },
  {
    allergen: 'mollusc',
    says: /oyster|clams?\b|mussel|squid|scallops?\b|octopus/,
    misleads: /oyster mushroom|mushrooms, oyster|oyster cracker|includes oyster|scalloped/g,
  },
  {allergen: 'peanut', says: /peanut/, misleads: nothing},
  {allergen: 'almond', says: /almond|marzipan/, misleads: nothing},
  {allergen: 'hazelnut', says: /hazelnut|filbert/, misleads: nothing},
  {allergen: 'walnut', says: /walnut/, misleads: nothing},
  {allergen: 'cashew', says: /cashew/, misleads: nothing},
  {allergen: 'pecan', says: /pecan/, misleads: nothing},
  {allergen: 'pistachio', says: /pistachio/, misleads: nothing},
  {allergen: 'macadamia', says: /macadamia/, misleads: nothing},
  {allergen: 'brazil nut', says: /brazil ?nut/, misleads: nothing},
  {allergen: 'pine nut', says: /pine nut|pesto/, misleads: nothing},
  {
    allergen: 'sesame',
    says: /sesame|tahini|hummus|halva/,
    misleads: /includes onion, poppy, sesame/g,
  },
  {
    allergen: 'soy',
    says: /\bsoya?\b|tofu|tempeh|\bmiso\b|edamame|natto|tamari\b/,
    misleads: nothing,
  },
  {allergen: 'mustard', says: /mustard|dijon/, misleads: nothing},
  {allergen: 'celery', says: /celery|celeriac/, misleads: nothing},
  {
    allergen: 'wheat',
    says: /wheat|\bbread|pasta\b|spaghetti|macaroni|couscous|bulgur|semolina|seitan|spelt|farro/,
    misleads:
      /buckwheat|gluten-free.*|.*gluten-free|not breaded|pasta sauce|sauce, pasta, spaghetti|spaghetti squash|squash, winter, spaghetti|bread and butter|rice flour|soy \(tamari\)|breadfruit|shortbread|sweetbread/g,
  },
  {allergen: 'rye', says: /\brye\b/, misleads: nothing},
  {
    allergen: 'barley',
    says: /barley|\bbeer\b|\bmalt\b/,
    misleads: /ginger beer|root beer|beerwurst/g,
  },
  {allergen: 'oats', says: /\boats?\b|oatmeal/, misleads: nothing},
]

/** Rows whose words do mislead, with the reason. */
const exceptions: ReadonlyMap<string, string> = new Map([
  ['42178', 'mayonnaise made with tofu in place of egg'],
  ['04044', 'fully refined soya oil is exempt: EU 1169/2011 Annex II; US FALCPA (2004)'],
])

test.each(signs)('Whatever is called after $allergen contains it', ({allergen, says, misleads}) => {
  const missing = coreRows.filter(({row}) => {
    const words = [row.name, row.description].map((text) => text.toLowerCase())
    const isCalled = words.some((text) => says.test(text.replaceAll(misleads, '')))
    return isCalled && !row.contains.includes(allergen) && !exceptions.has(row.ndb)
  })
  expect(missing.map(({row}) => `${row.ndb} ${row.name} (${row.description})`)).toEqual([])
})

test('What is made from an animal says so', () => {
  const pairs = [
    ['dairy', 'milk'],
    ['egg', 'egg'],
    ['fish', 'fish'],
    ['crustacean', 'crustacean'],
    ['mollusc', 'mollusc'],
  ] as const
  const untold = coreRows.filter(({row}) =>
    pairs.some(
      ([origin, allergen]) => row.from.includes(origin) && !row.contains.includes(allergen),
    ),
  )
  expect(untold.map(({row}) => `${row.ndb} ${row.name}: ${row.from}`)).toEqual([])
  const unsaid = coreRows.filter(({row}) =>
    pairs.some(
      ([origin, allergen]) => row.contains.includes(allergen) && !row.from.includes(origin),
    ),
  )
  expect(unsaid.map(({row}) => `${row.ndb} ${row.name}: ${row.contains} from ${row.from}`)).toEqual(
    [],
  )
})
