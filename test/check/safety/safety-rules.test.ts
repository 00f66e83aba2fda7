import {describe, expect, test} from 'vitest'
import {type DishText, findingsIn, pointedAt, ruleIdsIn} from '../check-text.ts'

/** Minimum temperatures as published: USDA FSIS and foodsafety.gov chart (2019). */
const chart = [
  ['chicken thigh, skinless', 'chicken', 74, 165, 'poultry-temperature'],
  ['turkey mince', 'mince', 74, 165, 'poultry-temperature'],
  ['beef mince, 20 % fat', 'mince', 71, 160, 'ground-meat-temperature'],
  ['rib-eye steak', 'steak', 63, 145, 'meat-temperature'],
  ['pork loin', 'pork', 63, 145, 'meat-temperature'],
] as const

function dish(name: string, method: string, front: readonly string[] = []): DishText {
  return {ingredients: [`${name}: 500 g`], method, front}
}

describe('minimum temperatures', () => {
  test.each(chart)('%s', (name, word, celsius, fahrenheit, ruleId) => {
    const cook = (until: string) =>
      ruleIdsIn(dish(name, `Fry the ${word} ${until}. Rest it for 3 minutes.`))
    expect(cook('until brown')).toEqual([ruleId])
    expect(cook(`until it is ${celsius} °C inside`)).toEqual([])
    expect(cook(`to an internal temperature of ${fahrenheit}F`)).toEqual([])
    expect(cook(`until it is ${celsius - 2} °C inside`)).toEqual(['temperature-too-low'])
    expect(cook(`to an internal temperature of ${fahrenheit - 1} °F`)).toEqual([
      'temperature-too-low',
    ])
  })

  test('an hour of simmering needs no thermometer', () => {
    expect(ruleIdsIn(dish('chicken thigh, skinless', 'Simmer the chicken for 1 hour.'))).toEqual([])
    expect(ruleIdsIn(dish('chicken thigh, skinless', 'Simmer the chicken for 40 min.'))).toEqual([
      'poultry-temperature',
    ])
  })

  test('what simmers or is measured does not heat what is added raw behind it', () => {
    const beside = (...method: string[]) =>
      findingsIn({
        ingredients: ['pork loin: 500 g', 'chicken thigh, skinless: 300 g', 'pearl barley: 200 g'],
        method: method.join('\n\n'),
      }).map(({ruleId, reason}) => [ruleId, reason.includes('is never heated')])
    const barley = 'Simmer the barley and the chicken for 1 hour.'
    expect(beside(barley, 'Slice the pork over the barley.')).toEqual([['meat-temperature', true]])
    expect(beside('Roast the chicken to 74 °C inside on the barley. Serve the pork.')).toEqual([
      ['meat-temperature', true],
    ])
    expect(beside('Simmer the barley, the chicken and the pork for 1 hour.')).toEqual([])
    expect(beside(barley, 'Add the pork and simmer for 1 hour.')).toEqual([])
    expect(
      beside('Put everything into a pot and simmer it for 1 hour.', 'Shred the pork.'),
    ).toEqual([])
    expect(beside(barley, 'Brown the pork and stir it in.')).toEqual([])
  })

  test('cooked meat, stock and bacon are not raw', () => {
    expect(ruleIdsIn(dish('chicken meat, skinless, roasted', 'Warm the chicken.'))).toEqual([])
    expect(ruleIdsIn(dish('chicken stock', 'Heat the stock.'))).toEqual([])
  })

  test('whole meat needs its rest', () => {
    const steak = (method: string) => ruleIdsIn(dish('rib-eye steak', method))
    expect(steak('Fry the steak to 63 °C inside.')).toEqual(['meat-temperature'])
    expect(steak('Fry the steak to 63 °C inside, rest it 2 minutes.')).toEqual(['meat-temperature'])
    expect(steak('Fry the steak to 63 °C inside, rest it 3 minutes.')).toEqual([])
    expect(steak('Fry the steak to 71 °C inside.')).toEqual([])
  })

  test('points at the temperature that is too low, and stops the build', () => {
    const text = dish(
      'chicken thigh, skinless',
      'Roast the chicken at 200 °C until it reads 65 °C inside.',
    )
    const [finding] = findingsIn(text)
    expect(finding).toMatchObject({severity: 'error', expected: ['74 °C (165 °F)']})
    expect(finding && pointedAt(text, finding)).toBe('65 °C')
  })

  test('keeps two meats apart by the sentence', () => {
    const both = (method: string) =>
      ruleIdsIn({ingredients: ['chicken thigh, skinless: 300 g', 'salmon, farmed: 300 g'], method})
    expect(both('Roast the chicken to 74 °C inside. Bake the salmon to 63 °C inside.')).toEqual([])
    expect(both('Roast the chicken to 63 °C inside. Bake the salmon to 63 °C inside.')).toEqual([
      'temperature-too-low',
    ])
  })

  test.each([
    ['Bake the salmon for 12 min.', ['fish-temperature']],
    ['Bake the salmon until it flakes.', []],
    ['Bake the salmon until it is 63 °C inside.', []],
    ['Bake the salmon until it is 52 °C inside.', ['temperature-too-low']],
  ])('%s', (method, expected) => {
    expect(ruleIdsIn(dish('salmon, farmed', method))).toEqual(expected)
  })

  // US FDA, Food Code 2022, 3-401.11(A)(1), from memory: fish, shellfish among it, 63 °C (145 °F).
  test.each([
    ['Fry the prawns for 3 min.', ['fish-temperature']],
    ['Fry the prawns until opaque.', []],
    ['Fry the prawns until they are 63 °C inside.', []],
    ['Fry the prawns until they are 50 °C inside.', ['temperature-too-low']],
  ])('%s', (method, expected) => {
    expect(ruleIdsIn(dish('prawns', method))).toEqual(expected)
  })

  test.each([
    ['Bake the eggs and milk in the oven.', ['egg-dish-temperature']],
    ['Bake the eggs and milk in the oven until set.', []],
    ['Bake the eggs and milk to 71 °C inside.', []],
    ['Heat the eggs and milk, stirring, to 82 °C.', []],
    ['Hard-boil the eggs; serve with milk.', []],
  ])('%s', (method, expected) => {
    expect(ruleIdsIn({ingredients: ['egg: 300 g', 'milk: 200 g'], method})).toEqual(expected)
  })

  test('a cake is no egg dish', () => {
    const ingredients = ['egg: 150 g', 'plain flour: 150 g', 'sugar: 150 g']
    expect(
      ruleIdsIn({ingredients, method: 'Whisk eggs and sugar, fold in the flour, bake.'}),
    ).toEqual([])
  })
})

