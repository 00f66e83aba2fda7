import type {Root} from 'hast'
import {describe, expect, test} from 'vitest'
import {cardPage} from '../../templates/card.tsx'
import {figuresPage} from '../../templates/figures.tsx'
import {foodsPage} from '../../templates/foods.tsx'
import {recipeIndex} from '../../templates/index.tsx'
import {notFoundPage} from '../../templates/not-found.tsx'
import {planPage} from '../../templates/plan.tsx'
import {rulesPage} from '../../templates/rules.tsx'
import {shoppingPage} from '../../templates/shopping.tsx'
import type {Site} from '../../templates/site.ts'
import {textPage} from '../../templates/text-page.tsx'
import {computedOf, cookbook, sampleSite} from './sample.ts'
import {byClass, byId, byTag, elements, rowsOf, textOf} from './tree.ts'

const site = sampleSite()

function indexTree(of: Site): Root {
  const [first] = recipeIndex(of).pages
  if (first === undefined) throw new Error('a site has a first page')
  return first.page().tree
}

describe('the first page', () => {
  const tree = indexTree(site)

  test('lists dishes by the serving, as stated or else as computed', () => {
    const rows = rowsOf(byId(tree, 'recipe-table'))
    expect(rows[0]?.map((head) => head.replace('\u00ad', ''))).toEqual([
      'Recipe',
      'Energy kcal',
      'Protein g',
      'Carbohydrate g',
      'Fat g',
      'Protein per 100 kcal g',
      'Serving g',
      'Time',
      'Cost EUR',
    ])
    // By hand: 35 ÷ 3.95 and 34.635 ÷ 4.6505 g; only barley has a price, 500 g for 1.20, of which the
    // dishes use 180 and 200 g for four.
    const [pot, classic] = rows.slice(1)
    expect(pot?.slice(1)).toEqual([
      '395',
      '35',
      '47',
      '7',
      '8.9',
      '370',
      '1 h 5 min',
      'at least 0.11',
    ])
    expect(classic?.slice(1)).toEqual(['465', '35', '39', '19', '7.4', '', '', 'at least 0.12'])
  })

  test('lists components apart, by 100 g', () => {
    // 500 g carrots of 41 kcal in a batch of 1000 g: 20.5 kcal per 100 g.
    const rows = byTag(tree, 'table').slice(1).flatMap(rowsOf)
    expect(rows[1]).toEqual(['Brown stock', '21', '0.5', '4.8', '0.1', '1000 g', '3 days'])
  })

  test('of an empty cookbook has no empty table', () => {
    const empty = indexTree(sampleSite({}, {recipes: new Map(), plans: [], pages: []}))
    expect(byTag(empty, 'table')).toEqual([])
    expect(byTag(empty, 'h2')).toEqual([])
  })
})

describe('the shopping page', () => {
  const {tree} = shoppingPage(site)

  test('hides the chooser until its script has come', () => {
    expect(byId(tree, 'chooser').properties.hidden).toBe(true)
  })

  test('has a field for every recipe, a component by the batch', () => {
    const [choose] = byClass(tree, 'choose')
    expect(choose && byTag(choose, 'label').map(textOf)).toEqual([
      'Barley pot with lemon chicken',
      'Brown stock, batches',
      'Classic barley pot',
    ])
  })

  test('has the list of every plan', () => {
    const lines = byClass(tree, 'shopping').flatMap((list) => byTag(list, 'li').map(textOf))
    expect(lines).toContain('1.2 kg chicken thigh, skinless')
  })

  test('without plans says what there is to do', () => {
    const {tree} = shoppingPage(sampleSite({}, {plans: []}))
    expect(textOf(tree)).toContain('This cookbook has no plans.')
  })
})

test('a plan says what is cooked, for how many, and what to buy', () => {
  const [plan] = cookbook.plans
  if (plan === undefined) throw new Error('the sample has a plan')
  const {tree} = planPage(site, plan)
  expect(rowsOf(tree)[1]).toEqual([
    'Barley pot with lemon chicken 6 servings',
    '395',
    '35',
    '47',
    '7',
  ])
  expect(textOf(tree)).toContain('Start the stock first.')
  expect(byTag(tree, 'h3').map(textOf)).toContain('To make')
})

