import {describe, expect, test} from 'vitest'
import {recipeData} from '../../templates/parts/structured-recipe.ts'
import {recipePage} from '../../templates/recipe.tsx'
import {at, computedOf, count, line, recipe, sampleSite, siteWith, weight} from './sample.ts'
import {byClass, byId, byTag, rowsOf, textOf} from './tree.ts'

const site = sampleSite()
const pot = recipePage(site, computedOf(site, 'barley-pot')).tree
const lines = byClass(pot, 'ledger').flatMap((list) => byTag(list, 'li').map(textOf))

/** The page of a recipe with the given lines. */
function pageWith(...ingredients: ReturnType<typeof line>[]) {
  const dish = recipe('dish', {serves: at(2), groups: [{lines: ingredients}]})
  const {site, computed} = siteWith(dish)
  return recipePage(site, computed).tree
}

describe('the ingredients', () => {
  test('stand with weight and kitchen measure, in writing order', () => {
    expect(lines[0]).toBe('600 g chicken thigh, skinless')
    expect(lines[2]).toMatch(/^\d+ g lemon, 1 medium/)
    expect(lines[5]).toMatch(/^30 g pepper paste, 2 tbsp/)
  })

  test('keep their groups', () => {
    expect(byTag(pot, 'h3').map(textOf)).toContain('For the paste')
  })

  test('link to a component and say how much of its batch goes in', () => {
    expect(lines[3]).toBe('900 g brown stock 90 % of a batch')
    const hrefs = byTag(byId(pot, 'brown-stock'), 'a').map(({properties}) => properties.href)
    expect(hrefs).toEqual(['../brown-stock/index.html'])
  })

  test('say what is left out of the figures, and why', () => {
    expect(lines[4]).toBe('10 g parsley if wanted; not in the figures')
    expect(lines[6]).toBe('3 g wheat flour not in the figures: dusting, stays on the board')
  })

  test('say of an alternative that is counted whole', () => {
    const instead = [{name: at('butter'), amount: at(weight(600))}]
    const page = pageWith(
      line('chicken thigh, skinless', weight(600), {trimmed: at(weight(50)), instead}),
    )
    const [text] = byClass(page, 'instead').map(textOf)
    expect(text).toMatch(/brings milk; counted whole, nothing poured or cut off$/)
  })

  // By hand: 30 g paste have 27 kcal and 5.4 g carbohydrate, 20 g butter 143.4 kcal, 16.2 g fat
  // and 0.2 g protein; a quarter of the differences is 29 kcal, 1.4 g carbohydrate, 4.0 g fat.
  test('say what an alternative changes in one serving, and the allergen it brings', () => {
    expect(lines[5]).toContain(
      'Or 20 g butter: one serving then has 29 kcal more energy, 1.4 g less carbohydrate and 4.0 g more fat; brings milk',
    )
  })

  test('say what is eaten, poured off, cooked away', () => {
    const texts = byTag(
      pageWith(
        line('butter', weight(400), {
          eaten: {amount: at(weight(35)), because: at('weighed before and after')},
        }),
        line('chicken thigh, skinless', weight(500), {
          pouredOff: {kind: 'weighed', what: 'fat', amount: at(weight(15))},
        }),
        line('lemon', count(1, 'medium'), {simmeredMinutes: at(90)}),
      ),
      'li',
    ).map(textOf)
    const all = texts.join(' | ')
    expect(all).toContain('35 g of it is eaten (weighed before and after)')
    expect(all).toContain('15 g of fat poured off')
    expect(all).toContain('cooks for 1 h 30 min')
  })
})

describe('the figures', () => {
  test('published first are the stated ones', () => {
    const [headline] = byClass(pot, 'headline')
    expect(headline && textOf(headline)).toBe(
      'One serving, 370 gEnergy395 kcalProtein35 gCarbo\u00adhydrate47 gFat7 gFibre10 g',
    )
  })

  test('stand beside the computed ones with the verdict in words', () => {
    const [table] = byClass(pot, 'stated')
    const rows = table ? rowsOf(table) : []
    expect(rows[1]).toEqual([
      'Energy the sum of the foods’ own',
      '395 kcal',
      expect.stringMatching(/^395 kcal ± \d/),
      'agrees',
    ])
    expect(rows[5]).toEqual(['Fibre', '10 g', 'at least 10 g', 'cannot be told'])
  })

  test('are given for a serving, 100 g and the batch', () => {
    const [table] = byClass(pot, 'figures')
    const rows = table ? rowsOf(table) : []
    expect(rows[0]).toEqual(['Nutrient', 'One serving', '100 g', 'Whole batch'])
    expect(rows[2]?.[3]).toMatch(/^141\.3 g ± /)
  })

  test('that are incomplete name the foods that lack them', () => {
    expect(textOf(pot)).toContain('No figure for sugars, fibre and saturated fat: pepper paste.')
  })

  test('follow the law: salt in the EU, sodium in the US', () => {
    const us = sampleSite({rules: 'us'})
    const heads = (tree: typeof pot) => {
      const [table] = byClass(tree, 'figures')
      return (table ? rowsOf(table) : []).map(([head]) => head)
    }
    expect(heads(pot)).toContain('Salt')
    expect(heads(pot)).not.toContain('Sodium')
    const usHeads = heads(recipePage(us, computedOf(us, 'barley-pot')).tree)
    expect(usHeads).toContain('Sodium')
    expect(usHeads).not.toContain('Salt')
  })

  test('without a stated one are the computed ones', () => {
    const tree = recipePage(site, computedOf(site, 'classic-pot')).tree
    const [headline] = byClass(tree, 'headline')
    // 600 g × 1.21 + 200 g × 3.52 + 60 g × 7.17 = 1860.2 kcal, in four bowls 465.
    expect(headline && textOf(headline)).toContain('Energy465 kcal')
    expect(textOf(tree)).toContain('Nothing is stated for this recipe')
  })
})

