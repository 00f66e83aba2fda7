import {describe, expect, test} from 'vitest'
import {recipeReader} from '../../src/cookbook/recipe-fields.ts'
import {readHead} from './read-head.ts'

const minimal = 'title: Pot\nserves: 4\ningredients: { barley: 180 g }'

const full = `title: Barley pot with lemon chicken
summary: One pot, four bowls.
serves: 4
yield: 1480 g                 # finished batch, weighed
portion: 370 g
time: { hands-on: 20 min, total: 65 min }
oven: 200 °C
pan: { round: 24 cm, depth: 7 cm }
keeps: { fridge: 3 days, freezer: 3 months }
tags: [one pot, batch cooking]
image: { file: barley pot.jpg, alt: A bowl of barley }
ingredients:
  pearl barley: 180 g
stated: { energy: 455 kcal, protein: 38 g, carbohydrate: 42 g, fat: 14.0 g }
claims: [high protein, source of fibre]
free from: [milk, egg]
suits: [high-protein]
compared with: { recipe: classic-barley-pot, energy: 40 % less }
accepted: { stated-energy: weighed twice, differs as the label does }`

test('Every key of a recipe is read', () => {
  const {head, problems, text} = readHead(full.replace(', differs', ' and differs'))
  expect(problems).toEqual([])
  expect(head).toMatchObject({
    title: {value: 'Barley pot with lemon chicken'},
    summary: {value: 'One pot, four bowls.'},
    serves: {value: 4},
    batch: {value: {kind: 'weight', grams: {value: 1480}}},
    portion: {value: {grams: {value: 370}}},
    handsOnMinutes: {value: 20},
    totalMinutes: {value: 65},
    oven: {value: '200 °C'},
    pan: {
      value: {
        shape: 'round',
        acrossMillimetres: 240,
        depthMillimetres: 70,
        text: '24 cm, 7 cm deep',
      },
    },
    keeps: {fridgeDays: {value: 3}, freezerDays: {value: 90}},
    tags: [{value: 'one pot'}, {value: 'batch cooking'}],
    image: {value: {path: 'barley pot.jpg', alt: 'A bowl of barley'}},
    groups: [{lines: [{name: {value: 'pearl barley'}, anchor: 'pearl-barley'}]}],
    stated: {
      basis: 'serving',
      figures: [
        {nutrient: 'energy', value: 455, increment: 1, text: '455 kcal'},
        {nutrient: 'protein', value: 38},
        {nutrient: 'carbohydrate', value: 42},
        {nutrient: 'fat', value: 14, increment: 0.1, text: '14.0 g'},
      ],
    },
    claims: [{value: 'high protein'}, {value: 'source of fibre'}],
    freeFrom: [{value: 'milk'}, {value: 'egg'}],
    suits: [{value: 'high-protein'}],
    comparison: {
      recipe: {value: 'classic-barley-pot'},
      basis: 'serving',
      statements: [{nutrient: 'energy', text: {value: '40 % less'}}],
    },
    accepted: [
      {
        ruleId: {value: 'stated-energy'},
        because: {value: 'weighed twice and differs as the label does'},
      },
    ],
  })
  const place = head?.stated?.figures[1]?.place
  expect(text.slice(place?.start.offset, place?.end.offset)).toBe('38 g')
  expect(place?.start).toMatchObject({line: 15, column: 38})
  expect(head?.frontMatter.start).toMatchObject({line: 2, column: 1})
})

test('What is not written is absent, not empty', () => {
  const {head} = readHead(minimal)
  expect(Object.keys(head ?? {}).toSorted()).toEqual([
    'accepted',
    'claims',
    'freeFrom',
    'frontMatter',
    'frontMatterEnd',
    'groups',
    'serves',
    'suits',
    'tags',
    'title',
  ])
})

describe('Stated figures', () => {
  test('come in the unit of the nutrient, whatever unit was written', () => {
    const {head} = readHead(`${minimal}\nstated: { energy: 1900 kJ, salt: 650 mg, sodium: 0.26 g }`)
    const [energy, salt, sodium] = head?.stated?.figures ?? []
    // 4.184 kJ a kcal: thermochemical calorie, NIST SP 811 (2008), Appendix B.8.
    expect(energy?.value).toBeCloseTo(1900 / 4.184, 9)
    expect(energy?.increment).toBeCloseTo(1 / 4.184, 9)
    expect(energy?.text).toBe('1900 kJ')
    expect(salt?.value).toBeCloseTo(0.65, 9)
    expect(sodium?.value).toBeCloseTo(260, 9)
  })

  test('that are less than something lie in the middle of what they may be', () => {
    const {head} = readHead(`${minimal}\nstated: { fat: "< 0.5 g" }`)
    expect(head?.stated?.figures[0]).toMatchObject({value: 0.25, increment: 0.5, text: '< 0.5 g'})
  })

  test.each(['serving', '100 g', 'batch'])('may be per %s', (per) => {
    expect(readHead(`${minimal}\nstated: { per: ${per}, fat: 3 g }`).head?.stated?.basis).toBe(per)
  })

  test('of a component that serves nobody say what they are per', () => {
    const component = 'title: Stock\nyield: 900 g\ningredients: { onion: 180 g }'
    expect(readHead(component).problems).toEqual([])
    expect(readHead(`${component}\nstated: { per: 100 g, fat: 3 g }`).problems).toEqual([])
    expect(readHead(`${component}\nstated: { fat: 3 g }`).reasons).toEqual([
      '`per` in `stated` is missing: are the figures per `100 g` or per `batch`? Without `serves` nothing is per serving',
    ])
  })
})

