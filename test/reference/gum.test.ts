import {describe, expect, test} from 'vitest'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {
  difference,
  exact,
  expandedUncertainty,
  product,
  rectangular,
  type Source,
  standardUncertainty,
  sum,
  type Uncertain,
} from '../../src/units/uncertain.ts'
import {at, cookbook, food, line, recipe} from '../kitchen.ts'

// JCGM 100:2008, Evaluation of measurement data: Guide to the expression of uncertainty in
// measurement (GUM). The examples' figures are from memory; each can be worked out again by hand from
// the clause named, as is done beside it.

function source(subject: string): Source {
  return {kind: 'table', subject}
}

/** A value whose standard uncertainty is given: the rectangle that has it. */
function known(value: number, standard: number, subject: string): Uncertain {
  return rectangular(value, standard * Math.sqrt(12), source(subject))
}

describe('GUM 4.3.7 and 4.3.8: bounds and nothing else', () => {
  test('thermal expansion of copper, error at most 0.40: u = 0.40/√3 = 0.23', () => {
    // 16.52 × 10⁻⁶ /°C "should not exceed 0.40": a² / 3 = 0.0533.
    const expansion = rectangular(16.52, 0.8, source('copper'))
    expect(standardUncertainty(expansion) ** 2).toBeCloseTo(0.0533, 4)
    expect(standardUncertainty(expansion)).toBeCloseTo(0.23, 2)
  })

  test('between 16.40 and 16.92: u = 0.52/√12 = 0.15, wherever in it the value lies', () => {
    expect(standardUncertainty(rectangular(16.52, 0.52, source('copper')))).toBeCloseTo(0.15, 2)
  })
})

describe('GUM 5.1.2 and 5.2.2: one source or ten', () => {
  // Ten resistors of 1000 Ω in series, each set by the same standard, which is known to 100 mΩ.
  const standard = known(0, 0.1, 'standard resistor')
  const resistors = Array.from({length: 10}, () => sum([exact(1000), standard]))

  test('ten resistors set by one standard: 10 × 100 mΩ = 1 Ω', () => {
    const total = sum(resistors)
    expect(total.value).toBe(10_000)
    expect(standardUncertainty(total)).toBeCloseTo(1, 12)
  })

  test('set by ten standards it would be √10 × 100 mΩ = 0.32 Ω', () => {
    const independent = resistors.map((_, index) => known(1000, 0.1, `standard ${index}`))
    expect(standardUncertainty(sum(independent))).toBeCloseTo(0.32, 2)
  })
})

describe('GUM H.1: end-gauge calibration', () => {
  // l = lS + d − lS (δα θ + αS δθ), lengths in nm, temperatures in °C.
  const lengthOfStandard = known(50_000_623, 25, 'calibration of the standard')
  // √(5.8² + 3.9² + 6.7²) = 9.7: repeated observations, random and systematic part of the comparator.
  const comparison = sum([
    known(215, 5.8, 'repeated observations'),
    known(0, 3.9, 'random effects of the comparator'),
    known(0, 6.7, 'systematic effects of the comparator'),
  ])
  const expansionDifference = rectangular(0, 2e-6, source('difference of the expansions'))
  const temperatureDifference = rectangular(0, 0.1, source('difference of the temperatures'))
  const expansion = rectangular(11.5e-6, 4e-6, source('expansion of the standard'))
  const deviation = known(-0.1, 0.41, 'deviation from 20 °C')
  const length = difference(
    sum([lengthOfStandard, comparison]),
    product(
      lengthOfStandard,
      sum([product(expansionDifference, deviation), product(expansion, temperatureDifference)]),
    ),
  )

  test('the length is 50.000838 mm', () => {
    expect(length.value).toBeCloseTo(50_000_838, 6)
  })

  test('its uncertainty is 32 nm: √(25² + 9.7² + 2.9² + 16.6²)', () => {
    expect(standardUncertainty(comparison)).toBeCloseTo(9.7, 1)
    expect(standardUncertainty(length)).toBeCloseTo(Math.hypot(25, 9.7, 2.9, 16.6), 1)
    expect(standardUncertainty(length)).toBeCloseTo(31.7, 1)
  })

  test('the expansion adds nothing to first order, as δθ is 0', () => {
    const parts = [...length.parts].filter(([{subject}]) => subject === 'expansion of the standard')
    expect(parts.map(([, part]) => Math.abs(part))).toEqual([0])
  })
})

// Worked by hand from GUM 5.1.2 for a bowl, in kcal: barley 180 g on a scale of 1 g at 352 kcal, milk
// 250 g at 61 kcal, both per 100 g and printed in whole kcal.
//   weighing of barley  3.52 /√12 = 1.0161   figure of barley 1.80/√12 = 0.5196
//   weighing of milk    0.61 /√12 = 0.1761   figure of milk   2.50/√12 = 0.7217
//   633.60 + 152.50 = 786.1;  √((12.3904 + 3.24 + 0.3721 + 6.25) / 12) = √1.854375 = 1.36175
describe('A recipe worked by hand', () => {
  const barley = food('barley', {energy: 352}, {increment: 1})
  const milk = food('milk', {energy: 61}, {increment: 1})
  const bowl = recipe('bowl', [line('barley', 180), line('milk', 250)], {serves: at(2)})
  const computed = computeCookbook(cookbook([barley, milk], [bowl])).computed.get('bowl')

  test('the batch has 786.1 ± 2.72 kcal, a serving half of both', () => {
    const {batch, perServing} = computed ?? {}
    expect(batch?.energy.value).toBeCloseTo(786.1, 10)
    expect(batch && standardUncertainty(batch.energy)).toBeCloseTo(1.36175, 5)
    expect(perServing && expandedUncertainty(perServing.energy)).toBeCloseTo(1.36175, 5)
  })

  test('the shares of its variance are 55.7, 28.1, 14.6 and 1.7 %', () => {
    const energy = computed?.batch.energy ?? exact(NaN)
    const variance = standardUncertainty(energy) ** 2
    const shares = [...energy.parts.values()].map((part) => (100 * part ** 2) / variance)
    const sorted = shares.toSorted((left, right) => right - left)
    expect(sorted).toHaveLength(4)
    for (const [index, share] of [55.7, 28.1, 14.6, 1.7].entries()) {
      expect(sorted[index]).toBeCloseTo(share, 1)
    }
    expect(shares.reduce((total, share) => total + share, 0)).toBeCloseTo(100, 9)
  })
})
