import {describe, expect, test} from 'vitest'
import type {Settings} from '../../src/cookbook/cookbook.ts'
import type {Recipe} from '../../src/cookbook/recipe.ts'
import {cardPage} from '../../templates/card.tsx'
import {recipePage} from '../../templates/recipe.tsx'
import {at, line, recipe, siteWith, weight} from './sample.ts'
import {byClass, elements, textOf} from './tree.ts'

/** 100 g pearl barley and 30 g butter for one: 15.6 g fibre, 25.5 g fat, 15.6 g saturated. */
function dishWith(more: Partial<Recipe>, change: Partial<Settings> = {}) {
  const lines = [line('pearl barley', weight(100)), line('butter', weight(30))]
  const dish = recipe('dish', {serves: at(1), batch: at(weight(130)), groups: [{lines}], ...more})
  return siteWith(dish, change)
}

function claimsOn({site, computed}: ReturnType<typeof dishWith>): string | undefined {
  const [section] = elements(
    recipePage(site, computed).tree,
    ({properties}) => String(properties.ariaLabelledBy) === 'part-claims',
  )
  return section && textOf(section)
}

const high = {claims: [at('high fibre')]}

describe('claims', () => {
  test('stand on the page with whose law they follow', () => {
    const text = claimsOn(dishWith(high))
    expect(text).toContain('high fibre.')
    expect(text).toContain('By Regulation (EC) 1924/2006.')
    expect(text).not.toContain('See nutrition information')
  })

  // 21 CFR 101.13(h): more than 13 g of fat and 4 g of saturated fat in a serving are disclosed;
  // 101.54(d): a claim about fibre says the fat (from memory).
  test('bring along the sentences that the law wants beside them, on the card too', () => {
    const dish = dishWith(high, {rules: 'us'})
    const card = textOf(cardPage(dish.site, dish.computed).tree)
    for (const sentence of [
      'See nutrition information for fat and saturated fat content.',
      'Contains 26 g of total fat per serving.',
    ]) {
      expect(claimsOn(dish)).toContain(sentence)
      expect(card).toContain(sentence)
    }
  })

  test('are not repeated where the writer accepted that they do not hold', () => {
    const accepted = [{ruleId: at('nutrient-claim'), because: at('measured in a laboratory')}]
    expect(claimsOn(dishWith({...high, accepted}))).toBeUndefined()
    expect(claimsOn(dishWith({}))).toBeUndefined()
  })
})

test('the card repeats what the dish is free from', () => {
  const {site, computed} = dishWith({freeFrom: [at('egg')]})
  expect(textOf(cardPage(site, computed).tree)).toContain(
    'Free from, through every component and packet: egg.',
  )
})

test('a food stands beside a serving by the weight of the serving', () => {
  const comparison: Recipe['comparison'] = {
    food: at('butter'),
    basis: 'serving',
    statements: [{nutrient: 'energy', text: at('a third less')}],
  }
  const {site, computed} = dishWith({comparison})
  const [part] = byClass(recipePage(site, computed).tree, 'comparison')
  const text = part ? textOf(part) : ''
  expect(text).toContain('Compared by the weight of one serving.')
  // 130 g of butter at 717 kcal in 100 g.
  expect(text).toContain('932 kcal butter')
})
