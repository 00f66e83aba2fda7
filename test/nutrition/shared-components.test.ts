import {expect, test} from 'vitest'
import {build} from '../../src/build.ts'

/** Each component uses the one before twice: as many ways lead to the first as 2 to this power. */
const levels = 40

function dish(level: number): {path: string; text: string} {
  const before = `{ amount: 50 g, recipe: level-${level - 1} }`
  const lines =
    level === 0
      ? ['plain flour: 60 g', 'oats: 40 g']
      : [`one half: ${before}`, `other half: ${before}`]
  const front = ['title: Dish', 'serves: 1', 'yield: 100 g', 'ingredients:']
  const text = ['---', ...front, ...lines.map((line) => `  ${line}`), '---', '', '1. Stir.', '']
  return {path: `recipes/level-${level}.md`, text: text.join('\n')}
}

test('components that share components are each opened once, and the figures stay right', () => {
  const texts = Array.from({length: levels}, (_, level) => dish(level))
  const began = performance.now()
  const {computed, problems, files} = build({sources: {texts, images: []}, problems: []}, [])
  expect(problems.filter(({severity}) => severity === 'error')).toEqual([])
  const [first, last] = [computed.get('level-0'), computed.get(`level-${levels - 1}`)]
  expect(files.length).toBeGreaterThan(levels)
  // Half and half of the same is the same.
  expect(last?.batch.energy.value).toBeCloseTo(first?.batch.energy.value ?? Number.NaN, 6)
  // Without end, that is: 2 to the power of 40 ways.
  expect(performance.now() - began).toBeLessThan(30_000)
})
