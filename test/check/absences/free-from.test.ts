import {describe, expect, test} from 'vitest'
import {findingsIn, pointedAt} from '../check-text.ts'

const method = 'Stir.'

function found(ingredients: readonly string[], front: readonly string[]) {
  const dish = {ingredients, front, method, foods}
  const ours = new Set(['free-from', 'suits-diet', 'choices-fit'])
  return findingsIn(dish)
    .filter(({ruleId}) => ours.has(ruleId))
    .map((problem) => ({...problem, at: pointedAt(dish, problem)}))
}

// Packets as foods.yaml has them; the panel does not matter here.
const label =
  '{ per: 100 g, energy: 50 kcal, fat: 1 g, carbohydrate: 5 g, protein: 5 g, salt: 1 g }'
const foods = [
  `mystery paste: { label: ${label} }`,
  `traced bar: { label: ${label}, contains: [], may contain: [peanut, soy], made from: [plant] }`,
  `clean bar: { label: ${label}, contains: [], made from: [plant] }`,
].join('\n')

describe('free-from', () => {
  test('names the food and the line that bring it', () => {
    expect(found(['"feta": 30 g'], ['free from: [egg, milk]'])).toMatchObject([
      {
        ruleId: 'free-from',
        severity: 'error',
        at: 'milk',
        reason: 'Free from `milk` contradicted by `feta`, expected nothing that speaks against it',
        actual: 'milk',
        note: expect.stringContaining('feta contains milk.'),
      },
    ])
  })

  test('looks into lines left uncounted: flour for dusting is on the crust', () => {
    const dusted = ['plain flour: { amount: 3 g, counted: false, because: dusting }']
    expect(found(dusted, ['free from: [wheat]'])).toMatchObject([{at: 'wheat'}])
  })

  test('does not pass on a food nobody has stated', () => {
    expect(found(['mystery paste: 10 g'], ['free from: [milk]'])).toMatchObject([
      {
        reason: expect.stringContaining('cannot be told, expected `contains` of `mystery paste`'),
      },
    ])
    expect(found(['clean bar: 10 g'], ['free from: [milk]'])).toEqual([])
  })

  test('does not pass on a packet that warns of traces', () => {
    expect(found(['traced bar: 10 g'], ['free from: [soy]'])).toMatchObject([
      {note: expect.stringContaining('traced bar may contain soy.')},
    ])
    expect(found(['traced bar: 10 g'], ['free from: [milk]'])).toEqual([])
  })

  // FDA, Questions and Answers on food allergens, edition 5 (January 2025): the twelve tree nuts
  // that remain; coconut, chestnut and others are no longer among them. Regulation (EU) 1169/2011
  // Annex II point 8 never had them. The rest is common practice, no source.
  test.each([
    'nutmeg',
    'coconut oil',
    'coconut milk',
    'butternut squash',
    'buckwheat flour',
    'cocoa butter',
    'cream of tartar',
    'aubergine',
  ])('%s only sounds like an allergen', (name) => {
    const words = 'free from: [milk, egg, wheat, tree nuts, peanut, soy]'
    expect(found([`"${name}": 10 g`], [words])).toEqual([])
  })

  test.each([
    ['pine nuts', 'tree nuts'],
    ['peanut butter', 'nuts'],
    ['tahini', 'sesame'],
    ['soy sauce', 'wheat'],
    ['beer', 'barley'],
    ['mussels', 'shellfish'],
    ['prawns', 'shellfish'],
    ['ghee', 'dairy'],
    ['couscous', 'wheat'],
    ['white wine', 'sulphites'],
  ])('%s is not free from %s', (name, word) => {
    expect(found([`"${name}": 10 g`], [`free from: [${word}]`])).toMatchObject([{at: word}])
  })

  test.each([
    ['gluten', 'suits: [gluten-free ingredients]'],
    ['lactose', 'milk'],
    ['mlik', 'milk'],
  ])('%s cannot be checked, and what can is said', (word, expected) => {
    expect(found(['carrot: 10 g'], [`free from: [${word}]`])).toMatchObject([
      {reason: expect.stringContaining('cannot be checked'), expected: [expected]},
    ])
  })
})

