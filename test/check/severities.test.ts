import {describe, expect, test} from 'vitest'
import {examine} from '../../src/build.ts'
import type {Problem} from '../../src/cookbook/problem.ts'

const dish = `---
title: Porridge
serves: 1
ingredients:
  rolled oats: 50 g
  water: 200 g
---

1. Simmer the [oats](#rolled-oats) in the [water](#water). ![](../images/bowl.svg)
`

function problems(checks: string, front = ''): readonly Problem[] {
  return examine({
    sources: {
      texts: [
        {path: 'cookbook.yaml', text: `title: Test\n${checks}\n`},
        {path: 'recipes/porridge.md', text: dish.replace('serves: 1', `serves: 1${front}`)},
      ],
      images: [{path: 'bowl.svg', bytes: new Uint8Array()}],
    },
    problems: [],
  }).problems
}

function told(found: readonly Problem[]): readonly string[] {
  return found.map(({ruleId, severity}) => `${ruleId} ${severity}`)
}

describe('severities in cookbook.yaml', () => {
  test('are the rules’ own where nothing is said', () => {
    expect(told(problems(''))).toEqual(['missing-stated note', 'image-alternative warning'])
  })

  test('change a rule that checks, and a warning from reading', () => {
    expect(told(problems('checks: { missing-stated: error, image-alternative: note }'))).toEqual([
      'missing-stated error',
      'image-alternative note',
    ])
  })

  test('silence both', () => {
    expect(problems('checks: { missing-stated: off, image-alternative: off }')).toEqual([])
  })

  test('of a rule that does not exist are told, with the nearest', () => {
    expect(problems('checks: { missing-statd: off }')[0]).toMatchObject({
      ruleId: 'known-rule',
      severity: 'error',
      file: 'cookbook.yaml',
      place: {start: {line: 2, column: 11}},
      reason: 'Rule `missing-statd` does not exist, expected `missing-stated`',
      expected: ['missing-stated'],
    })
  })

  test('of what keeps a recipe from being computed cannot be changed', () => {
    const found = problems('checks: { unknown-food: off, known-key: note }', '\nservs: 2')
    expect(told(found)).toEqual([
      'known-rule error',
      'known-rule error',
      'known-key error',
      'image-alternative warning',
    ])
    expect(found[0]?.reason).toContain('cannot be changed')
  })
})

describe('a finding of a rule about the whole cookbook', () => {
  const base = `---
title: Base
yield: 200 g
accepted: { component-used: for guests who ask, missing-stated: nobody logs it }
ingredients: { water: 200 g }
---

1. Heat the [water](#water).
`
  function inBase(text: string): readonly Problem[] {
    const texts = [
      {path: 'recipes/base.md', text},
      {path: 'recipes/porridge.md', text: dish},
    ]
    const {problems: found} = examine({sources: {texts, images: []}, problems: []})
    return found.filter(({file}) => file === 'recipes/base.md')
  }

  test('is accepted in the recipe it is about, with the reason', () => {
    expect(inBase(base).map(({ruleId, severity, note}) => [ruleId, severity, note])).toEqual([
      ['missing-stated', 'note', 'Accepted: nobody logs it'],
      ['component-used', 'note', 'Accepted: for guests who ask'],
    ])
  })

  test('that does not occur is told', () => {
    expect(told(inBase(base.replace('yield: 200 g', 'yield: 200 g\nserves: 2')))).toContain(
      'unused-acceptance warning',
    )
  })
})
