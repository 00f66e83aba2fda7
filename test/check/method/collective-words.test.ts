/** Words of a method that name no ingredient and mean one all the same, as cooks write them. */

import {describe, expect, test} from 'vitest'
import {everything, standsFor} from '../../../src/check/method/collective-words.ts'
import type {Food, Trait} from '../../../src/food/food.ts'
import {computeCookbook} from '../../../src/nutrition/compute-cookbook.ts'
import type {ComputedLine} from '../../../src/nutrition/computed.ts'
import {at, cookbook, food, grams, line, recipe} from '../../kitchen.ts'

/** A line of a food whose own name is in no text here. */
function lineOf(more: Partial<Food>, name = 'xx'): ComputedLine {
  const {computed} = computeCookbook(
    cookbook([food(name, {energy: 1}, {from: [], ...more})], [recipe('dish', [line(name, 1)])]),
  )
  const [first] = computed.get('dish')?.lines ?? []
  if (!first) throw new Error('not computed')
  return first
}

const traits = (...each: readonly Trait[]) => lineOf({traits: new Set(each)})

describe('one word for a kind', () => {
  test.each([
    ['Tie up the bouquet of herbs.', traits('herb')],
    ['Scatter the garnish over it.', traits('herb')],
    ['Toast the spices.', traits('spice')],
    ['Season to taste.', traits('salt')],
    ['Stir in the salted butter.', traits('salt')],
    ['Dust the board.', traits('flour')],
    ['Grease the tin.', traits('fat')],
    ['Bring the liquid to the boil.', traits('stock')],
    ['Pour in the broth.', traits('stock')],
    ['Squeeze the juice over it.', traits('juice')],
    ['Let the alcohol cook off.', traits('alcohol')],
    ['Sweeten it.', traits('sugar')],
    ['Sweeten it.', traits('sweetener')],
    ['Rinse the grains.', traits('rice')],
    ['Drain the pulses.', traits('kidney bean')],
    ['Fry the aromatics.', traits('garlic')],
    ['Shape the patties.', traits('ground')],
    ['Chop the nuts.', traits('nut')],
    ['Whisk in the powder.', traits('protein powder')],
    ['Rest the steak.', lineOf({from: ['beef']})],
    ['Turn the chops.', lineOf({from: ['pork']})],
    ['Carve the joint.', lineOf({from: ['lamb']})],
    ['Brown the meat.', lineOf({from: ['veal']})],
    ['Brown the meat.', lineOf({from: ['game']})],
    ['Turn the bird.', lineOf({from: ['poultry']})],
    ['Lay the fillets in.', lineOf({from: ['fish']})],
    ['Add the seafood.', lineOf({from: ['crustacean']})],
    ['Add the shellfish.', lineOf({from: ['mollusc']})],
    ['Beat the yolks.', lineOf({from: ['egg']})],
    ['Roast the vegetables.', lineOf({aisle: 'vegetables'})],
    ['Wash the salad.', lineOf({aisle: 'vegetables'})],
    ['Fold in the berries.', lineOf({aisle: 'fruit'})],
    ['Scatter the seeds.', lineOf({aisle: 'nuts'})],
    ['Mash the beans.', lineOf({aisle: 'pulses'})],
    ['Fluff the grain.', lineOf({aisle: 'grains'})],
    ['Toast the slices.', lineOf({aisle: 'breads'})],
    ['Drain the tins.', lineOf({state: 'canned'})],
    ['Bring to the boil.', lineOf({}, 'xx water')],
    ['Poach them in it.', lineOf({}, 'xx water')],
    ['Add the cress.', lineOf({}, 'watercress')],
    ['Keep on salting.', lineOf({}, 'salt')],
  ] as const)('%s', (text, one) => {
    expect(standsFor(text)(one)).toBe(true)
  })

  test('nothing else is meant by it', () => {
    const pea = lineOf({from: ['plant'], aisle: 'other'})
    for (const text of ['Season to taste.', 'Brown the meat.', 'Drain the tins.', 'Boil it.', '']) {
      expect(standsFor(text)(pea), text).toBe(false)
    }
    // Three letters are too few to tell a compound by its end.
    expect(standsFor('Stir the ess.')(lineOf({}, 'watercress'))).toBe(false)
  })
})

describe('halves of a batter', () => {
  const dry = 'Mix the dry ingredients.'
  const wet = 'Stir in the wet ingredients.'

  test.each(['flour', 'sugar', 'salt', 'leavening', 'spice', 'sweetener'] as const)(
    '%s is dry',
    (trait) => {
      expect(standsFor(dry)(traits(trait))).toBe(true)
      expect(standsFor(wet)(traits(trait))).toBe(false)
    },
  )

  test.each(['liquid', 'juice', 'fat', 'alcohol'] as const)('%s is wet', (trait) => {
    expect(standsFor(wet)(traits(trait))).toBe(true)
    expect(standsFor(dry)(traits(trait))).toBe(false)
  })

  test('what is dry on the shelf is dry; eggs and dairy are wet; a carrot is neither', () => {
    expect(standsFor(dry)(lineOf({state: 'dry'}))).toBe(true)
    for (const from of ['egg', 'dairy'] as const) {
      expect(standsFor(wet)(lineOf({from: [from]})), from).toBe(true)
    }
    const carrot = lineOf({from: ['plant'], state: 'raw'})
    for (const text of [dry, wet]) expect(standsFor(text)(carrot), text).toBe(false)
  })

  test('a component is wet', () => {
    const one = food('xx', {energy: 1})
    const base = recipe('base', [line('xx', 1)], {serves: at(1), batch: at(grams(1))})
    const dish = recipe('dish', [line('yy', 1, {recipe: at('base')})])
    const {computed} = computeCookbook(cookbook([one], [base, dish]))
    const [part] = computed.get('dish')?.lines ?? []
    expect(part && standsFor(wet)(part)).toBe(true)
    expect(part && standsFor(dry)(part)).toBe(false)
    expect(part && standsFor('Pour in the base.')(part)).toBe(true)
  })

  test.each(['Stir the dry into the wet mix.', 'Fold the dry mixture in.', 'Add the dry things.'])(
    '%s',
    (text) => {
      expect(standsFor(text)(traits('flour'))).toBe(true)
    },
  )
})

test('words for all there is', () => {
  for (const text of ['Mix everything.', 'Tip the lot in.', 'Add the remaining ingredients.']) {
    expect(everything.test(text), text).toBe(true)
  }
  for (const text of ['Every hour, stir.', 'The rest goes in. Ingredients vary.', 'A lot.']) {
    expect(everything.test(text), text).toBe(false)
  }
})
