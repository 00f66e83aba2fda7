import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import type {Amount} from '../../src/units/amount.ts'
import {formatAmount} from '../../src/units/format-amount.ts'
import {type Kitchen, parseAmount, parseWeight} from '../../src/units/parse-amount.ts'

const kitchen: Kitchen = {cups: 'us', measures: new Set(['ladle'])}

function amount(text: string, cups: Kitchen['cups'] = 'us'): Amount {
  const result = parseAmount(text, {...kitchen, cups})
  if (!result.ok) throw new Error(`${text}: expected ${result.expected}`)
  return result.value
}

function refusal(text: string) {
  const result = parseAmount(text, kitchen)
  if (result.ok) throw new Error(`${text} was taken as ${JSON.stringify(result.value)}`)
  return result
}

describe('Weights are grams, with the last digit that was written', () => {
  test.each([
    ['150 g', 150, 1],
    ['150g', 150, 1],
    ['13.5 g', 13.5, 0.1],
    ['12.50 g', 12.5, 0.01],
    ['1.2 kg', 1200, 100],
    ['2 kilos', 2000, 1000],
    ['500 mg', 0.5, 0.001],
    ['1 lb', 453.59237, 453.59237],
    ['1 1/2 lb', 680.388555, 226.796185],
    ['1½ lb', 680.388555, 226.796185],
    ['1 ½ lb', 680.388555, 226.796185],
    ['1 1⁄2 lb', 680.388555, 226.796185],
    ['8 OZ.', 226.796185, 28.349523125],
    ['2/4 lb', 226.796185, 226.796185],
  ])('%s', (text, grams, increment) => {
    const read = amount(text)
    expect(read.kind).toBe('weight')
    if (read.kind !== 'weight') return
    expect(read.grams.value).toBeCloseTo(grams, 9)
    expect(read.grams.increment).toBeCloseTo(increment, 9)
    expect(read.grams.halfRange).toBe(0)
    expect(read.text).toBe(text)
  })
})

test.each(['10-12 g', '10–12 g', '10 - 12 g', '10—12 g'])(
  '%s is a range around its middle',
  (text) => {
    expect(amount(text)).toEqual({
      kind: 'weight',
      text,
      grams: {value: 11, halfRange: 1, increment: 1},
    })
  },
)

test('A range may mix whole numbers and fractions', () => {
  expect(amount('½-1 cup')).toMatchObject({count: {value: 0.75, halfRange: 0.25, increment: 0.5}})
})

describe('Volumes keep the measure, so that a food can give its own weight for it', () => {
  test.each([
    ['½ cup', 'cup', 0.5, 118.29411825],
    ['1 tbsp', 'tbsp', 1, 14.78676478125],
    ['2 Tablespoons', 'tbsp', 2, 29.5735295625],
    ['1/4 tsp', 'tsp', 0.25, 1.2322303984375],
    ['120 ml', 'ml', 120, 120],
    ['1.5 litres', 'l', 1.5, 1500],
    ['4 fl oz', 'fl oz', 4, 118.29411825],
    ['1 pint', 'pint', 1, 473.176473],
  ])('%s', (text, measure, count, millilitres) => {
    const read = amount(text)
    expect(read).toMatchObject({kind: 'volume', measure, count: {value: count}})
    if (read.kind === 'volume') expect(read.millilitres.value).toBeCloseTo(millilitres, 9)
  })

  test('A cup is what the cookbook says it is', () => {
    const cups = (['us', 'metric', 'imperial'] as const).map((system) => amount('1 cup', system))
    expect(cups.map((cup) => cup.kind === 'volume' && cup.millilitres.value)).toEqual([
      236.5882365, 250, 284.130625,
    ])
  })
})

describe('Counts are in the measures cooks count in', () => {
  test.each([
    ['2 cloves', 'clove', 2],
    ['1 medium', 'medium', 1],
    ['3', 'each', 3],
    ['½', 'each', 0.5],
    ['4 bay leaves', undefined, 0],
    ['2 leaves', 'leaf', 2],
    ['3 ladles', 'ladle', 3],
    ['1 extra  large', 'extra large', 1],
  ])('%s', (text, measure, count) => {
    if (measure === undefined) return expect(refusal(text).ok).toBe(false)
    return expect(amount(text)).toMatchObject({kind: 'count', measure, count: {value: count}})
  })
})

