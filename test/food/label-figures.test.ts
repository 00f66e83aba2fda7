import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {isComplete} from '../../src/food/figures.ts'
import {type LabelLine, printedSpan} from '../../src/food/label.ts'
import {labelFigures} from '../../src/food/label-figures.ts'
import {difference, standardUncertainty} from '../../src/units/uncertain.ts'
import {panel, printed} from './panel.ts'

describe('A US panel', () => {
  const label = panel(28, 'us', {
    energy: '80 kcal',
    fat: '5 g',
    protein: 'less than 1 g',
    carbohydrate: '9 g',
    fibre: '3 g',
    sodium: '140 mg',
    trans: '0 g',
  })
  const figures = labelFigures(label, 'oat crackers')

  test('80 kcal for 28 g is carried as 75 to 85', () => {
    expect(printedSpan('energy', printed('energy', '80 kcal'), 'us')).toEqual({
      value: 80,
      low: 75,
      high: 85,
    })
    expect(figures.energy.value).toBeCloseTo((80 * 100) / 28, 9)
    expect(standardUncertainty(figures.energy)).toBeCloseTo(((10 / Math.sqrt(12)) * 100) / 28, 9)
  })

  test('A lopsided interval keeps the printed value and takes the width (GUM 4.3.8)', () => {
    expect(figures.fat.value).toBeCloseTo((5 * 100) / 28, 9)
    expect(standardUncertainty(figures.fat)).toBeCloseTo(((0.75 / Math.sqrt(12)) * 100) / 28, 9)
  })

  test('A zero may be up to 0.49 g', () => {
    expect(figures.trans.value).toBe(0)
    expect(standardUncertainty(figures.trans)).toBeCloseTo(((0.5 / Math.sqrt(12)) * 100) / 28, 9)
  })

  test('Less than 1 g is the middle of the interval', () => {
    expect(figures.protein.value).toBeCloseTo((0.5 * 100) / 28, 9)
    expect(standardUncertainty(figures.protein)).toBeCloseTo(((1 / Math.sqrt(12)) * 100) / 28, 9)
  })

  test('Carbohydrate has the fibre in it, so without fibre it is less, on the same two sources', () => {
    expect(figures.carbohydrate.value).toBeCloseTo((9 * 100) / 28, 9)
    expect(figures.availableCarbohydrate.value).toBeCloseTo((6 * 100) / 28, 9)
    const fibre = difference(figures.carbohydrate, figures.availableCarbohydrate)
    expect(standardUncertainty(difference(fibre, figures.fibre))).toBeCloseTo(0, 9)
  })

  test('Salt follows from sodium, on the same source', () => {
    expect(figures.salt.value).toBeCloseTo((0.35 * 100) / 28, 9)
    expect([...figures.salt.parts.keys()]).toEqual([...figures.sodium.parts.keys()])
  })

  test('What the panel does not print is unknown, and so is what follows from it', () => {
    expect(figures.iron.missing).toEqual(new Set(['oat crackers']))
    expect(figures.water.missing).toEqual(new Set(['oat crackers']))
    const withoutFibre = labelFigures(panel(28, 'us', {carbohydrate: '9 g'}), 'oat crackers')
    expect(isComplete(withoutFibre.carbohydrate)).toBe(true)
    expect(isComplete(withoutFibre.availableCarbohydrate)).toBe(false)
  })

  // 21 CFR 101.9(f): a simplified panel leaves out what is insignificant, fibre among it.
  test('No carbohydrate has no fibre in it, whether the panel says so or not', () => {
    const {availableCarbohydrate} = labelFigures(panel(28, 'us', {carbohydrate: '0 g'}), 'tofu')
    expect(isComplete(availableCarbohydrate)).toBe(true)
    expect(availableCarbohydrate.value).toBe(0)
    expect(standardUncertainty(availableCarbohydrate)).toBeGreaterThan(0)
  })
})

describe('An EU panel', () => {
  const figures = labelFigures(
    panel(100, 'eu', {
      energy: '98 kcal',
      energyKilojoules: '415 kJ',
      carbohydrate: '6 g',
      fibre: '<0.5 g',
      salt: '0.13 g',
      fat: '0.3 g',
    }),
    'plain skyr',
  )

  test('kcal counts where both are printed, and the label keeps its own energy', () => {
    expect(figures.energy.value).toBe(98)
    expect(standardUncertainty(figures.energy)).toBeCloseTo(1 / Math.sqrt(12), 9)
  })

  test('kJ alone becomes kcal at 4.184 kJ', () => {
    const {energy} = labelFigures(panel(100, 'eu', {energyKilojoules: '415 kJ'}), 'plain skyr')
    expect(energy.value).toBeCloseTo(415 / 4.184, 9)
    expect(standardUncertainty(energy)).toBeCloseTo(1 / 4.184 / Math.sqrt(12), 9)
  })

  test('Carbohydrate is without fibre, so with fibre it is more', () => {
    expect(figures.availableCarbohydrate.value).toBe(6)
    expect(figures.carbohydrate.value).toBeCloseTo(6.25, 9)
  })

  test('Without a fibre line the total is unknown', () => {
    const {carbohydrate} = labelFigures(panel(100, 'eu', {carbohydrate: '6 g'}), 'plain skyr')
    expect(carbohydrate.missing).toEqual(new Set(['plain skyr']))
  })

  test('Sodium follows from salt', () => {
    expect(figures.sodium.value).toBeCloseTo(52, 9)
    expect(standardUncertainty(figures.sodium)).toBeCloseTo(4 / Math.sqrt(12), 9)
  })
})