describe('raw-egg', () => {
  test.each([
    ['Whisk the egg with the oil and chill.', ['raw-egg']],
    ['Toast some bread. Whisk the egg with the oil and chill.', []],
    ['Whisk the egg with the oil over a pan of simmering water. Chill.', ['raw-egg']],
    ['Whisk the egg, pasteurised if small children eat with you, with the oil.', []],
    ['Soft-boil the egg, dress with oil.', ['raw-egg']],
    ['Boil the egg for 10 minutes until firm, dress with oil.', []],
  ])('%s', (method, expected) => {
    const found = ruleIdsIn({ingredients: ['egg: 60 g', 'olive oil: 100 g'], method})
    if (method.startsWith('Toast')) expect(found).toEqual(['raw-egg'])
    else expect(found).toEqual(expected)
  })
})

describe('raw-flour', () => {
  const dough = (method: string, front: readonly string[] = []) =>
    ruleIdsIn({ingredients: ['plain flour: 100 g', 'butter: 80 g'], method, front})

  test.each([
    ['Mix the flour and butter and roll into balls. Chill.', ['raw-flour']],
    ['Mix the flour and butter, bake until golden.', []],
    ['Mix the heat-treated flour and butter. Chill.', []],
    ['No baking needed: mix the flour and butter.', ['raw-flour']],
    ['Melt the butter in a hot pan. Stir in the flour, roll into balls and chill.', ['raw-flour']],
    ['Melt the butter in a hot pan. Stir in the flour and cook until thick. Chill.', []],
    ['Melt the butter in a hot pan. Stir in the flour. Chill, then bake.', []],
    [
      'Rub the butter into the flour and bake half of it. Eat the rest of the dough raw.',
      ['raw-flour'],
    ],
    ['Rub the butter into the flour and bake it. Lick the bowl.', ['raw-flour']],
    ['Rub the butter into the flour and bake it. Do not eat the raw dough.', []],
    ['Rub the butter into the flour; the raw dough keeps 3 days in the fridge. Bake it.', []],
    ['Rub the butter into the flour and bake it. Serve in a bowl.', []],
  ])('%s', (method, expected) => {
    expect(dough(method)).toEqual(expected)
  })

  test('a dough that another recipe bakes is no dish', () => {
    expect(dough('Mix the flour and butter.', ['yield: 180 g'])).toEqual([])
  })
})

