import {describe, expect, test} from 'vitest'
import {findingsIn} from './check-text.ts'

const dish = {
  ingredients: ['oat crackers: 100 g'],
  front: ['stated: { carbohydrate: 15 g }'],
  method: 'Toast the [crackers](#oat-crackers).',
}

const packet = (figures: string, rules: 'us' | 'eu') =>
  `oat crackers:\n  label: { per: 30 g, ${figures}, rules: ${rules} }\n`

function reasons(figures: string, of: 'us' | 'eu', cookbook: 'us' | 'eu'): readonly string[] {
  const settings = [`rules: ${cookbook}`]
  return findingsIn({...dish, settings, foods: packet(figures, of)})
    .filter(({ruleId}) => ruleId === 'unknown-figure')
    .map(({reason}) => reason)
}

// 21 CFR 101.9(c)(6) counts fibre into carbohydrate, Regulation (EU) 1169/2011 Annex I does not.
describe('unknown-figure, where carbohydrate is worked out from the other kind', () => {
  const lacksFibre =
    'Stated carbohydrate `15 g` cannot be checked, expected a fibre figure for `oat crackers`'

  test('asks for the fibre that a US packet leaves out in an EU cookbook', () => {
    expect(reasons('carbohydrate: 18 g', 'us', 'eu')).toEqual([lacksFibre])
    expect(reasons('carbohydrate: 18 g, fibre: 2 g', 'us', 'eu')).toEqual([])
  })

  test('asks for the fibre that an EU packet leaves out in a US cookbook', () => {
    expect(reasons('carbohydrate: 18 g', 'eu', 'us')).toEqual([lacksFibre])
    expect(reasons('carbohydrate: 18 g, fibre: 2 g', 'eu', 'us')).toEqual([])
  })

  test('asks for the carbohydrate where that is what is not there', () => {
    expect(reasons('fibre: 2 g', 'us', 'us')).toEqual([
      'Stated carbohydrate `15 g` cannot be checked, expected a carbohydrate figure for `oat crackers`',
    ])
  })
})
