import {describe, expect, test} from 'vitest'
import {readHead, readLines} from './read-head.ts'

describe('A line is a name with its amount', () => {
  test('alone, or with conditions', () => {
    const {lines, problems} = readLines(`  chicken thigh, skinless: 600 g
  lemon: { amount: 1 medium, bought: true }
  brown stock: { amount: 900 g, recipe: brown-stock }
  white wine: { amount: 120 g, simmered: 1 h 30 min }
  frying oil: { amount: 400 g, eaten: 35 g, because: weighed before and after }
  rice flour: { amount: 3 g, counted: false, because: "dusting, stays on the board" }
  parsley: { amount: 10 g, optional: true }
  flour for the sauce: { amount: 20 g, food: usda/20083 }
  beef mince, 20 % fat: { amount: 500 g, poured off: 45 g }
  whey: { amount: 2 scoops }`)
    expect(problems).toEqual([])
    expect(lines.map(({name}) => name.value)).toEqual([
      'chicken thigh, skinless',
      'lemon',
      'brown stock',
      'white wine',
      'frying oil',
      'rice flour',
      'parsley',
      'flour for the sauce',
      'beef mince, 20 % fat',
      'whey',
    ])
    expect(lines[0]).toMatchObject({
      anchor: 'chicken-thigh-skinless',
      amount: {value: {kind: 'weight', grams: {value: 600}}},
      isBought: false,
      isOptional: false,
      instead: [],
    })
    expect(lines[1]).toMatchObject({isBought: true, amount: {value: {measure: 'medium'}}})
    expect(lines[2]).toMatchObject({recipe: {value: 'brown-stock'}})
    expect(lines[3]).toMatchObject({simmeredMinutes: {value: 90}})
    expect(lines[4]).toMatchObject({
      eaten: {amount: {value: {grams: {value: 35}}}, because: {value: 'weighed before and after'}},
    })
    expect(lines[5]).toMatchObject({uncounted: {because: {value: 'dusting, stays on the board'}}})
    expect(lines[6]).toMatchObject({isOptional: true})
    expect(lines[7]).toMatchObject({food: {value: 'usda/20083'}})
    expect(lines[8]).toMatchObject({
      anchor: 'beef-mince-20-fat',
      pouredOff: {amount: {value: {grams: {value: 45}}}},
    })
    expect(lines[9]).toMatchObject({amount: {value: {kind: 'count', measure: 'scoop'}}})
  })

  test('with alternatives: a name and an amount, or a component, or a food', () => {
    const {lines, problems} = readLines(`  tomato relish:
    amount: 90 g
    recipe: tomato-relish
    instead:
      jarred tomato sauce: 90 g
      quick relish: { amount: 80 g, recipe: quick-relish }
      the paste from the shop: { amount: 30 g, food: usda/11546 }`)
    expect(problems).toEqual([])
    expect(lines[0]?.instead).toMatchObject([
      {name: {value: 'jarred tomato sauce'}, amount: {value: {text: '90 g'}}},
      {name: {value: 'quick relish'}, recipe: {value: 'quick-relish'}},
      {name: {value: 'the paste from the shop'}, food: {value: 'usda/11546'}},
    ])
  })
})

test('What leaves the dish is weighed, or told by the cooked food', () => {
  const {lines, problems} = readLines(`  beef mince: { amount: 500 g, poured off: 45 g }
  kidney beans: { amount: 500 g, poured off: { amount: 300 g, what: liquid } }
  bacon: { amount: 80 g, poured off: { like: "bacon, fried" }, because: the table shows it }
  pork belly: { amount: 1 kg, trimmed: 120 g }
  red wine: { amount: 200 g, cooked: flamed }`)
  expect(problems).toEqual([])
  expect(lines[0]?.pouredOff).toMatchObject({
    kind: 'weighed',
    what: 'fat',
    amount: {value: {text: '45 g'}},
  })
  expect(lines[1]?.pouredOff).toMatchObject({kind: 'weighed', what: 'liquid'})
  expect(lines[2]?.pouredOff).toMatchObject({
    kind: 'like',
    cooked: {value: 'bacon, fried'},
    because: {value: 'the table shows it'},
  })
  expect(lines[3]?.trimmed?.value.grams.value).toBe(120)
  expect(lines[4]?.cooked?.value).toBe('flamed')
})

