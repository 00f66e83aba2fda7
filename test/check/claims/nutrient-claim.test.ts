import {describe, expect, test} from 'vitest'
import {dishOf} from '../../../src/check/claims/dish.ts'
import {
  claimFor,
  claimsOf,
  judgeClaim,
  possibleClaims,
} from '../../../src/check/claims/judge-claim.ts'
import {claimSentences} from '../../../src/check/claims/sentences.ts'
import type {Recipe} from '../../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, grams, line, recipe} from '../../kitchen.ts'
import {findingsIn, pointedAt} from '../check-text.ts'
import {dishWith, type Per100g} from './kitchen-dish.ts'

describe('the tables of claims', () => {
  test.each(['us', 'eu'] as const)('%s: no word means two claims', (rules) => {
    const words = claimsOf[rules].flatMap(({name, also}) => [name, ...also])
    const plain = words.map((word) => word.toLowerCase().replaceAll('-', ' '))
    expect(new Set(plain).size).toBe(plain.length)
    for (const claim of claimsOf[rules]) expect(claimFor(claim.name, rules)).toBe(claim)
  })

  test('case, hyphens and the spelling of fibre do not matter', () => {
    expect(claimFor('High-Fiber', 'eu')?.name).toBe('high fibre')
    expect(claimFor('Fat Free', 'us')?.name).toBe('fat-free')
  })

  test('no claim holds for a dish of which nothing is known', () => {
    for (const rules of ['us', 'eu'] as const) {
      const names = possibleClaims(dishWith({}, {rules})).map(({name}) => name)
      // What was put in is known by the ingredients alone.
      expect(names.filter((name) => !name.startsWith('no added'))).toEqual([])
    }
  })
})

describe('the rule', () => {
  const settings = ['rules: eu']
  const lentils = ['lentils: 100 g']

  function found(
    claims: string,
    ingredients = lentils,
    more: readonly string[] = ['yield: 200 g'],
  ) {
    const front = ['serves: 1', ...more, `claims: [${claims}]`]
    const dish = {ingredients, front, method: 'Boil the lentils.', settings}
    return findingsIn(dish)
      .filter(({ruleId}) => ruleId === 'nutrient-claim')
      .map((problem) => ({...problem, at: pointedAt(dish, problem)}))
  }

  test('says nothing of claims that hold', () => {
    // USDA SR28, 16069 Lentils, raw: 24.63 g protein, 352 kcal, 10.7 g fibre, 1.06 g fat.
    expect(found('high protein, source of fibre, low fat')).toEqual([])
  })

  test('asks once for the dish that is missing beside it, whichever figure may be less', () => {
    expect(found('light').map(({reason}) => reason)).toEqual([
      'Claim `light` cannot be checked: nothing to compare it with, expected `compared with` and the usual dish or food',
    ])
  })

  test('says what was found, what the law wants, and what would hold', () => {
    const oats = ['rolled oats: 100 g']
    expect(found('source of fibre, high protein', oats, ['yield: 500 g'])).toMatchObject([
      {
        at: 'high protein',
        severity: 'error',
        // USDA SR28, 08120 Oats, regular and quick: 13.15 g of protein, about 15 % of the energy.
        reason: expect.stringMatching(
          /^Claim `high protein` with share of protein in the energy `1\d\.\d+ ± \d\.\d+ %`, expected `20 %` or more$/,
        ),
        expected: ['source of protein'],
        note: expect.stringContaining('Regulation (EC) 1924/2006'),
      },
    ])
  })

  test('names what is missing', () => {
    expect(found('low fat', lentils, [])).toMatchObject([
      {
        reason:
          'Claim `low fat` cannot be checked: no `yield`, expected `yield` to tell fat per 100 g',
      },
    ])
  })

  test.each([
    ['healthy', 'general health claim'],
    ['keto', 'carbohydrate'],
    ['gluten-free', 'suits'],
    ['90 % fat-free', 'forbids'],
    ['cholesterol-free', 'lists no such claim'],
    ['source of omega-3 fatty acids', 'fatty acids'],
    ['high unsaturated fat', 'fatty acids'],
    ['high in polyunsaturates', 'fatty acids'],
  ])('%s is no claim of the law', (word, note) => {
    const [problem] = found(`"${word}"`)
    expect(problem?.reason).toContain('is none that EU law gives conditions to')
    expect(problem?.note).toContain(note)
  })

  test('a slip of the pen gets the nearest claims', () => {
    expect(found('hihg protein')[0]?.expected).toContain('high protein')
  })
})

