import {describe, expect, test} from 'vitest'
import {examine} from '../../src/build.ts'
import {kitchen} from '../preview/kitchen.ts'

/** Two weights that are not what their measures weigh: SR28, a clove of garlic 3 g, 1 tsp of salt 6 g. */
function stew(accepted: string): string {
  return `---
title: Stew
serves: 2
yield: 900 g
accepted: ${accepted}
ingredients:
  pearl barley: 150 g
  water: 750 g
  garlic: 30 g (3 cloves)
  salt: 2 g (1 tsp)
---

Simmer the barley in the water with the garlic and the salt.
`
}

function found(accepted: string) {
  return examine(kitchen({stew: stew(accepted)}))
    .problems.filter(({ruleId}) => ruleId !== 'missing-stated')
    .map(({ruleId, severity, actual, accepted: because}) => ({ruleId, severity, actual, because}))
}

const warned = {ruleId: 'measure-weight', severity: 'warning'} as const

describe('an accepted rule', () => {
  test('is accepted wherever it speaks', () => {
    expect(found('{ measure-weight: our own spoons }')).toMatchObject([
      {actual: '30 g (3 cloves)', severity: 'note', because: 'our own spoons'},
      {actual: '2 g (1 tsp)', severity: 'note', because: 'our own spoons'},
    ])
  })

  test.each(['garlic', '30 g (3 cloves)'])('may be accepted for one finding: %s', (only) => {
    expect(found(`{ measure-weight: { ${only}: elephant garlic } }`)).toMatchObject([
      {actual: '30 g (3 cloves)', severity: 'note', because: 'elephant garlic'},
      {...warned, actual: '2 g (1 tsp)'},
    ])
  })

  test('may be accepted for several, each with its reason', () => {
    const both = '{ measure-weight: { garlic: elephant garlic, salt: coarse } }'
    expect(found(both).map(({because}) => because)).toEqual(['elephant garlic', 'coarse'])
  })

  test('of an ingredient that it says nothing about is told', () => {
    expect(found('{ measure-weight: { water: cold, garlic: elephant, salt: coarse } }')).toEqual(
      expect.arrayContaining([
        expect.objectContaining({
          ruleId: 'unused-acceptance',
          severity: 'warning',
          actual: 'water',
        }),
      ]),
    )
  })

  test('wants a reason for each', () => {
    const {problems} = examine(kitchen({stew: stew('{ measure-weight: { garlic: [] } }')}))
    expect(problems.map(({reason}) => reason)).toEqual(
      expect.arrayContaining([expect.stringContaining('garlic')]),
    )
    expect(problems.some(({severity}) => severity === 'error')).toBe(true)
  })
})