describe('the allergens', () => {
  test('follow the law of the cookbook', () => {
    expect(textOf(pot)).toContain('Contains: cereals containing gluten (wheat, barley).')
    const us = sampleSite({rules: 'us'})
    const usText = textOf(recipePage(us, computedOf(us, 'barley-pot')).tree)
    expect(usText).toContain('Contains: wheat.')
    expect(usText).toContain('Outside that law, but of note: barley.')
  })

  test('name the foods nobody has stated them for', () => {
    expect(textOf(pot)).toContain('Not stated for: pepper paste.')
  })
})

describe('a promise of the writer’s', () => {
  const promising = recipe('soup', {
    serves: at(2),
    groups: [{lines: [line('carrot', weight(300))]}],
    freeFrom: [at('milk'), at('egg')],
    suits: [at('vegan')],
  })
  const promises = (one: typeof promising, severities = new Map<string, 'error' | 'off'>()) => {
    const {site, computed} = siteWith(one, {severities})
    return textOf(recipePage(site, computed).tree)
  }

  test('is repeated with what it leaves open', () => {
    expect(promises(promising)).toContain(
      'Free from, through every component and packet: milk, egg.',
    )
    const coeliac = {...promising, suits: [at('gluten-free ingredients')]}
    expect(promises(coeliac)).toContain('Suits: gluten-free ingredients.By its ingredients only')
  })

  test('leaves nothing open that no food of it does', () => {
    expect(promises(promising)).toContain('Suits: vegan.')
    expect(promises(promising)).not.toContain('Some wine and vinegar')
  })

  test('is not repeated where its rule was silenced or its finding accepted', () => {
    expect(promises(promising, new Map([['free-from', 'off']]))).not.toContain('Free from')
    const accepted = [{ruleId: at('suits-diet'), because: at('I know better')}]
    expect(promises({...promising, accepted})).not.toContain('Suits')
  })

  test('reaches machines only when it was checked', () => {
    const {site, computed} = siteWith(promising)
    expect(recipeData(site, computed).suitableForDiet).toEqual(['https://schema.org/VeganDiet'])
    const off = siteWith(promising, {severities: new Map([['suits-diet', 'off']])})
    expect(recipeData(off.site, off.computed)).not.toHaveProperty('suitableForDiet')
  })
})

describe('a recipe with nothing but a title', () => {
  const {site, computed} = siteWith(recipe('bare', {title: at('Bare bones')}))
  const tree = recipePage(site, computed).tree

  test('has no heading without something under it', () => {
    const heads = byTag(tree, 'h2').map(textOf)
    expect(heads).not.toContain('Ingredients')
    expect(heads).not.toContain('Method')
    expect(heads).not.toContain('Keeping')
    expect(heads.some((head) => head.startsWith('Beside'))).toBe(false)
  })

  test('shows no value it does not have', () => {
    expect(textOf(tree)).not.toMatch(/undefined|NaN|null|Infinity/)
  })
})

describe('the comparison', () => {
  test('shows both dishes on the same basis', () => {
    const [part] = byClass(pot, 'comparison')
    const text = part ? textOf(part) : ''
    expect(text).toContain('Energy: 20 % less.')
    expect(text).toContain('395 kcal this recipe')
    expect(text).toContain('465 kcal Classic barley pot')
  })

  test('draws the larger one the longer', () => {
    const [part] = byClass(pot, 'comparison')
    const widths = part ? byTag(part, 'rect').map(({properties}) => properties.width) : []
    // 395 of 465 kcal is 84.9 %, and the whole is drawn 99 % wide to leave room for its edge.
    expect(widths.slice(0, 2)).toEqual(['84.1%', '99.0%'])
  })
})

test('a component says which recipes use it', () => {
  const tree = recipePage(site, computedOf(site, 'brown-stock')).tree
  expect(textOf(tree)).toContain('Used in: Barley pot with lemon chicken')
})