describe('free-from through components', () => {
  const relish = [
    '---',
    'title: Relish',
    'yield: 100 g',
    'ingredients:',
    '  tomato: 100 g',
    '  "worcestershire sauce": 5 g',
    '---',
    '',
    'Stir.',
    '',
  ].join('\n')

  test('names the component a food comes through', () => {
    const dish = {
      ingredients: ['relish: { amount: 50 g, recipe: relish }'],
      front: ['free from: [fish]'],
      method: 'Stir the [relish](#relish).',
      others: {relish},
    }
    expect(findingsIn(dish)).toMatchObject([
      {reason: expect.stringContaining('`worcestershire sauce` in `Relish`')},
    ])
  })
})

describe('suits-diet', () => {
  test.each([
    ['vegetarian', 'carrot'],
    ['vegetarian', 'feta'],
    ['vegetarian', 'honey'],
    ['vegan', 'tofu'],
    ['pescatarian', 'cod'],
    ['pork-free', 'beef mince, 20 % fat'],
    ['beef-free', 'chicken thigh, skinless'],
    ['alcohol-free', 'red wine vinegar'],
    ['gluten-free ingredients', 'buckwheat flour'],
  ])('%s: %s', (diet, name) => {
    expect(found([`"${name}": 10 g`], [`suits: [${diet}]`])).toEqual([])
  })

  test.each([
    ['vegetarian', 'gelatine powder'],
    ['vegetarian', 'worcestershire sauce'],
    ['vegetarian', 'chicken stock'],
    ['vegetarian', 'lard'],
    ['vegetarian', 'marshmallows'],
    ['vegan', 'honey'],
    ['vegan', 'egg'],
    ['vegan', 'ghee'],
    ['vegan', 'mayonnaise'],
    ['pescatarian', 'streaky bacon'],
    ['pork-free', 'lard'],
    ['pork-free', 'gelatine powder'],
    ['beef-free', 'salami, dry'],
    ['alcohol-free', 'vanilla extract'],
    ['alcohol-free', 'white wine'],
    ['gluten-free ingredients', 'soy sauce'],
    ['gluten-free ingredients', 'rolled oats'],
    ['gluten-free ingredients', 'beer'],
  ])('%s: not with %s', (diet, name) => {
    expect(found([`"${name}": 10 g`], [`suits: [${diet}]`])).toMatchObject([
      {ruleId: 'suits-diet', severity: 'error', at: diet},
    ])
  })

  test('does not pass on a food whose origin nobody has stated', () => {
    expect(found(['mystery paste: 10 g'], ['suits: [vegetarian]'])).toMatchObject([
      {
        reason:
          'Suits `vegetarian` cannot be told, expected `made from` of `mystery paste` in foods.yaml',
      },
    ])
  })

  test('wine that simmered is still wine', () => {
    const wine = ['white wine: { amount: 100 g, simmered: 150 min }']
    expect(found(wine, ['suits: [alcohol-free]'])).toHaveLength(1)
  })

  test.each([
    ['gluten-free', ['gluten-free ingredients']],
    ['halal', []],
    ['diabetic', []],
    ['vegetrian', ['vegetarian']],
    ['dairy-free', ['free from']],
  ])('%s cannot be checked', (word, expected) => {
    expect(found(['carrot: 10 g'], [`suits: [${word}]`])).toMatchObject([
      {reason: expect.stringContaining('cannot be checked'), expected},
    ])
  })
})

describe('choices-fit', () => {
  test('an optional line is told apart from the dish', () => {
    const line = ['feta: { amount: 30 g, optional: true }', 'carrot: 100 g']
    expect(found(line, ['free from: [milk]', 'suits: [vegan]'])).toMatchObject([
      {
        ruleId: 'choices-fit',
        severity: 'warning',
        reason:
          'Free from `milk` no longer holds with the optional `feta`, expected a choice that keeps it',
      },
      {ruleId: 'choices-fit', at: 'vegan'},
    ])
  })

  test('so is an alternative', () => {
    const line = ['tofu: { amount: 100 g, instead: { feta: 100 g } }']
    expect(found(line, ['free from: [milk]'])).toMatchObject([
      {reason: expect.stringContaining('with the alternative `feta`')},
    ])
    expect(found(line, ['free from: [egg]'])).toEqual([])
  })

  test('what the dish holds anyway is one finding, not two', () => {
    const lines = ['feta: 10 g', 'second feta: { amount: 30 g, food: feta, optional: true }']
    expect(found(lines, ['free from: [milk]']).map(({ruleId}) => ruleId)).toEqual(['free-from'])
  })
})
