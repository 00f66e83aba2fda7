import {describe, expect, test} from 'vitest'
import {type DishText, findingsIn, pointedAt, ruleIdsIn} from '../check-text.ts'

const pot = ['pearl barley: 180 g', 'carrot: 200 g', 'olive oil: 15 g', 'salt: 4 g']

function dish(method: string, more: Partial<DishText> = {}): DishText {
  return {ingredients: pot, method, ...more}
}

/** Uses every ingredient, so that only what a test is about can be found. */
const rest = 'Fry the carrot in the oil, salt it and add the barley.'

describe('ingredient-used', () => {
  test.each([
    rest,
    'Fry the [carrot](#carrot), add [it](#pearl-barley), [](#olive-oil) and [salt](#salt).',
    'Put all the ingredients into the pot.',
    'Put everything into the pot.',
    'Soften the vegetables in the fat, season, and add the grain.',
    'Carrots and barley go into the hot oil; season with salt.',
  ])('used: %s', (method) => {
    expect(ruleIdsIn(dish(method))).toEqual([])
  })

  test('names what the method leaves out, at its line', () => {
    const text = dish('Fry the carrot in the oil and salt it.')
    const [finding, ...others] = findingsIn(text)
    expect(others).toEqual([])
    expect(finding).toMatchObject({
      ruleId: 'ingredient-used',
      severity: 'warning',
      reason: 'Ingredient `pearl barley` is not in the method, expected a step that uses it',
    })
    expect(finding && pointedAt(text, finding)).toBe('pearl barley')
  })

  test('tells two oils apart where the method does', () => {
    const ingredients = ['olive oil: 15 g', 'sesame oil: 5 g', 'carrot: 200 g']
    expect(ruleIdsIn({ingredients, method: 'Fry the carrot in the olive oil.'})).toEqual([
      'ingredient-used',
    ])
    expect(ruleIdsIn({ingredients, method: 'Fry the carrot in the oils.'})).toEqual([])
  })

  test('says nothing of a recipe without a method', () => {
    expect(ruleIdsIn(dish(''))).toEqual([])
  })

  test('knows a group by its title', () => {
    const ingredients = [
      'For the dressing:',
      '  lemon juice: 10 g',
      '  olive oil: 10 g',
      'carrot: 1',
    ]
    expect(
      ruleIdsIn({
        ingredients: ['carrot: 200 g', ...ingredients.slice(0, 3)],
        method: 'Grate the carrot, mix the dressing.',
      }),
    ).toEqual([])
  })
})

describe('amounts-in-method', () => {
  test.each([
    'Fry the carrot in the oil, salt it and add 180 g barley.',
    'Fry the carrot in the oil, salt it and add 0.18 kg of the pearl barley.',
    'Fry 200 g carrot in 15 g of oil with 4 g salt; add the barley (180 g).',
    'Fry the carrot in the oil, salt it and add about 190 g barley.',
    'Fry the carrot in the oil with salt. Add 100 g of the barley and later the remaining 80 g of barley.',
    'Fry the carrot in the oil with salt. Add 100 g of the barley, keep the rest.',
    'Fry the carrot in the oil, salt it and add 6 1/2 oz barley.',
    'Fry the carrot, salt it, add barley and 1 tbsp olive oil.',
    'Shape the barley with carrot, oil and salt into cakes of 180 g; give 50 g barley each.',
    'Fry the carrot in the oil, salt it, add barley and 900 ml water.',
  ])('agrees: %s', (method) => {
    expect(ruleIdsIn(dish(method))).toEqual([])
  })

  test.each([
    ['Fry the carrot in the oil, salt it and add 200 g barley.', '200 g', '180 g'],
    ['Fry the carrot in the oil, salt it and add 150 g pearl barley.', '150 g', '180 g'],
    ['Fry the carrot in the oil, salt it and add the barley (160 g).', '160 g', '180 g'],
    ['Fry 2 lb of carrot in the oil, salt it and add the barley.', '2 lb', '200 g'],
    ['Fry the carrot in 3 tbsp olive oil, salt it and add the barley.', '3 tbsp', '15 g'],
    [
      'Fry the carrot in the oil with salt, then add 210 g [barley](#pearl-barley).',
      '210 g',
      '180 g',
    ],
    [
      'Fry the carrot in the oil with salt. Add 100 g of the barley and the remaining 120 g of the barley.',
      '120 g',
      '180 g',
    ],
  ])('differs: %s', (method, actual, expected) => {
    const text = dish(method)
    const [finding, ...others] = findingsIn(text)
    expect(others).toEqual([])
    expect(finding).toMatchObject({ruleId: 'amounts-in-method', actual, expected: [expected]})
    expect(finding && pointedAt(text, finding)).toBe(actual)
  })

  test('lets a rounded last digit pass and nothing more', () => {
    const add = (amount: string) =>
      ruleIdsIn(dish(`Fry the carrot in the oil, salt it and add ${amount} barley.`))
    expect(add('180.4 g')).toEqual([])
    expect(add('182 g')).toEqual(['amounts-in-method'])
  })

  test('counts pieces', () => {
    const ingredients = ['egg: 3 large', 'milk: 100 g']
    const fry = (eggs: string) =>
      ruleIdsIn({ingredients, method: `Whisk ${eggs} eggs with the milk; bake until set.`})
    expect(fry('3')).toEqual([])
    expect(fry('three')).toEqual([])
    expect(fry('4')).toEqual(['amounts-in-method'])
  })
})