describe('A mapping without an amount is a group', () => {
  test('with its title; lines before, between and after stand for themselves', () => {
    const {head, problems} = readLines(`  salt: 5 g
  For the dough:
    plain flour: 400 g
    water: 260 g
  butter: 20 g
  For the top:
    cheese: { amount: 80 g, optional: true }`)
    expect(problems).toEqual([])
    expect(
      head?.groups.map(({title, lines}) => [title?.value, ...lines.map(({name}) => name.value)]),
    ).toEqual([
      [undefined, 'salt'],
      ['For the dough', 'plain flour', 'water'],
      [undefined, 'butter'],
      ['For the top', 'cheese'],
    ])
  })

  test('unless its keys show that the amount was forgotten or misspelt', () => {
    expect(readLines('  lemon: { bought: true }').reasons).toEqual([
      '`amount` in `lemon` is missing: how much of it goes in?',
    ])
    expect(readLines('  lemon: { amont: 1 medium }').reasons).toEqual([
      'Unknown key `amont` in `lemon`, expected `amount`',
      '`amount` in `lemon` is missing: how much of it goes in?',
    ])
  })

  test('and a group within a group is none', () => {
    const {reasons} = readLines('  For the dough:\n    For the starter:\n      rye flour: 50 g')
    expect(reasons[0]).toMatch(/^Unknown key `rye flour` in `For the starter`/)
  })
})

describe('Anchors are unique and plain', () => {
  test('of names with accents, signs and other scripts', () => {
    const {lines} = readLines(`  "crème fraîche, 30 %": 1 g
  Grüne Soße: 1 g
  smørrebrød: 1 g
  味噌: 1 g
  豆腐: 1 g
  "&": 1 g`)
    expect(lines.map(({anchor}) => anchor)).toEqual([
      'creme-fraiche-30',
      'grune-sosse',
      'smorrebrod',
      'ingredient',
      'ingredient-2',
      'ingredient-3',
    ])
  })

  test('of one name in two groups', () => {
    const {lines, problems} = readLines(`  butter: 10 g
  For the dough: { butter: 20 g, "butter 2": 1 g }
  For the top: { butter: 30 g }`)
    expect(problems).toEqual([])
    expect(lines.map(({anchor}) => anchor)).toEqual([
      'butter',
      'butter-2',
      'butter-2-2',
      'butter-3',
    ])
  })

  test.each([
    [
      '  butter: 10 g\n  Butter: 20 g',
      '`Butter` is listed twice, expected one line for `butter` in `ingredients`',
      'Butter',
    ],
    ['  butter: 10 g\n  butter: 20 g', '`butter` is given twice, expected once', 'butter'],
    [
      '  For the top: { butter: 1 g, "butter,": 2 g }',
      '`butter,` is listed twice, expected one line for `butter` in `ingredients`',
      '"butter,"',
    ],
  ])('%j is one name twice', (yaml, reason, place) => {
    const {reasons, places, problems} = readLines(yaml)
    expect(reasons).toEqual([reason])
    expect(places).toEqual([place])
    expect(problems[0]?.note).toContain('line')
  })
})