describe('nothing added', () => {
  function outcome(claim: string, ingredients: readonly string[], rules: 'us' | 'eu' = 'us') {
    const dish = {
      ingredients,
      front: ['serves: 1', 'yield: 100 g', `claims: [${claim}]`],
      method: 'Stir.',
      settings: [`rules: ${rules}`],
    }
    const problem = findingsIn(dish).find(({ruleId}) => ruleId === 'nutrient-claim')
    return problem?.reason ?? 'holds'
  }

  test.each([
    ['apple', 'holds'],
    ['whole milk', 'holds'],
    ['whole-milk yoghurt, plain', 'holds'],
    ['dates', 'holds'],
    ['honey', 'with `honey` in it'],
    ['sugar', 'with `sugar` in it'],
    ['jam', 'with `jam` in it'],
    ['apple juice concentrate, frozen', 'with `apple juice concentrate, frozen` in it'],
    ['dried cranberries, sweetened', 'with `dried cranberries, sweetened` in it'],
    ['vanilla yoghurt, low-fat', 'cannot be checked'],
    ['condensed milk', 'with `condensed milk` in it'],
  ])('no added sugars, %s: %s', (name, expected) => {
    expect(outcome('no added sugars', [`"${name}": 100 g`])).toContain(expected)
  })

  test.each([
    ['carrot', 'holds'],
    ['salt', 'with `salt` in it'],
    ['streaky bacon', 'with `streaky bacon` in it'],
    ['feta', 'cannot be checked'],
  ])('no added salt, %s: %s', (name, expected) => {
    expect(outcome('no added salt', [`"${name}": 100 g`])).toContain(expected)
  })

  test('in the EU no more than 120 mg of sodium either', () => {
    // USDA SR28, 11143 Celery, raw: 80 mg of sodium; dried flakes (44055) have 1,435 mg.
    expect(outcome('no added salt', ['celery: 100 g'], 'eu')).toBe('holds')
    expect(outcome('no added salt', ['"celery flakes, dried": 100 g'], 'eu')).toContain('sodium')
  })
})

describe('free of something, US', () => {
  function outcome(claim: string, ingredients: readonly string[], method = 'Stir.') {
    const dish = {
      ingredients: ['water: 10 g', ...ingredients],
      front: ['serves: 1', 'yield: 100 g', `claims: [${claim}]`],
      method,
      settings: ['rules: us'],
    }
    const problem = findingsIn(dish).find(({ruleId}) => ruleId === 'nutrient-claim')
    return problem?.reason ?? 'holds'
  }

  // 21 CFR 101.60(c)(1)(ii), .61(b)(1)(ii), .62(b)(1)(ii), (c)(1)(ii), (d)(1), from memory but for
  // sodium: under the limit, and still no ingredient that is or is understood to contain it.
  test.each([
    ['sugar-free', 'sugar: 0.1 g', 'with `sugar` in it, expected no ingredient known for sugar'],
    ['sugar-free', 'honey: 0.1 g', 'with `honey` in it'],
    ['sugar-free', 'apple juice: 1 g', 'with `apple juice` in it'],
    ['sugar-free', 'celery: 1 g', 'holds'],
    ['fat-free', 'butter: 0.1 g', 'with `butter` in it, expected no ingredient known for fat'],
    ['fat-free', 'olive oil: 0.1 g', 'with `olive oil` in it'],
    ['fat-free', 'walnuts: 0.1 g', 'with `walnuts` in it'],
    ['fat-free', 'skimmed milk: 5 g', 'holds'],
    ['fat-free', 'nutmeg: 0.1 g', 'holds'],
    ['saturated-fat-free', 'butter: 0.1 g', 'known for saturated fat'],
    ['cholesterol-free', 'whole milk: 1 g', 'known for cholesterol'],
    ['cholesterol-free', 'olive oil: 1 g', 'holds'],
    ['sodium-free', 'salt: 0.005 g', 'with `salt` in it, expected no ingredient known for sodium'],
    ['salt-free', 'soy sauce: 0.01 g', 'with `soy sauce` in it'],
    ['sodium-free', 'celery: 1 g', 'holds'],
  ])('%s with %s: %s', (claim, ingredient, expected) => {
    expect(outcome(claim, [ingredient])).toContain(expected)
  })

  test('with the footnote of the law beside it, it holds; one about something else is none', () => {
    const salted = ['salt: 0.005 g']
    expect(outcome('sodium-free', salted, 'The salt adds a trivial amount of sodium.')).toBe(
      'holds',
    )
    expect(outcome('sodium-free', salted, 'The salt adds a trivial amount of fat.')).toContain(
      'salt',
    )
  })

  test('what a reader may leave out is no ingredient yet', () => {
    expect(outcome('sodium-free', ['salt: { amount: 0.01 g, optional: true }'])).toBe('holds')
  })
})