describe('single foods', () => {
  test.each([
    ['Mix. Good for babies from 8 months.', ['honey-for-infants']],
    ['Mix the honey with baby spinach.', []],
    ['Mix the honey in. Not for babies under 12 months.', []],
  ])('honey: %s', (method, expected) => {
    expect(ruleIdsIn({ingredients: ['honey: 20 g'], method: `${method} Everything in.`})).toEqual(
      expected,
    )
  })

  test.each([
    ['Soak the beans overnight, boil hard for 10 minutes, then simmer for 1 h.', []],
    ['Boil the beans rapidly for half an hour.', []],
    ['Cook the beans in a pressure cooker.', []],
    ['Soak the beans, bring to the boil and simmer for 90 min.', ['kidney-beans-boiled']],
    ['Put the beans into the slow cooker for 8 hours.', ['kidney-beans-boiled']],
    ['Boil the beans for 5 minutes.', ['kidney-beans-boiled']],
  ])('kidney beans: %s', (method, expected) => {
    expect(ruleIdsIn({ingredients: ['kidney beans: 200 g'], method})).toEqual(expected)
  })

  test('tinned kidney beans were boiled', () => {
    expect(
      ruleIdsIn({ingredients: ['kidney beans, canned, drained: 200 g'], method: 'Warm the beans.'}),
    ).toEqual([])
  })

  test.each([
    ['Boil the rice. Keep it warm until everyone is back.', ['rice-held-warm']],
    ['Boil the rice. Leave it at room temperature for 4 hours.', ['rice-held-warm']],
    ['Boil the rice and leave it on the warm setting.', ['rice-held-warm']],
    ['Boil the rice. Keep it warm, above 60 °C, until everyone is back.', []],
    ['Boil the rice. Keep it warm for 10 minutes.', []],
    ['Boil the rice. Keep it warm until served.', ['rice-held-warm']],
    ['Boil the rice. Keep warm until ready to serve.', ['rice-held-warm']],
    ['Boil the rice. Keep it warm until you serve it, 20 minutes at most.', []],
    ['Boil the rice. Keep it warm while you fry the fish.', []],
    ['Boil the rice. Keep it warm until the sauce is ready.', []],
    ['Boil the rice and serve.', []],
  ])('rice: %s', (method, expected) => {
    expect(ruleIdsIn({ingredients: ['rice: 200 g'], method})).toEqual(expected)
  })

  const oil = ['garlic: 50 g', 'olive oil: 200 g']
  test.each<readonly [string, readonly string[], readonly string[]]>([
    ['Cover the garlic with oil and close the jar.', [], ['garlic-in-oil']],
    ['Cover the garlic with oil, keep in the fridge.', ['keeps: { fridge: 4 days }'], []],
    ['Cover the garlic with oil.', ['keeps: { room: 7 days }'], ['garlic-in-oil']],
    ['Fry the garlic in the oil.', [], []],
    ['Crush the garlic into the oil.', ['keeps: { room: 7 days }'], ['garlic-in-oil']],
  ])('garlic: %s %s', (method, front, expected) => {
    expect(ruleIdsIn({ingredients: oil, front, method})).toEqual(expected)
  })

  test.each([
    ['Mix a marinade of the oil, pour the marinade over the chicken. Grill to 74 °C inside.', []],
    [
      'Marinate the chicken in the oil. Grill to 74 °C inside, basting with the marinade.',
      ['marinade-boiled'],
    ],
    [
      'Marinate the chicken in the oil. Grill to 74 °C inside. Boil the marinade and serve with the leftover marinade.',
      [],
    ],
    [
      'Marinate the chicken in the oil, having set aside some marinade. Grill to 74 °C inside; serve with the reserved marinade.',
      [],
    ],
    [
      'Marinate the chicken in the oil. Grill to 74 °C inside and drizzle with the remaining marinade.',
      ['marinade-boiled'],
    ],
  ])('marinade: %s', (method, expected) => {
    expect(
      ruleIdsIn({ingredients: ['chicken thigh, skinless: 500 g', 'olive oil: 30 g'], method}),
    ).toEqual(expected)
  })
})

