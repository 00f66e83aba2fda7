import {describe, expect, test} from 'vitest'
import {readSettings} from '../../src/cookbook/read-settings.ts'

const read = (text: string) => {
  const {settings, problems} = readSettings({path: 'cookbook.yaml', text})
  return {settings, problems, reasons: problems.map(({reason}) => reason)}
}

test('A cookbook without settings has a default for each', () => {
  const {settings, problems} = readSettings(undefined)
  expect(problems).toEqual([])
  expect(settings).toEqual({
    title: 'Cookbook',
    description: '',
    language: 'en',
    currency: 'EUR',
    scaleGrams: 1,
    rules: 'eu',
    carbohydrate: 'available',
    tolerance: 'household',
    tolerances: new Map(),
    cups: 'metric',
    severities: new Map(),
    checks: [],
    print: {paper: 'A4', cards: 'A6'},
  })
  expect(read('').settings).toEqual(settings)
  expect(read('# title: later\n').settings).toEqual(settings)
})

test('Every setting is read', () => {
  const {settings, problems} = read(`title: The training table
description: What the crews eat
language: en-GB
address: https://example.org/table
currency: GBP
scale: 0.1 g
rules: us
carbohydrate: available
declare: us
net carbohydrate: true
tolerance: strict
tolerances: { protein: 10 %, energy: 20 kcal, added sugars: 500 mg }
cups: imperial
checks: { missing-stated: off, stated-energy: warning }
label age: 3 months
print: { paper: Letter, cards: 6x4, sections: [soup, bowl] }`)
  expect(problems).toEqual([])
  expect(settings).toMatchObject({
    title: 'The training table',
    description: 'What the crews eat',
    language: 'en-GB',
    address: 'https://example.org/table/',
    currency: 'GBP',
    scaleGrams: 0.1,
    rules: 'us',
    carbohydrate: 'available',
    declare: 'us',
    netCarbohydrate: true,
    tolerance: 'strict',
    tolerances: new Map([
      ['protein', {kind: 'ratio', ratio: 0.1, nutrient: 'protein'}],
      ['energy', {kind: 'amount', amount: 20, nutrient: 'energy'}],
      ['addedSugars', {kind: 'amount', amount: 0.5, nutrient: 'addedSugars'}],
    ]),
    cups: 'imperial',
    severities: new Map([
      ['missing-stated', 'off'],
      ['stated-energy', 'warning'],
    ]),
    checks: [{value: 'missing-stated'}, {value: 'stated-energy'}],
    labelDays: 90,
    print: {paper: 'Letter', cards: '6x4', sections: ['soup', 'bowl']},
  })
})

test('The law a cookbook follows brings its own carbohydrate and cup', () => {
  expect(read('rules: us').settings).toMatchObject({carbohydrate: 'total', cups: 'us'})
  expect(read('rules: eu').settings).toMatchObject({carbohydrate: 'available', cups: 'metric'})
})

describe('A setting that cannot be meant is refused', () => {
  test.each([
    ['titel: x', 'Unknown key `titel`, expected `title`'],
    [
      'language: English please',
      '`language` is `English please`, expected a language tag such as `en` or `en-GB`',
    ],
    [
      'address: example.org',
      '`address` is `example.org`, expected the address of the site such as `https://example.org/recipes/`',
    ],
    [
      'address: "javascript:alert(1)"',
      '`address` is `javascript:alert(1)`, expected the address of the site such as `https://example.org/recipes/`',
    ],
    [
      'address: https://example.org/?a=1',
      '`address` is `https://example.org/?a=1`, expected the address of the site such as `https://example.org/recipes/`',
    ],
    ['currency: euros', '`currency` is `euros`, expected three letters of ISO 4217 such as `EUR`'],
    ['scale: 1', '`scale` is `1`, expected a unit: `1 g`'],
    ['scale: 0 g', '`scale` is `0 g`, expected an amount above `0`'],
    ['rules: uk', '`rules` is `uk`, expected one of `us`, `eu`'],
    [
      'tolerance: lax',
      '`tolerance` is `lax`, expected one of `household`, `us`, `us both ways`, `eu`, `strict`',
    ],
    ['tolerances: { protein: 10 }', '`protein` in `tolerances` is `10`, expected a unit: `10 g`'],
    [
      'tolerances: { protein: -10 % }',
      '`protein` in `tolerances` is `-10 %`, expected a number without a sign',
    ],
    [
      'tolerances: { fat: <1 g }',
      '`fat` in `tolerances` is `<1 g`, expected a share or an amount such as `10 %` or `5 g`',
    ],
    [
      'checks: { missing-stated: quiet }',
      '`missing-stated` in `checks` is `quiet`, expected one of `error`, `warning`, `note`, `off`',
    ],
    ['print: { paper: A3 }', '`paper` in `print` is `A3`, expected one of `A4`, `Letter`, `A5`'],
    ['- title: x', 'The file is a list, expected the keys of a cookbook'],
  ])('%s', (yaml, reason) => {
    expect(read(yaml).reasons).toEqual([reason])
  })

  test('and the default stands in for it, so that the rest is still checked', () => {
    expect(read('title: Mine\nrules: uk').settings).toMatchObject({title: 'Mine', rules: 'eu'})
  })
})

test('A byte order mark is no part of the first key', () => {
  expect(read('\uFEFFtitle: Mine').settings.title).toBe('Mine')
})

test('Figures are declared by nobody’s rules, and net carbohydrate is not shown, unless asked', () => {
  const {settings, reasons} = read('declare: plain\nnet carbohydrate: false')
  expect(reasons).toEqual([])
  expect(settings).not.toHaveProperty('declare')
  expect(settings).not.toHaveProperty('netCarbohydrate')
  expect(read('declare: uk').reasons).toEqual([
    '`declare` is `uk`, expected one of `us`, `eu`, `plain`',
  ])
})
