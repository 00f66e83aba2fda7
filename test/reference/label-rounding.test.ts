import {describe, expect, test} from 'vitest'
import type {Nutrient} from '../../src/food/nutrients.ts'
import {euDeclarations, euSpan} from '../../src/food/rounding/eu.ts'
import {usDeclarations, usSpan} from '../../src/food/rounding/us.ts'

// US: 21 CFR 101.9(c), bands and zeros as tabulated in FDA, A Food Labeling Guide, Appendix H
// (October 2009). The vectors apply that table; that an exact half goes up is from memory.
describe('21 CFR 101.9(c), declared from the amount in a serving', () => {
  test.each<[Nutrient, number, number]>([
    ['energy', 4.9, 0],
    ['energy', 47.4, 45],
    ['energy', 47.5, 50],
    ['energy', 50, 50],
    ['energy', 52, 50],
    ['energy', 55, 60],
    ['energy', 236, 240],
    ['fat', 0.49, 0],
    ['fat', 0.74, 0.5],
    ['fat', 0.75, 1],
    ['fat', 4.74, 4.5],
    ['fat', 4.75, 5],
    ['fat', 5.49, 5],
    ['saturated', 0.49, 0],
    ['trans', 0.6, 0.5],
    ['sodium', 4, 0],
    ['sodium', 137, 135],
    ['sodium', 141, 140],
    ['sodium', 145, 150],
    ['cholesterol', 1.9, 0],
    ['cholesterol', 8, 10],
    ['carbohydrate', 0.49, 0],
    ['fibre', 2.5, 3],
    ['sugars', 1.4, 1],
    ['protein', 0.49, 0],
    ['protein', 12.4, 12],
  ])('%s %d is declared as %d', (nutrient, amount, declared) => {
    expect(usDeclarations(nutrient, amount)[0]).toEqual({kind: 'amount', value: declared})
  })

  test.each<[Nutrient, number, number]>([
    ['cholesterol', 3, 5],
    ['carbohydrate', 0.7, 1],
    ['fibre', 0.7, 1],
    ['protein', 0.7, 1],
  ])('%s %d is declared as less than %d', (nutrient, amount, limit) => {
    expect(usDeclarations(nutrient, amount)[0]).toEqual({kind: 'less than', value: limit})
  })

  test('4.9 kcal may be declared as 5 as well', () => {
    expect(usDeclarations('energy', 4.9)).toContainEqual({kind: 'amount', value: 5})
  })

  test('0.49 g of fat shall be declared as 0 and nothing else', () => {
    expect(usDeclarations('fat', 0.49)).toEqual([{kind: 'amount', value: 0}])
  })
})