describe('relative claims', () => {
  function outcome(claim: string, rules: 'us' | 'eu', mine: Per100g, theirs: Per100g): string {
    const exactly = {increment: 1e-9}
    const foods = [food('mine', mine, exactly), food('theirs', theirs, exactly)]
    const whole = at(grams(100, 1e-9))
    const comparison: NonNullable<Recipe['comparison']> = {
      recipe: at('usual'),
      basis: '100 g',
      statements: [],
    }
    const book = cookbook(
      foods,
      [
        recipe('usual', [line('theirs', grams(100, 1e-9))], {serves: at(1), batch: whole}),
        recipe('new', [line('mine', grams(100, 1e-9))], {serves: at(1), batch: whole, comparison}),
      ],
      {rules, scaleGrams: 1e-9},
    )
    const {computed} = computeCookbook(book)
    const [one, found] = [computed.get('new'), claimFor(claim, rules)]
    if (!one || !found) throw new Error('Dish and claim are there')
    return judgeClaim(found, dishOf(one, book, computed)).outcome
  }

  // 21 CFR 101.56(b): 50 % of the fat, or a third of the energy where fat brings less than half of it.
  test.each([
    ['light', {fat: 4.9, energy: 95}, {fat: 10, energy: 100}, 'holds'],
    ['light', {fat: 5.1, energy: 66}, {fat: 10, energy: 100}, 'fails'],
    ['light', {fat: 3, energy: 66}, {fat: 4, energy: 100}, 'holds'],
    ['light', {fat: 3, energy: 67}, {fat: 4, energy: 100}, 'fails'],
    ['reduced fat', {fat: 7.4}, {fat: 10}, 'holds'],
    ['reduced fat', {fat: 7.6}, {fat: 10}, 'fails'],
    ['reduced fat', {}, {fat: 10}, 'unknown'],
    // Beside a dish that is low in fat itself, at 3 g or less in a serving.
    ['reduced fat', {fat: 1}, {fat: 2.9}, 'fails'],
    ['reduced fat', {fat: 1}, {fat: 3.1}, 'holds'],
    // 21 CFR 101.62(d)(4): no more than 2 g of saturated fat beside it (from memory).
    ['reduced cholesterol', {cholesterol: 74, saturated: 1.9}, {cholesterol: 100}, 'holds'],
    ['reduced cholesterol', {cholesterol: 74, saturated: 2.1}, {cholesterol: 100}, 'fails'],
    ['reduced cholesterol', {cholesterol: 74}, {cholesterol: 100}, 'unknown'],
  ] as const)('US %s: %j beside %j', (claim, mine, theirs, expected) => {
    expect(outcome(claim, 'us', mine, theirs)).toBe(expected)
  })

  // Regulation (EC) 1924/2006, Annex: 30 %, salt 25 %; sugars only where energy does not rise.
  test.each([
    ['light', {fat: 7, energy: 69}, {fat: 8, energy: 100}, 'holds'],
    ['light', {fat: 7, energy: 71}, {fat: 8, energy: 100}, 'fails'],
    ['reduced salt', {sodium: 74}, {sodium: 100}, 'holds'],
    ['reduced salt', {sodium: 76}, {sodium: 100}, 'fails'],
    ['reduced sugars', {sugars: 6, energy: 100}, {sugars: 10, energy: 100}, 'holds'],
    ['reduced sugars', {sugars: 6, energy: 101}, {sugars: 10, energy: 100}, 'fails'],
    ['increased protein', {protein: 13.1, energy: 200}, {protein: 10, energy: 200}, 'holds'],
    ['increased protein', {protein: 12.9, energy: 200}, {protein: 10, energy: 200}, 'fails'],
  ] as const)('EU %s: %j beside %j', (claim, mine, theirs, expected) => {
    expect(outcome(claim, 'eu', mine, theirs)).toBe(expected)
  })

  test('beside nothing they cannot be told', () => {
    const light = claimFor('reduced fat', 'us')
    expect(light && judgeClaim(light, dishWith({fat: 1}, {rules: 'us'})).outcome).toBe('unknown')
  })
})