describe('total-in-method', () => {
  const mix = ['pearl barley: 180 g', 'carrot: 200 g']

  test.each([
    ['Weigh the barley and the carrot, 380 g in total.', []],
    ['Weigh the barley and the carrot, 400 g in total.', ['total-in-method']],
    ['Add all 200 g of the carrot to the barley.', []],
    ['Add all 170 g of the carrot to the barley.', ['amounts-in-method']],
    ['Mix barley and carrot. Add all 380 g.', []],
    ['Mix barley and carrot. Add all 170 g.', ['total-in-method']],
  ])('%s', (method, expected) => {
    expect(ruleIdsIn({ingredients: mix, method})).toEqual(expected)
  })
})

describe('oven-in-method', () => {
  const bake = (oven: string, method: string) =>
    findingsIn(dish(`${rest} ${method}`, {front: [`oven: ${oven}`]}))

  test.each([
    ['200 °C', 'Bake in the oven at 200 °C.'],
    ['200 °C', 'Bake in the oven at 200C/180C fan/gas 6.'],
    ['200 °C', 'Heat the oven to 220 °C. After 10 min turn the oven down to 200 °C.'],
    ['200 °C', 'Heat a fan oven to 180 °C.'],
    ['200 °C', 'Heat the oven to 400 °F.'],
    ['180 °C fan', 'Heat the oven to 200 °C.'],
    ['200 °C', 'Bake until brown.'],
    ['200 °C', 'Bake to 96 °C inside.'],
    ['hot', 'Heat the oven to 180 °C.'],
  ])('%s: %s', (oven, method) => {
    expect(bake(oven, method)).toEqual([])
  })

  test.each([
    ['200 °C', 'Heat the oven to 180 °C.', '180 °C'],
    ['200 °C', 'Heat the oven to 350 °F.', '350 °F'],
    ['200 °C', 'Heat the oven to gas mark 4.', 'gas mark 4'],
    ['180 °C fan', 'Heat a fan oven to 160 °C.', '160 °C'],
  ])('%s against %s', (oven, method, actual) => {
    expect(bake(oven, method)).toMatchObject([{ruleId: 'oven-in-method', actual, expected: [oven]}])
  })
})

describe('scales-agree', () => {
  test.each([
    ['Bake at 180 °C (350 °F).', []],
    ['Bake at 180 °C/350 °F/gas 4.', []],
    ['Bake at 200 °C (180 °C fan), gas 6.', []],
    ['Cook it to 74 °C (165 °F) inside.', []],
    ['Bake at 180 °C until it is 205 °F inside.', []],
    ['Bake at 350 °F (180 °C).', []],
    ['Bake at 350 °F (325 °F convection).', []],
    ['Bake at 180 °C (350 °F), then at 200 °C (400 °F).', []],
    ['Bake at 180 °C, fan 160 °C, gas 4.', []],
    ['Bake at 350 °F (200 °C).', ['scales-agree']],
    ['Bake at 350 °F (gas 7).', ['scales-agree']],
    ['Bake at 180 °C (200 °C fan).', ['scales-agree']],
    ['Bake at 200 °C (140 °C fan).', ['scales-agree']],
    ['Bake at 180 °C (400 °F).', ['scales-agree']],
    ['Bake at 180 °C (gas 7).', ['scales-agree']],
    ['Cook it to 74 °C (160 °F) inside.', ['scales-agree']],
  ])('%s', (method, expected) => {
    expect(ruleIdsIn(dish(`${rest} ${method}`))).toEqual(expected)
  })
})

