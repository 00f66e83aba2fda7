/** Which recipes are computed, in which order, and what is said of those that cannot be. */

import {describe, expect, test} from 'vitest'
import {limits} from '../../src/cookbook/limits.ts'
import type {Recipe} from '../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, grams, line, recipe} from '../kitchen.ts'

/** 100 g of it give 100 kcal. */
const flour = food('flour', {energy: 100})

const uses = (slug: string) => line(`the ${slug}`, 100, {recipe: at(slug)})
const weighed = {serves: at(1), batch: at(grams(100))}

/** `step-0` is flour; each further step is the one before. The outermost stands first. */
function chain(levels: number): readonly Recipe[] {
  return Array.from({length: levels + 1}, (_, index) => {
    const level = levels - index
    const made = level === 0 ? line('flour', 100) : uses(`step-${level - 1}`)
    return recipe(`step-${level}`, [made], weighed)
  })
}

describe('components within one another', () => {
  test('as deep as the limit are computed', () => {
    const {computed, problems} = computeCookbook(cookbook([flour], chain(limits.componentLevels)))
    expect(problems).toEqual([])
    expect(computed.get('step-50')?.batch.energy.value).toBeCloseTo(100, 9)
  })

  test('deeper than the limit are refused once, with the way; what is above them keeps quiet', () => {
    const {computed, problems} = computeCookbook(
      cookbook([flour], chain(limits.componentLevels + 3)),
    )
    expect(problems).toMatchObject([
      {
        ruleId: 'component-nesting',
        severity: 'error',
        file: 'recipes/step-51.md',
        reason:
          'Component `step-50` nests `51` levels deep by `step-51 → step-50 → step-49 → … → step-2 → step-1 → step-0`, expected `50` at most',
        actual: 'step-50',
        note: expect.stringMatching(/^Every step of the way: step-51 → step-50 → .* → step-0\.$/u),
      },
    ])
    expect(problems[0]?.note?.split(' → ')).toHaveLength(52)
    expect([...computed.keys()]).toContain('step-50')
    expect(computed.size).toBe(51)
  })

  test('count the deepest of several ways, from whichever recipe they are looked at first', () => {
    const deep = chain(limits.componentLevels)
    const both = recipe('both', [uses('step-0'), uses('step-50'), uses('step-1')], weighed)
    for (const recipes of [
      [both, ...deep],
      [...deep, both],
      [both, ...deep.toReversed()],
    ]) {
      const {problems} = computeCookbook(cookbook([flour], recipes))
      expect(problems.map(({ruleId, file}) => [ruleId, file])).toEqual([
        ['component-nesting', 'recipes/both.md'],
      ])
      expect(problems[0]?.reason).toContain('`both → step-50 → step-49 → … →')
    }
  })

  test('ten thousand deep, as many as a folder holds, are refused and not fallen over', () => {
    const {computed, problems} = computeCookbook(cookbook([flour], chain(limits.folderFiles - 1)))
    expect(problems.map(({ruleId}) => ruleId)).toEqual(['component-nesting'])
    expect(computed.size).toBe(51)
  })
})

describe('a circle', () => {
  test('is told where it closes; recipes on and behind it are not computed, others are', () => {
    const recipes = [
      recipe('menu', [uses('a'), uses('plain')], weighed),
      recipe('a', [uses('b')], weighed),
      recipe('b', [line('flour', 50), uses('c')], weighed),
      recipe('c', [uses('a'), uses('nowhere')], weighed),
      recipe('plain', [line('flour', 100)], weighed),
    ]
    const {computed, problems} = computeCookbook(cookbook([flour], recipes))
    expect(problems).toMatchObject([
      {
        ruleId: 'component-loop',
        file: 'recipes/c.md',
        reason: expect.stringContaining('`a → b → c → a`'),
      },
    ])
    expect([...computed.keys()]).toEqual(['plain'])
  })

  test('of ten thousand recipes is told whole', () => {
    const last = limits.folderFiles - 1
    const recipes = chain(last).with(-1, recipe('step-0', [uses(`step-${last}`)], weighed))
    const {computed, problems} = computeCookbook(cookbook([flour], recipes))
    expect(problems.map(({ruleId}) => ruleId)).toEqual(['component-loop'])
    expect(computed.size).toBe(0)
  })
})