describe('sentences beside claims', () => {
  function sentences(rules: 'us' | 'eu', claim: string, per100g: Per100g) {
    return claimSentences(dishWith(per100g, {rules, recipe: {claims: [at(claim)]}})).map(
      ({text}) => text,
    )
  }

  // 21 CFR 101.13(h): more than 13.0 g fat, 4.0 g saturated fat, 60 mg cholesterol, 480 mg sodium.
  const atLevels = {fat: 12.999, saturated: 3.999, cholesterol: 59.9, sodium: 479.9}

  test('at the disclosure levels there is nothing to say, past them there is', () => {
    expect(sentences('us', 'high calcium', atLevels)).toEqual([])
    expect(
      sentences('us', 'high calcium', {fat: 13.1, saturated: 4.1, cholesterol: 61, sodium: 481}),
    ).toEqual(['See nutrition information for fat, saturated fat, cholesterol and sodium content.'])
    expect(sentences('us', 'high calcium', {...atLevels, sodium: 481})).toEqual([
      'See nutrition information for sodium content.',
    ])
  })

  test('a claim about fibre says the fat, unless that is low', () => {
    expect(sentences('us', 'high fibre', {fat: 3.5, fibre: 6})).toEqual([
      'Contains 3.5 g of total fat per serving.',
    ])
    expect(sentences('us', 'high fibre', {fat: 2.5, fibre: 6})).toEqual([])
  })

  test('fat that is not all known is not told as a fact', () => {
    expect(sentences('us', 'high fibre', {fibre: 6})).toEqual([
      'Contains an unknown amount of total fat per serving: no figure for all of it.',
    ])
    const foods = [food('oats', {fibre: 10, fat: 7}), food('bran', {fibre: 40})]
    const one = recipe('dish', [line('oats', 50), line('bran', 10)], {
      serves: at(1),
      claims: [at('high fibre')],
    })
    const book = cookbook(foods, [one], {rules: 'us'})
    const {computed} = computeCookbook(book)
    const dish = computed.get('dish')
    expect(dish && claimSentences(dishOf(dish, book, computed)).map(({text}) => text)).toEqual([
      'Contains at least 3.5 g of total fat per serving: no figure for bran.',
    ])
  })

  test('EU: no added sugars, with sugars by nature', () => {
    expect(sentences('eu', 'no added sugars', {sugars: 4})).toEqual([
      'Contains naturally occurring sugars.',
    ])
    expect(sentences('eu', 'no added sugars', {sugars: 0.4})).toEqual([])
  })

  test('without a claim none', () => {
    expect(claimSentences(dishWith({fat: 50}, {rules: 'us'}))).toEqual([])
  })
})