describe('pan-in-method', () => {
  const inPan = (pan: string, method: string) =>
    ruleIdsIn(dish(`${rest} ${method}`, {front: [`pan: ${pan}`]}))

  test.each([
    ['{ round: 24 cm }', 'Line a 24 cm round tin.', []],
    ['{ round: 24 cm }', 'Line a tin.', []],
    ['{ round: 20 cm }', 'Line an 8-inch springform tin.', []],
    ['{ rectangle: 23 x 33 cm }', 'Line a 33 x 23 cm dish.', []],
    ['{ round: 24 cm }', 'Fry in a 28 cm frying pan, then fill a 24 cm tin.', []],
    ['{ round: 24 cm }', 'Line a 26 cm round tin.', ['pan-in-method']],
    ['{ round: 24 cm }', 'Line a 24 cm square tin.', ['pan-in-method']],
    ['{ rectangle: 23 x 33 cm }', 'Line a 20 x 30 cm dish.', ['pan-in-method']],
  ])('%s: %s', (pan, method, expected) => {
    expect(inPan(pan, method)).toEqual(expected)
  })
})

describe('times', () => {
  const timed = (time: string, method: string) =>
    findingsIn(dish(`1. ${rest}\n2. ${method}`, {front: [`time: { ${time} }`]}))

  test.each([
    ['total: 60 min', 'Simmer for 45 min, rest for 10 min.'],
    ['total: 60 min', 'Simmer for 60 min.'],
    ['total: 60 min', 'Simmer for 50 to 80 min.'],
    ['total: 60 min', 'Simmer for 50 min. Meanwhile soak the rest for 30 min.'],
    ['total: 60 min', 'Simmer for 50 min, or 8 hours in a slow cooker.'],
    ['total: 60 min', 'Simmer for 50 min. It keeps 3 days in the fridge.'],
    ['total: 60 min', 'Simmer for 50 min, stirring every 5 minutes. After 20 minutes add water.'],
    ['total: 60 min', 'Chill for 30 min or overnight.'],
    ['total: 60 min, hands-on: 20 min', 'Knead for 10 minutes, simmer for 50 min.'],
  ])('%s: %s', (time, method) => {
    expect(timed(time, method)).toEqual([])
  })

  test.each([
    ['total: 20 min', 'Simmer for 45 min.', 'steps-fit-time', '45 min'],
    ['total: 60 min', 'Simmer for 45 min, rest for 20 min.', 'steps-fit-time', '1 h 5 min'],
    ['total: 60 min', 'Chill overnight.', 'steps-fit-time', '8 h'],
    ['total: 60 min, hands-on: 5 min', 'Knead for 10 minutes.', 'hands-on-fits', '10 min'],
    ['total: 20 min, hands-on: 30 min', 'Simmer for 10 min.', 'hands-on-fits', '20 min'],
  ])('%s against %s', (time, method, ruleId, expected) => {
    expect(timed(time, method)).toMatchObject([{ruleId, expected: [expected]}])
  })
})

describe('component-ready', () => {
  const dough =
    '---\ntitle: Dough\nyield: 300 g\ntime: { total: 90 min }\ningredients:\n  plain flour: 200 g\n  water: 120 g\n---\n\nMix flour and water.\n'
  const flat = (method: string, time = '20 min') =>
    ruleIdsIn({
      ingredients: ['dough: { amount: 300 g, recipe: dough }'],
      front: [`time: { total: ${time} }`],
      method,
      others: {dough},
    })

  test('a long component in a short dish', () => {
    expect(flat('Roll out the dough and fry it.')).toEqual(['component-ready'])
  })

  test.each([
    ['Roll out the dough, made ahead, and fry it.', '20 min'],
    ['Take the dough from the fridge and fry it.', '20 min'],
    ['Roll out the dough and fry it.', '90 min'],
    ['Roll out the dough and fry it.', '2 h'],
  ])('%s in %s', (method, time) => {
    expect(flat(method, time)).toEqual([])
  })

  test('takes the steps of a component that states no time', () => {
    const slow = dough
      .replace('time: { total: 90 min }\n', '')
      .replace('water.', 'water. Rest for 1 hour.')
    const text = {
      ingredients: ['dough: { amount: 300 g, recipe: dough }'],
      front: ['time: { total: 20 min }'],
      method: 'Fry the dough.',
      others: {dough: slow},
    }
    expect(findingsIn(text)[0]?.reason).toBe(
      'Component `dough` takes `1 h`, expected no more than the `20 min` of the dish, or a word that it is made ahead',
    )
  })
})