describe('Servings', () => {
  test('are asked for where the batch is not weighed', () => {
    const {reasons, places} = readHead('title: Pot\ningredients: { barley: 180 g }')
    expect(reasons).toEqual(['`serves` is missing: how many portions does the batch give?'])
    expect(places).toEqual(['title'])
  })

  test('that cannot be read are not called missing as well', () => {
    const {reasons} = readHead('title: Pot\nserves: four\ningredients: { barley: 180 g }')
    expect(reasons).toEqual(['`serves` is `four`, expected a whole number from `1` to `10000`'])
  })

  test('are at most ten thousand, and so are pieces', () => {
    for (const key of ['serves', 'pieces']) {
      const head = (count: number) =>
        `${minimal.replace('serves: 4', key === 'serves' ? '' : 'serves: 4')}\n${key}: ${count}`
      expect(readHead(head(10_000)).reasons).toEqual([])
      expect(readHead(head(10_001)).reasons).toEqual([
        `\`${key}\` is \`10001\`, expected a whole number from \`1\` to \`10000\``,
      ])
    }
  })
})

test.each([
  ['pieces: 8', {kind: 'count', count: 8}],
  ['piece: 95 g', {kind: 'weight', gramsEach: 95}],
])('A dough is divided: %s', (written, value) => {
  const {head, problems} = readHead(`${minimal}\n${written}`)
  expect(problems).toEqual([])
  expect(head?.pieces).toMatchObject({value})
})

test.each([
  ['serves: 4,5', '`serves` is `4,5`, expected a whole number from `1` to `10000`', '4,5'],
  ['yield: 2 cups', '`yield` is `2 cups`, expected a weight such as `150 g`', '2 cups'],
  ['yield: 600', '`yield` is `600`, expected a unit: `600 g`', '600'],
  ['servings: 6', 'Unknown key `servings`, expected `serves`', 'servings'],
  [
    'stated: { calories: 300 kcal }',
    'Unknown key `calories` in `stated`, expected `energy`',
    'calories',
  ],
  ['stated: { carbs: 30 g }', 'Unknown key `carbs` in `stated`, expected `carbohydrate`', 'carbs'],
  ['yield: 1,48 kg', '`yield` is `1,48 kg`, expected a decimal point: `1.48 kg`', '1,48 kg'],
  [
    'time: 20 min',
    '`time` is `20 min`, expected times such as `{ hands-on: 20 min, total: 65 min }`',
    '20 min',
  ],
  [
    'time: { total: soon }',
    '`total` in `time` is `soon`, expected a time such as `20 min`, `1 h 30 min` or `3 days`',
    'soon',
  ],
  [
    'time: { cooking: 20 min }',
    'Unknown key `cooking` in `time`, expected one of `hands-on`, `total`',
    'cooking',
  ],
  ['keeps: { frige: 3 days }', 'Unknown key `frige` in `keeps`, expected `fridge`', 'frige'],
  [
    'keeps: {}',
    '`keeps` is empty, expected times such as `{ fridge: 3 days, freezer: 3 months }`',
    '{}',
  ],
  [
    'pan: 24 cm',
    '`pan` is `24 cm`, expected a tin such as `{ round: 24 cm, depth: 7 cm }`',
    '24 cm',
  ],
  [
    'pan: { depth: 7 cm }',
    '`pan` has no shape, expected one of `round`, `square`, `rectangle`, `ring`',
    '{ depth: 7 cm }',
  ],
  [
    'pan: { round: 24 cm, square: 20 cm }',
    '`pan` has more than one shape, expected one of `round`, `square`, `rectangle`, `ring`',
    '20 cm',
  ],
  [
    'pan: { round: 24 cm, tube: 8 cm }',
    '`pan` has a `tube` without a `ring`, expected both or neither',
    '8 cm',
  ],
  [
    'pan: { round: 24 }',
    '`round` in `pan` is `24`, expected a length such as `24 cm` or `9 in`',
    '24',
  ],
  ['pieces: 0', '`pieces` is `0`, expected a whole number from `1` to `10000`', '0'],
  ['piece: 1 roll', '`piece` is `1 roll`, expected a weight such as `150 g`', '1 roll'],
  [
    'pieces: 8\npiece: 95 g',
    'The front matter has `pieces` and `piece`, expected one of them',
    '95 g',
  ],
  ['tags: soup', '`tags` is `soup`, expected a list such as `[one pot, batch cooking]`', 'soup'],
  [
    'image: { file: ../secret.jpg, alt: x }',
    '`file` in `image` is `../secret.jpg`, expected the name of a picture in images/ such as `barley-pot.jpg`',
    '../secret.jpg',
  ],
  [
    'image: { file: "https://example.org/x.jpg", alt: x }',
    '`file` in `image` is `https://example.org/x.jpg`, expected the name of a picture in images/ such as `barley-pot.jpg`',
    '"https://example.org/x.jpg"',
  ],
  ['image: { file: x.jpg }', '`alt` in `image` is missing: what does it show?', 'file'],
  ['stated: { energy: 455 }', '`energy` in `stated` is `455`, expected a unit: `455 kcal`', '455'],
  ['stated: { protien: 38 g }', 'Unknown key `protien` in `stated`, expected `protein`', 'protien'],
  ['stated: { fiber: 8 g }', 'Unknown key `fiber` in `stated`, expected `fibre`', 'fiber'],
  [
    'stated: { per: bowl, fat: 3 g }',
    '`per` in `stated` is `bowl`, expected one of `serving`, `100 g`, `batch`',
    'bowl',
  ],
  [
    'stated: { protein: .nan }',
    '`protein` in `stated` is `.nan`, expected a number first, in digits',
    '.nan',
  ],
  [
    'compared with: { energy: 40 % less }',
    '`compared with` names nothing, expected either `recipe` or `food`',
    '{ energy: 40 % less }',
  ],
  [
    'compared with: { recipe: a, food: b }',
    '`compared with` names a recipe and a food, expected either `recipe` or `food`',
    'b',
  ],
  [
    'accepted: [stated-energy]',
    '`accepted` is a list, expected rule ids with a reason each',
    'stated-energy',
  ],
  ['author: me', 'Unknown key `author`, expected one of', 'author'],
  ['free-from: [milk]', 'Unknown key `free-from`, expected `free from`', 'free-from'],
])('%s is refused at its place', (line, reason, place) => {
  const base = /^(?:serves|yield)/.test(line)
    ? 'title: Pot\ningredients: { barley: 180 g }'
    : minimal
  const {reasons, places} = readHead(`${base}\n${line}`)
  expect(reasons).toHaveLength(1)
  expect(reasons[0]?.startsWith(reason)).toBe(true)
  expect(places).toEqual([place])
})