// The limits below follow from the same table, read backwards: where two bands meet, the span is
// lopsided.
describe('21 CFR 101.9(c), what a declared figure may have been', () => {
  test.each<[Nutrient, number, number, number]>([
    ['energy', 0, 0, 5],
    ['energy', 5, 2.5, 7.5],
    ['energy', 45, 42.5, 47.5],
    ['energy', 50, 47.5, 55],
    ['energy', 60, 55, 65],
    ['energy', 80, 75, 85],
    ['fat', 0, 0, 0.5],
    ['fat', 0.5, 0.5, 0.75],
    ['fat', 1, 0.75, 1.25],
    ['fat', 5, 4.75, 5.5],
    ['fat', 6, 5.5, 6.5],
    ['protein', 0, 0, 0.5],
    ['protein', 1, 0.5, 1.5],
    ['carbohydrate', 31, 30.5, 31.5],
    ['sodium', 0, 0, 5],
    ['sodium', 5, 5, 7.5],
    ['sodium', 135, 132.5, 137.5],
    ['sodium', 140, 137.5, 145],
    ['sodium', 150, 145, 155],
    ['cholesterol', 0, 0, 2],
    ['cholesterol', 5, 2.5, 7.5],
    ['cholesterol', 10, 7.5, 12.5],
  ])('%s %d is %d to %d', (nutrient, value, low, high) => {
    expect(usSpan(nutrient, {kind: 'amount', value})).toEqual({value, low, high})
  })

  test('less than 1 g of fibre is 0 to 1 g, less than 5 mg of cholesterol 2 to 5 mg', () => {
    expect(usSpan('fibre', {kind: 'less than', value: 1})).toEqual({value: 0.5, low: 0, high: 1})
    expect(usSpan('cholesterol', {kind: 'less than', value: 5})).toEqual({
      value: 3.5,
      low: 2,
      high: 5,
    })
  })

  test.each<[Nutrient, number]>([
    ['fat', 2.3],
    ['energy', 47],
    ['energy', 55],
    ['protein', 7.5],
    ['sodium', 142],
  ])('%s %d is nothing a US panel declares', (nutrient, value) => {
    expect(usSpan(nutrient, {kind: 'amount', value})).toBeUndefined()
  })

  // 21 CFR 101.9(c)(8): vitamins and minerals below 2 % of the Daily Value may be declared as 0.
  // Daily Values: iron 18 mg, calcium 1,300 mg, vitamin D 20 µg (rule of 2016). FDA guidance:
  // steps of 0.1 below 25 units; the step of 10 from 250 units is from memory.
  test.each<[Nutrient, number, number, number]>([
    ['iron', 0, 0, 0.36],
    ['iron', 1.4, 1.35, 1.45],
    ['calcium', 0, 0, 26],
    ['calcium', 260, 255, 265],
    ['vitaminD', 2, 1.95, 2.05],
  ])('%s %d is %d to %d', (nutrient, value, low, high) => {
    const span = usSpan(nutrient, {kind: 'amount', value})
    expect(span?.low).toBeCloseTo(low, 12)
    expect(span?.high).toBeCloseTo(high, 12)
  })
})

// EU: European Commission, guidance document on tolerances (December 2012), rounding guidelines,
// seen in a laboratory's reproduction; sodium from memory.
describe('EU guidance 2012, declared from the amount in 100 g', () => {
  test.each<[Nutrient, number, number]>([
    ['energy', 97.5, 98],
    ['energy', 411.4, 411],
    ['protein', 10.4, 10],
    ['protein', 9.94, 9.9],
    ['fat', 0.55, 0.6],
    ['fat', 0.5, 0],
    ['saturated', 0.1, 0],
    ['saturated', 0.26, 0.3],
    ['salt', 0.126, 0.13],
    ['salt', 1.24, 1.2],
    ['salt', 0.0125, 0],
    ['sodium', 47, 50],
    ['calcium', 123.4, 123],
    ['potassium', 1234, 1230],
    ['iron', 1.44, 1.4],
    ['vitaminD', 0.777, 0.78],
  ])('%s %d is declared as %d', (nutrient, amount, declared) => {
    expect(euDeclarations(nutrient, amount)[0]).toEqual({kind: 'amount', value: declared})
  })

  test('0.5 g may be declared as 0 g or <0.5 g', () => {
    const allowed = euDeclarations('fat', 0.5)
    expect(allowed).toContainEqual({kind: 'amount', value: 0})
    expect(allowed).toContainEqual({kind: 'less than', value: 0.5})
  })
})

describe('EU guidance 2012, what a declared figure may have been', () => {
  test.each<[Nutrient, number, number, number]>([
    ['energy', 98, 97.5, 98.5],
    ['fat', 0.3, 0.25, 0.35],
    ['fat', 9.9, 9.85, 9.95],
    ['protein', 10, 9.95, 10.5],
    ['protein', 16, 15.5, 16.5],
    ['salt', 0.13, 0.125, 0.135],
    ['salt', 1, 0.995, 1.05],
    ['salt', 1.2, 1.15, 1.25],
    ['fat', 0, 0, 0.5],
    ['salt', 0, 0, 0.0125],
  ])('%s %d is %d to %d', (nutrient, value, low, high) => {
    const span = euSpan(nutrient, {kind: 'amount', value})
    expect(span?.low).toBeCloseTo(low, 12)
    expect(span?.high).toBeCloseTo(high, 12)
  })

  test('<0.5 g is 0 to 0.5 g', () => {
    const span = euSpan('fat', {kind: 'less than', value: 0.5})
    expect(span).toEqual({value: 0.25, low: 0, high: 0.5})
  })
})
