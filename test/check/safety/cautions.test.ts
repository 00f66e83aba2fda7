import {describe, expect, test} from 'vitest'
import {type CautionId, cautionsOf} from '../../../src/check/safety/cautions.ts'
import {computedIn, type DishText} from '../check-text.ts'

function cautions(dish: DishText) {
  const computed = computedIn(dish).computed.get('dish')
  if (!computed) throw new Error('not computed')
  return cautionsOf(computed)
}

function ids(ingredients: readonly string[], more: Partial<DishText> = {}): readonly CautionId[] {
  return cautions({ingredients, method: 'Cook everything.', ...more}).map(({id}) => id)
}

describe('cautions', () => {
  test.each<readonly [string, readonly CautionId[]]>([
    ['chicken thigh, skinless: 500 g', ['poultry']],
    ['beef mince, 20 % fat: 500 g', ['groundMeat']],
    ['rib-eye steak: 500 g', ['wholeMeat']],
    ['salmon, farmed: 500 g', ['fish']],
    ['egg: 100 g', ['egg']],
    ['plain flour: 100 g', ['flour']],
    ['kidney beans: 100 g', ['kidneyBean']],
    ['kidney beans, canned, drained: 100 g', []],
    ['rice: 100 g', ['rice']],
    ['honey: 10 g', ['honey']],
    ['carrot: 100 g', []],
    ['chicken meat, skinless, roasted: 100 g', []],
  ])('%s: %j', (line, expected) => {
    expect(ids([line])).toEqual(expected)
  })

  test('come through a component', () => {
    const stock =
      '---\ntitle: Stock\nyield: 500 g\ningredients:\n  chicken thigh, skinless: 500 g\n---\n\nSimmer for 2 hours.\n'
    expect(ids(['stock: { amount: 200 g, recipe: stock }'], {others: {stock}})).toEqual(['poultry'])
  })

  test('of cooling and reheating where a cooked dish is kept', () => {
    const front = ['keeps: { fridge: 3 days }']
    expect(ids(['chicken thigh, skinless: 500 g'], {front})).toEqual([
      'poultry',
      'cooling',
      'reheating',
    ])
    expect(ids(['rolled oats: 500 g'], {front, method: 'Mix.'})).toEqual([])
  })

  // USDA FSIS and foodsafety.gov, Safe Minimum Internal Temperature Chart (2019), in °F.
  test.each([
    ['chicken thigh, skinless: 500 g', '165 °F', '74 °C'],
    ['beef mince, 20 % fat: 500 g', '160 °F', '71 °C'],
    ['rib-eye steak: 500 g', '145 °F', '63 °C'],
    ['salmon, farmed: 500 g', '145 °F', '63 °C'],
  ])('%s has the temperature of the chart and names it', (line, fahrenheit, celsius) => {
    const [caution] = cautions({ingredients: [line], method: 'Cook everything.'})
    expect(caution?.text).toContain(fahrenheit)
    expect(caution?.text).toContain(celsius)
    expect(caution?.source).toContain('USDA FSIS')
  })
})