describe('A batch that was not weighed', () => {
  const component = 'title: x\nserves: 2\ningredients: { barley: 180 g }'

  test.each([
    ['0.73', {kind: 'ratio', ratio: 0.73, increment: 0.01}],
    ['2', {kind: 'ratio', ratio: 2, increment: 1}],
    [
      'chicken breast, skinless, grilled',
      {kind: 'like', cooked: 'chicken breast, skinless, grilled'},
    ],
  ])('is told by its yield factor %s', (factor, expected) => {
    const {head} = readHead(`${component}\nyield factor: ${factor}`)
    expect(head?.yieldFactor?.value).toEqual(expected)
  })

  test.each(['0', '-1', '0,73', '73 %', '1e3', '.inf', '0.7-0.8', '500'])(
    'is not told by %s',
    (factor) => {
      const {problems, places} = readHead(`${component}\nyield factor: ${factor}`)
      expect(problems).toHaveLength(1)
      expect(places).toEqual([factor])
    },
  )

  test('and what stays in the pot is weighed', () => {
    expect(readHead(`${component}\nleft behind: 30 g`).head?.leftBehind?.value.text).toBe('30 g')
  })
})

describe('Tins', () => {
  test.each([
    ['{ square: 20 cm }', {shape: 'square', acrossMillimetres: 200, text: '20 cm'}],
    [
      '{ rectangle: 23 x 33 cm }',
      {shape: 'rectangle', acrossMillimetres: 330, secondMillimetres: 230, text: '23 x 33 cm'},
    ],
    [
      '{ ring: 24 cm, tube: 8 cm }',
      {shape: 'ring', acrossMillimetres: 240, secondMillimetres: 80, text: '24 cm'},
    ],
  ])('%s', (yaml, pan) => {
    expect(readHead(`${minimal}\npan: ${yaml}`).head?.pan?.value).toEqual(pan)
  })
})

test('A file without front matter is told to open with it', () => {
  const {reasons} = readHead('')
  expect(reasons).toEqual([
    '`title` is missing: what is the dish called?',
    '`ingredients` is missing: what goes in, and how much?',
  ])
})

test('The same definition describes every key to an editor', () => {
  const {schema} = recipeReader({cups: 'us', measures: new Set()})
  const described = Object.entries(schema.properties ?? {})
  expect(described.map(([key]) => key)).toContain('compared with')
  for (const [key, {description}] of described)
    expect([key, description?.length]).not.toEqual([key, 0])
  expect(schema.required).toEqual(['title', 'ingredients'])
  expect(schema.properties?.stated?.properties?.['added sugars']).toMatchObject({
    description: 'Added sugars, in g',
    examples: ['38 g'],
  })
})