test('A share of a batch', () => {
  expect(amount('½ batch')).toMatchObject({kind: 'batch', batches: {value: 0.5, increment: 0.5}})
  expect(amount('2 batches')).toMatchObject({kind: 'batch', batches: {value: 2}})
})

test('A weight with its kitchen measure beside it', () => {
  expect(amount('13.5 g (1 tbsp)')).toMatchObject({
    kind: 'weight',
    text: '13.5 g (1 tbsp)',
    grams: {value: 13.5},
    beside: {kind: 'volume', measure: 'tbsp', count: {value: 1}},
  })
  expect(amount('180 g (2 medium)')).toMatchObject({beside: {kind: 'count', measure: 'medium'}})
})

describe('What cannot be meant is refused, with what to write', () => {
  test.each([
    ['1,5 kg', 'a decimal point: `1.5 kg`', ['1.5 kg']],
    ['1,000 g', 'no comma: `1000 g` or `1.000 g`', ['1000 g', '1.000 g']],
    ['150 gr', 'a known unit: `150 g`', ['150 g']],
    ['2 clovs', 'a known unit: `2 clove`', ['2 clove']],
    ['.5 cup', 'a digit before the point: `0.5 cup`', ['0.5 cup']],
    ['1 tbsp (13.5 g)', 'the weight first: `13.5 g (1 tbsp)`', ['13.5 g (1 tbsp)']],
    ['0 g', 'an amount above `0`', undefined],
    ['0.0 g', 'an amount above `0`', undefined],
    ['-5 g', 'a number without a sign', undefined],
    ['−5 g', 'a number without a sign', undefined],
    ['nan g', 'a number first, in digits', undefined],
    ['Infinity g', 'a number first, in digits', undefined],
    ['.inf', 'a number first, in digits', undefined],
    ['', 'a number first, in digits', undefined],
    ['a pinch', 'a number first, in digits', undefined],
    [`${'9'.repeat(400)} g`, 'a number up to `1000000`', undefined],
    ['1e3 g', 'a unit such as `g`, `ml`, `cup`, `tbsp`, `clove` or `medium`', undefined],
    ['1/0 cup', 'a fraction with a number from `1` up below the line', undefined],
    ['12-10 g', 'a range from the smaller number to the larger, such as `10-12 g`', undefined],
    ['1-1/2 cups', 'a range from the smaller number to the larger, such as `10-12 g`', undefined],
    ['100 g (90 g)', 'the same weight in brackets: `90 g` is `90 g`', undefined],
    ['40 g (1 oz)', 'the same weight in brackets: `1 oz` is `28 g`', undefined],
    ['1 lb (500 g)', 'the same weight in brackets: `500 g` is `500 g`', undefined],
    [
      '2 cloves (1 medium)',
      'a weight with its kitchen measure in brackets, such as `13.5 g (1 tbsp)`',
      undefined,
    ],
    ['1 t', 'a unit such as `g`, `ml`, `cup`, `tbsp`, `clove` or `medium`', undefined],
  ])('%j', (text, expected, instead) => {
    const {expected: said, instead: offered} = refusal(text)
    expect(said).toBe(expected)
    expect(offered).toEqual(instead)
  })

  // 1 oz is 28.349523125 g, 1 lb 453.59237 g: NIST Handbook 44 (2023), Appendix C.
  test.each([
    ['28 g (1 oz)', 28],
    ['100 g (3.5 oz)', 100],
    ['110 g (4 oz)', 110],
    // The round pairs of cookbooks, 5.5 % apart (common practice, no source).
    ['30 g (1 oz)', 30],
    ['15 g (½ oz)', 15],
    ['1 oz (30 g)', 28.349523125],
    ['450 g (1 lb)', 450],
    ['1 oz (28 g)', 28.349523125],
    ['1 g (1/32 oz)', 1],
  ])('a weight may stand in another unit beside it: %s', (text, grams) => {
    expect(amount(text)).toMatchObject({kind: 'weight', text, grams: {value: grams}})
    expect(amount(text)).not.toHaveProperty('beside')
  })

  test('whatever is offered instead would pass', () => {
    for (const text of ['1,5 kg', '1,000 g', '150 gr', '2 clovs', '.5 cup', '1 tbsp (13.5 g)']) {
      for (const instead of refusal(text).instead ?? []) expect(amount(instead)).toBeDefined()
    }
  })

  test('anything at all gives an amount above zero or a refusal', () => {
    fc.assert(
      fc.property(fc.string({unit: 'grapheme'}), (text) => {
        const result = parseAmount(text, kitchen)
        if (!result.ok) return
        const {value} = result
        const number =
          value.kind === 'weight'
            ? value.grams
            : value.kind === 'batch'
              ? value.batches
              : value.count
        expect(number.value).toBeGreaterThan(0)
        expect(Number.isFinite(number.value)).toBe(true)
      }),
    )
  })
})