describe('the page of figures', () => {
  test('holds every stated figure with its verdict', () => {
    const rows = rowsOf(figuresPage(site).tree)
    expect(rows[1]).toEqual(['Barley pot with lemon chicken One serving, 370 g'])
    expect(rows[4]?.map((cell) => cell.replace('\u00ad', ''))).toEqual([
      'Carbohydrate',
      '47 g',
      expect.stringMatching(/^47\.8 g ± /),
      'within tolerance',
    ])
  })

  test('names the recipes that state nothing', () => {
    expect(byTag(figuresPage(site).tree, 'li').map(textOf)).toContain('Classic barley pot')
  })

  test('says what was left open, with a link to the rule', () => {
    const open = {
      ...site,
      problems: [
        {
          ruleId: 'stated-energy',
          severity: 'warning' as const,
          file: 'recipes/barley-pot.md',
          reason: 'Energy is odd',
          note: 'Look again.',
        },
      ],
    }
    const {tree} = figuresPage(open)
    expect(textOf(byId(tree, 'part-open'))).toBe('What was left open')
    expect(textOf(tree)).toContain(
      'Energy is odd. Look again. recipes/barley-pot.md, stated-energy',
    )
    const hrefs = byTag(tree, 'a').map(({properties}) => properties.href)
    expect(hrefs).toContain('../rules/index.html#stated-energy')
    expect(textOf(figuresPage(site).tree)).not.toContain('What was left open')
  })
})

describe('the page of foods', () => {
  const rows = rowsOf(foodsPage(site).tree)

  test('has each food in use with its figures, source and users', () => {
    const place = rows.findIndex(([name]) => name === 'pearl barley')
    expect(rows[place + 1]).toEqual([
      'USDA SR28, row 20005. Used by Barley pot with lemon chicken, Classic barley pot.',
    ])
    expect(rows[place]).toEqual(['pearl barley', '352', '9.9', '78', '1.2', '16', '0.02'])
  })

  test('says what is unknown, and that a packet is a packet', () => {
    const place = rows.findIndex(([name]) => name === 'pepper paste')
    expect(rows[place]?.[5]).toBe('unknown')
    expect(rows[place + 1]?.[0]).toContain('Packet label, copied by the cook.')
  })
})

test('the page of rules has an anchor for each', () => {
  const {tree} = rulesPage(site)
  expect(textOf(byId(tree, 'stated-macros'))).toBe('stated-macros')
  expect(textOf(tree)).toContain('A stated figure follows from the ingredients. stops the build')
})

test('a rule shows what it finds and what it lets pass', () => {
  const example = {
    files: [{path: 'recipes/dish.md', fails: 'protein: 9 g', passes: 'protein: 5 g'}],
    reason: 'Stated protein `9 g`, expected `5 g`',
  }
  const [first, ...others] = site.rules
  const rules = first ? [{...first, example}, ...others] : []
  const [shown] = elements(rulesPage({...site, rules}).tree, ({tagName}) => tagName === 'details')
  expect(shown && textOf(shown)).toBe(
    'ExampleThis is told: Stated protein `9 g`, expected `5 g`recipes/dish.mdprotein: 9 gAnd this passes:recipes/dish.mdprotein: 5 g',
  )
})

describe('a card', () => {
  const {tree} = cardPage(site, computedOf(site, 'barley-pot'))
  const sides = byClass(tree, 'side').map(textOf)

  test('has what goes in, the figures and the allergens on its front', () => {
    expect(sides[0]).toContain('600 g chicken thigh, skinless')
    expect(sides[0]).toContain('10 g parsley (if wanted)')
    expect(sides[0]).toContain('One serving, 370 gEnergy395 kcalProtein35 g')
    expect(sides[0]).toContain('Contains: cereals containing gluten (wheat, barley).')
  })

  test('has what to do on its back', () => {
    expect(sides[1]).toContain('Add barley and stock; simmer for 35 minutes.')
    expect(sides[1]).toContain('In the fridge: 3 days.')
  })

  test('starts in the size of the cookbook', () => {
    const checked = (page: typeof tree) =>
      elements(page, ({properties}) => properties.checked === true).map(
        ({properties}) => properties.id,
      )
    expect(checked(tree)).toEqual(['size-a6'])
    const inches = sampleSite({print: {paper: 'Letter', cards: '6x4'}})
    expect(checked(cardPage(inches, computedOf(inches, 'barley-pot')).tree)).toEqual(['size-6x4'])
  })

  test('carries a code only when there is an address to code', () => {
    expect(byClass(tree, 'qr')).toEqual([])
    const known = sampleSite({address: 'https://boathouse.example/'})
    expect(byClass(cardPage(known, computedOf(known, 'barley-pot')).tree, 'qr')).toHaveLength(1)
  })
})

test('the page for a lost address leads home from any depth', () => {
  const home = (page: ReturnType<typeof notFoundPage>) =>
    byTag(page.tree, 'a').find((link) => textOf(link) === 'All recipes')?.properties.href
  expect(home(notFoundPage(site))).toBe('index.html')
  const address = 'https://boathouse.example/kitchen/'
  expect(home(notFoundPage(sampleSite({address})))).toBe(address)
})

test('a page of the writer’s own has its text, and stands in the head of every page', () => {
  const [about] = cookbook.pages
  if (about === undefined) throw new Error('the sample has a page')
  expect(textOf(textPage(site, about).tree)).toContain('Typed in for the tests.')
  const hrefs = byTag(indexTree(site), 'a').map(({properties}) => properties.href)
  expect(hrefs).toContain('pages/about/index.html')
})