test('Where a panel prints salt and sodium, the one of its law counts', () => {
  const lines = {salt: '0.2 g', sodium: '100 mg'}
  expect(labelFigures(panel(100, 'us', lines), 'broth').sodium.value).toBe(100)
  expect(labelFigures(panel(100, 'eu', lines), 'broth').sodium.value).toBeCloseTo(80, 9)
})

test('Polyols by kind add up, each with its own rounding', () => {
  const {polyols} = labelFigures(
    panel(40, 'us', {}, {erythritol: '8 g', maltitol: '4 g'}),
    'chocolate bar',
  )
  expect(polyols.value).toBeCloseTo(30, 9)
  expect(polyols.parts.size).toBe(2)
})

test('A panel per serving and the same panel per 100 g say the same of 100 g', () => {
  const perServing = labelFigures(panel(50, 'eu', {protein: '8 g'}), 'skyr')
  expect(perServing.protein.value).toBe(16)
  expect(standardUncertainty(perServing.protein)).toBeCloseTo(0.2 / Math.sqrt(12), 9)
})

test('A figure the law would not print was rounded to its last written digit', () => {
  const span = printedSpan('fat', printed('fat', '2.3 g'), 'us')
  expect(span.low).toBeCloseTo(2.25, 12)
  expect(span.high).toBeCloseTo(2.35, 12)
  expect(printedSpan('alcohol', printed('alcohol', '<1 g'), 'eu')).toEqual({
    value: 0.5,
    low: 0,
    high: 1,
  })
})

test('Whatever is printed lies within its own interval', () => {
  const line = fc.constantFrom<LabelLine>('energy', 'fat', 'protein', 'fibre', 'alcohol')
  const rules = fc.constantFrom('us', 'eu')
  const tenths = fc.integer({min: 0, max: 9000})
  const decimals = fc.integer({min: 0, max: 1})
  fc.assert(
    fc.property(line, rules, tenths, decimals, (each, law, value, digits) => {
      const unit = each === 'energy' ? 'kcal' : 'g'
      const figure = printed(each, `${(value / 10).toFixed(digits)} ${unit}`)
      const span = printedSpan(each, figure, law)
      expect(span.value).toBe(figure.value)
      expect(span.low).toBeLessThanOrEqual(figure.value)
      expect(span.high).toBeGreaterThan(figure.value)
      expect(span.low).toBeGreaterThanOrEqual(0)
    }),
  )
})

// FDA guidance of October 2020: 0.4 kcal/g, in total carbohydrate. By hand for 15 g: 2 × 4 + 9 × 0.4.
test('Allulose gives a tenth of the energy of the carbohydrate it is counted in', () => {
  const lines = {energy: '10 kcal', protein: '0 g', fat: '0 g', carbohydrate: '11 g', fibre: '0 g'}
  const syrup = {...panel(15, 'us', lines), printedAllulose: printed('carbohydrate', '9 g')}
  const figures = labelFigures(syrup, 'syrup')
  expect(figures.energyDigestible.value).toBeCloseTo((11.6 * 100) / 15, 9)
  expect(figures.energyGeneral.value).toBeCloseTo((44 * 100) / 15, 9)
})

// By hand; factors: 21 CFR 101.9(c)(1)(i)(F), erythritol 0, maltitol 2.1 kcal/g; allulose 0.4 (FDA
// guidance of October 2020). Rounding of a US panel from 1 g up: to the gram, width 1 g.
describe('The energy by a method is as uncertain as the grams it is made of', () => {
  const none = {energy: '60 kcal', protein: '0 g', fat: '0 g', fibre: '0 g'}

  test('allulose takes 3.6 kcal/g off the carbohydrate, with its own rounding', () => {
    const lines = {...none, carbohydrate: '11 g'}
    const syrup = {...panel(100, 'us', lines), printedAllulose: printed('carbohydrate', '9 g')}
    const {energyDigestible, protein, fat, carbohydrate, fibre} = labelFigures(syrup, 'syrup')
    const plain = 16 * standardUncertainty(carbohydrate) ** 2
    const rest =
      16 * standardUncertainty(protein) ** 2 +
      81 * standardUncertainty(fat) ** 2 +
      // What fibre takes from the carbohydrate at 4 kcal/g comes back at 1.
      9 * standardUncertainty(fibre) ** 2
    expect(standardUncertainty(energyDigestible) ** 2).toBeCloseTo(plain + rest + 3.6 ** 2 / 12, 6)
  })

  test('each kind of polyol with the factor of its own', () => {
    const lines = {...none, carbohydrate: '30 g'}
    const bar = labelFigures(panel(100, 'us', lines, {erythritol: '20 g', maltitol: '5 g'}), 'bar')
    const bare = labelFigures(panel(100, 'us', lines), 'bar')
    expect(bar.energyDigestible.value).toBeCloseTo(4 * 5 + 2.1 * 5, 9)
    const added =
      standardUncertainty(bar.energyDigestible) ** 2 -
      standardUncertainty(bare.energyDigestible) ** 2
    expect(added).toBeCloseTo((4 ** 2 + 1.9 ** 2) / 12, 6)
    // One rounding of the packet is one source in the polyols and in the energy.
    const shared = [...bar.polyols.parts.keys()].filter((source) =>
      bar.energyDigestible.parts.has(source),
    )
    expect(shared).toHaveLength(2)
  })
})