// Cold Food Storage Chart, foodsafety.gov: soups and stews, cooked meat and poultry 3–4 days;
// gravy and broth 1–2 days. Freezer: soups 2–3 months, cooked meat 2–6 months.
describe('keeping', () => {
  const later = 'Cool in shallow boxes within 2 hours. Reheat to 74 °C all through.'
  const kept = (title: string, name: string, keeps: string) =>
    ruleIdsIn(
      dish(name, `Cook everything to 74 °C inside. ${later}`, [
        `title: ${title}`,
        `keeps: { ${keeps} }`,
      ]),
    )

  test.each([
    ['Chicken pot', 'chicken thigh, skinless', 'fridge: 4 days', []],
    ['Chicken pot', 'chicken thigh, skinless', 'fridge: 5 days', ['keeps-guidance']],
    ['Chicken stock', 'chicken thigh, skinless', 'fridge: 2 days', []],
    ['Chicken stock', 'chicken thigh, skinless', 'fridge: 3 days', ['keeps-guidance']],
    ['Leek soup', 'leek', 'fridge: 4 days', []],
    ['Leek soup', 'leek', 'fridge: 1 week', ['keeps-guidance']],
    ['Chicken pot', 'chicken thigh, skinless', 'room: 1 day', ['keeps-guidance']],
    ['Chicken pot', 'chicken thigh, skinless', 'room: 2 h', []],
    ['Chicken pot', 'chicken thigh, skinless', 'freezer: 6 months', []],
    ['Chicken pot', 'chicken thigh, skinless', 'freezer: 7 months', ['freezer-quality']],
    ['Granola', 'rolled oats', 'room: 30 days', []],
    ['Flatbread', 'plain flour', 'room: 3 days', []],
  ])('%s of %s keeps %s', (title, name, keeps, expected) => {
    expect(kept(title, name, keeps)).toEqual(expected)
  })

  test('counts what a component brings', () => {
    const stock =
      '---\ntitle: Stock\nyield: 500 g\ningredients:\n  chicken thigh, skinless: 500 g\n---\n\nSimmer for 2 hours.\n'
    const text = {
      ingredients: ['brown stock: { amount: 200 g, recipe: stock }', 'leek: 100 g'],
      front: ['keeps: { fridge: 6 days }'],
      method: `Simmer the leek in the stock. ${later}`,
      others: {stock},
    }
    expect(ruleIdsIn(text)).toEqual(['keeps-guidance'])
  })

  test.each([
    ['Cook everything to 74 °C inside.', ['cooling-said', 'reheating-said']],
    ['Cook everything to 74 °C inside. Cool within 2 hours.', ['reheating-said']],
    ['Cook everything to 74 °C inside. Reheat to 74 °C.', ['cooling-said']],
    ['Cook everything to 74 °C inside. Cool it quickly; good cold the next day.', []],
    [`Cook everything to 74 °C inside. ${later}`, []],
  ])('%s', (method, expected) => {
    expect(
      ruleIdsIn(dish('chicken thigh, skinless', method, ['keeps: { fridge: 3 days }'])),
    ).toEqual(expected)
  })
})
