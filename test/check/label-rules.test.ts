import {describe, expect, test} from 'vitest'
import {labelSanity} from '../../src/check/rules/label-sanity.ts'
import {labelServing} from '../../src/check/rules/label-serving.ts'
import type {Food} from '../../src/food/food.ts'
import type {Label, LabelLine, Printed} from '../../src/food/label.ts'
import type {LabelRules} from '../../src/food/label-rules.ts'
import {cookbook, food, nowhere} from '../kitchen.ts'

type Lines = Partial<Record<LabelLine, number>>

function printed(value: number): Printed {
  const decimals = String(value).split('.')[1]?.length ?? 0
  const increment = 10 ** -decimals
  return {value, isLessThan: false, increment, text: String(value), place: nowhere}
}

function packet(
  rules: LabelRules,
  perGrams: number,
  lines: Lines,
  more: Partial<Label> = {},
): Food {
  const label: Label = {
    perGrams,
    perText: `${perGrams} g`,
    rules,
    printed: new Map(
      Object.entries(lines).map(([line, value]) => [line as LabelLine, printed(value)]),
    ),
    printedPolyols: new Map(),
    state: 'as sold',
    ...more,
  }
  return food(
    'packet',
    {},
    {label, provenance: {kind: 'label', file: 'foods.yaml', place: nowhere}},
  )
}

function findings(rule: typeof labelSanity, own: Food) {
  const book = cookbook([], [])
  const withOwn = {...book, foods: {...book.foods, own: [own]}}
  return [...rule.check({cookbook: withOwn, all: new Map()})]
}

function found(rule: typeof labelSanity, own: Food): readonly string[] {
  return findings(rule, own).map(({reason}) => reason)
}

describe('label-sanity', () => {
  const sound: Lines = {energy: 98, protein: 16, fat: 0.3, carbohydrate: 6, sugars: 6, fibre: 0}

  test('is content with a panel whose energy follows the EU factors', () => {
    // 4×16 + 9×0.3 + 4×6 = 90.7; 98 lies beyond rounding (4×0.5 + 9×0.05 + 4×0.05) but within 5 %.
    expect(found(labelSanity, packet('eu', 150, {...sound, energy: 91}))).toEqual([])
  })

  test('names parts that are larger than the whole they are part of', () => {
    expect(found(labelSanity, packet('eu', 100, {...sound, energy: 91, sugars: 9}))).toEqual([
      'Sugars `9` of `packet`, expected `6` or less: it is part of the carbohydrate',
    ])
    expect(found(labelSanity, packet('eu', 100, {...sound, energy: 91, saturated: 2}))).toEqual([
      'Saturated `2` of `packet`, expected `0.3` or less: it is part of the fat',
    ])
  })

  test('adds up the polyols that a packet names by kind', () => {
    const kinds = (erythritol: number) => ({
      printedPolyols: new Map([
        ['erythritol', printed(erythritol)],
        ['maltitol', printed(4)],
      ] as const),
    })
    const bar: Lines = {protein: 16, carbohydrate: 12}
    expect(found(labelSanity, packet('eu', 100, bar, kinds(8)))).toEqual([])
    expect(found(labelSanity, packet('eu', 100, bar, kinds(10)))).toEqual([
      'Polyols `14 g` of `packet`, expected `12` or less: it is part of the carbohydrate',
    ])
  })

  test('lets fibre exceed the carbohydrate of an EU panel, which does not contain it', () => {
    const bran: Lines = {energy: 222, protein: 16, fat: 4, carbohydrate: 22, fibre: 43}
    expect(found(labelSanity, packet('eu', 100, {...bran, energy: 274}))).toEqual([])
    expect(found(labelSanity, packet('us', 100, {...bran, energy: 188})).join()).toContain(
      'Fibre `43`',
    )
  })

  test('says when the parts weigh more than the serving they are for', () => {
    const [first] = found(
      labelSanity,
      packet('eu', 30, {energy: 379, protein: 13, fat: 7, carbohydrate: 60}),
    )
    expect(first).toBe(
      'Parts of `packet` add up to `79.0 g`, expected `30 g` or less: that is the weight they are for',
    )
  })

  test('holds a panel that prints only kJ to its macros too', () => {
    // 4×16 + 9×0.3 + 4×6 = 90.7 kcal, about 380 kJ.
    const {energy: _, ...macros} = sound
    expect(found(labelSanity, packet('eu', 150, {...macros, energyKilojoules: 385}))).toEqual([])
    expect(found(labelSanity, packet('eu', 150, {...macros, energyKilojoules: 900}))).toHaveLength(
      1,
    )
  })

  test('doubts an energy that no method gives, and says which would explain it', () => {
    // A panel of 615 kcal, 47 g protein, 72 g carbohydrate, 17 g fat: 629 by general factors. Common
    // practice, no source. 2.3 % is within the 5 % that rounding of methods may take; 10 % is not.
    const macros: Lines = {protein: 47, carbohydrate: 72, fat: 17}
    expect(found(labelSanity, packet('us', 400, {...macros, energy: 615}))).toEqual([])
    expect(found(labelSanity, packet('us', 400, {...macros, energy: 560}))).toEqual([
      'Energy `560` of `packet`, expected about `629 kcal` from its macros by general factors 4-4-9, 21 CFR 101.9(c)(1)(i)(B), 12.3 % apart',
    ])
  })

  // FDA guidance of October 2020: allulose 0.4 kcal/g, within total carbohydrate. 13 × 4 + 60 × 0.4 = 76.
  test('takes allulose for what it is where the packet says how much there is', () => {
    const syrup: Lines = {energy: 76, protein: 0, fat: 0, carbohydrate: 73}
    expect(found(labelSanity, packet('us', 100, syrup))).toHaveLength(1)
    expect(found(labelSanity, packet('us', 100, syrup, {printedAllulose: printed(60)}))).toEqual([])
  })
})

describe('label-serving', () => {
  test('says what a tiny serving costs: 30 kcal for 10 g is 275 to 325 per 100 g', () => {
    // 21 CFR 101.9(c)(1): energy of 50 kcal and less is rounded to 5.
    expect(found(labelServing, packet('us', 10, {energy: 30}))).toEqual([
      'Energy `30` of `packet` per `10 g`, expected a panel per 100 g: this one stands for `275` to `325 kcal` per 100 g',
    ])
  })

  test('80 kcal for 28 g stands for 75 to 85, which is poor too', () => {
    expect(found(labelServing, packet('us', 28, {energy: 80}))[0]).toContain('`268` to `304 kcal`')
  })

  test('is content with a panel per 100 g', () => {
    expect(found(labelServing, packet('eu', 100, {energy: 62}))).toEqual([])
    expect(found(labelServing, packet('us', 100, {energy: 10}))).toEqual([])
  })

  test('a printed 0 of a few grams may hide much, and little where the law rounds finely', () => {
    // 21 CFR 101.9(c)(1): below 5 kcal may be 0. EU guidance (Dec 2012): energy to the nearest 1 kcal.
    const [reason] = found(labelServing, packet('us', 5, {energy: 0}))
    expect(reason).toContain('`0` to `100 kcal` per 100 g')
    expect(findings(labelServing, packet('us', 5, {energy: 0}))[0]?.note).toMatch(
      /^What is printed as 0 need not be/,
    )
    expect(found(labelServing, packet('eu', 50, {energy: 0}))).toEqual([])
  })
})