test('Where only a weight makes sense, a measure is refused', () => {
  expect(parseWeight('35 g', kitchen)).toMatchObject({ok: true, value: {grams: {value: 35}}})
  expect(parseWeight('2 tbsp', kitchen)).toMatchObject({
    ok: false,
    expected: 'a weight such as `150 g`',
    note: 'Weigh `2 tbsp` once, and write the grams.',
  })
  expect(parseWeight('600', kitchen)).toMatchObject({ok: false, instead: ['600 g']})
})

describe('Reading what was formatted gives the same amount', () => {
  const whole = fc.integer({min: 1, max: 5000}).map(String)
  const decimal = fc
    .tuple(fc.integer({min: 0, max: 900}), fc.integer({min: 1, max: 99}))
    .map(([units, hundredths]) => `${units}.${String(hundredths).padStart(2, '0')}`)
  const fraction = fc
    .tuple(fc.nat(12), fc.constantFrom('1/2', '1/3', '3/4', '5/8', '½', '⅔', '7/16', '5/6'))
    .map(([units, part]) => (units === 0 ? part : `${units} ${part}`))
  const single = fc.oneof(whole, decimal, fraction)
  const range = fc
    .tuple(fc.integer({min: 1, max: 50}), fc.integer({min: 1, max: 50}))
    .map(([from, more]) => `${from}-${from + more}`)
  const unit = fc.constantFrom(
    'g',
    'kg',
    'oz',
    'lb',
    'mg',
    'ml',
    'l',
    'tsp',
    'cups',
    'fl oz',
    'cloves',
    'medium',
    'leaves',
    'ladles',
    '',
    'batch',
  )
  const beside = fc.constantFrom('', ' (1 tbsp)', ' (2½ cups)', ' (3 cloves)')
  const written = fc
    .tuple(fc.oneof(single, range), unit, beside)
    .map(([number, each, measure]) =>
      `${number} ${each}${['g', 'kg', 'oz', 'lb'].includes(each) ? measure : ''}`.trim(),
    )

  test('for every number, fraction, range and unit', () => {
    fc.assert(
      fc.property(written, (text) => {
        const first = amount(text)
        const again = amount(formatAmount(first))
        expectSame(again, first)
      }),
      {numRuns: 1000},
    )
  })

  test.each([
    ['1 1/2 lb', '1½ lb'],
    ['1.2 kg', '1.2 kg'],
    ['1 cups', '1 cup'],
    ['2 clove', '2 cloves'],
    ['13.50 g (1 tbsp)', '13.50 g (1 tbsp)'],
    ['10–12 g', '10-12 g'],
    ['1/2-2/3 cup', '½-⅔ cup'],
    ['2 batch', '2 batches'],
    ['1 7/16 oz', '1 7/16 oz'],
  ])('%s is written %s', (text, formatted) => {
    expect(formatAmount(amount(text))).toBe(formatted)
  })
})

/** Equal but for the text and the last bits of a float. */
function expectSame(left: Amount, right: Amount): void {
  const {text: _, beside: leftBeside, ...leftRest} = left
  const {text: __, beside: rightBeside, ...rightRest} = right
  expect(Object.keys(leftRest)).toEqual(Object.keys(rightRest))
  expect(rounded(leftRest)).toEqual(rounded(rightRest))
  expect(leftBeside === undefined).toBe(rightBeside === undefined)
  if (leftBeside && rightBeside) expectSame(leftBeside, rightBeside)
}

function rounded(value: object): unknown {
  return JSON.parse(
    JSON.stringify(value, (_, part) =>
      typeof part === 'number' ? Number(part.toPrecision(10)) : part,
    ),
  )
}