test.each([
  [
    '  flour: 1,5 kg',
    '`flour` in `ingredients` is `1,5 kg`, expected a decimal point: `1.5 kg`',
    '1,5 kg',
  ],
  [
    '  flour: 150 gr',
    '`flour` in `ingredients` is `150 gr`, expected a known unit: `150 g`',
    '150 gr',
  ],
  [
    '  flour:',
    '`flour` in `ingredients` is empty, expected an amount such as `150 g`, or a mapping with its `amount`',
    'flour',
  ],
  [
    '  flour: [150 g]',
    '`flour` in `ingredients` is a list, expected an amount such as `150 g`, or a mapping with its `amount`',
    '150 g',
  ],
  [
    '  flour: .nan',
    '`flour` in `ingredients` is `.nan`, expected a number first, in digits',
    '.nan',
  ],
  ['  flour: -5 g', '`flour` in `ingredients` is `-5 g`, expected a number without a sign', '-5 g'],
  [
    '  flour: .inf g',
    '`flour` in `ingredients` is `.inf g`, expected a number first, in digits',
    '.inf g',
  ],
  [
    '  flour: { amount: 3 g, counted: false }',
    '`because` in `flour` is missing: why is the line not counted?',
    'false',
  ],
  [
    '  flour: { amount: 3 g, because: x }',
    '`because` in `flour` in `ingredients` explains nothing, expected it beside `counted: false`, `eaten` or `poured off`',
    'x',
  ],
  [
    '  oil: { amount: 30 g, eaten: 35 g }',
    '`oil` in `ingredients` has a part of `35 g`, expected at most its `30 g`',
    '35 g',
  ],
  [
    '  mince: { amount: 500 g, poured off: 1 kg }',
    '`mince` in `ingredients` has a part of `1 kg`, expected at most its `500 g`',
    '1 kg',
  ],
  [
    '  oil: { amount: 30 g, eaten: 2 tbsp }',
    '`eaten` in `oil` is `2 tbsp`, expected a weight such as `150 g`',
    '2 tbsp',
  ],
  [
    '  stock: { amount: 3 g, recipe: a, food: b }',
    '`stock` in `ingredients` names a recipe and a food, expected one of them',
    'b',
  ],
  [
    '  wine: { amount: 3 g, simmered: long }',
    '`simmered` in `wine` is `long`, expected a time such as `20 min`, `1 h 30 min` or `3 days`',
    'long',
  ],
  [
    '  lemon: { amount: 1 medium, bought: yes }',
    '`bought` in `lemon` is `yes`, expected `true` or `false`',
    'yes',
  ],
  [
    '  relish: { amount: 9 g, instead: sauce }',
    '`instead` in `relish` is `sauce`, expected alternatives such as `{ jarred tomato sauce: 90 g }`',
    'sauce',
  ],
  [
    '  relish: { amount: 9 g, instead: { sauce: some } }',
    '`sauce` in `instead` is `some`, expected a number first, in digits',
    'some',
  ],
  [
    '  relish: { amount: 9 g, poured of: 1 g }',
    'Unknown key `poured of` in `relish`, expected `poured off`',
    'poured of',
  ],
  [
    '  mince: { amount: 500 g, poured off: { what: fat } }',
    '`poured off` in `mince` has to say one thing, expected an `amount` or `like`',
    '{ what: fat }',
  ],
  [
    '  mince: { amount: 500 g, poured off: { amount: 9 g, like: x } }',
    '`poured off` in `mince` has to say one thing, expected an `amount` or `like`',
    '{ amount: 9 g, like: x }',
  ],
  [
    '  belly: { amount: 1 kg, trimmed: 1200 g }',
    '`belly` in `ingredients` has a part of `1200 g`, expected at most its `1 kg`',
    '1200 g',
  ],
  [
    '  relish: { amount: 9 g, instead: { sauce: { amount: 9 g, recipe: a, food: b } } }',
    '`sauce` in `instead` names a recipe and a food, expected one of them',
    'b',
  ],
  [
    '  For the top: {}',
    '`For the top` in `ingredients` is empty, expected ingredients with their amounts',
    '{}',
  ],
])('%j is refused at its place', (yaml, reason, place) => {
  const {reasons, places} = readLines(yaml)
  expect(reasons).toEqual([reason])
  expect(places).toEqual([place])
})

test('A list of ingredients, or none, is refused with the form to write', () => {
  const form = 'expected ingredients with their amounts, such as `pearl barley: 180 g`'
  expect(readHead('title: x\nserves: 1\ningredients: [salt]').reasons).toEqual([
    `\`ingredients\` is a list, ${form}`,
  ])
  expect(readHead('title: x\nserves: 1\ningredients: {}').reasons).toEqual([
    `\`ingredients\` is empty, ${form}`,
  ])
})

test('A thousand lines pass, one more is refused, ten thousand are refused with one message', () => {
  const lines = (count: number) =>
    Array.from({length: count}, (_, index) => `  food ${index}: 1 g`).join('\n')
  expect(readLines(lines(1000)).lines).toHaveLength(1000)
  expect(readLines(lines(1001)).reasons).toEqual([
    '`ingredients` has `1001` lines, expected `1000` at most',
  ])
  expect(readLines(lines(10_000)).reasons).toHaveLength(1)
})
