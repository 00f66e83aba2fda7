import {describe, expect, test} from 'vitest'
import {cautionsOf, localRulesFirst} from '../../src/check/safety/cautions.ts'
import type {Food} from '../../src/food/food.ts'
import type {Computed, ComputedLine} from '../../src/nutrition/computed.ts'
import {cardPage} from '../../templates/card.tsx'
import {recipePage} from '../../templates/recipe.tsx'
import {computedOf, line, recipe, sampleSite, siteWith, weight} from './sample.ts'
import {byId, byTag, textOf} from './tree.ts'

const site = sampleSite()
const pot = withRawPoultry(computedOf(site, 'barley-pot'))

/** The foods of the sample do not say what they are made from. */
function withRawPoultry(computed: Computed): Computed {
  const lines = computed.lines.map((each): ComputedLine => {
    const {ingredient} = each
    if (ingredient.kind !== 'food' || ingredient.food.aisle !== 'poultry') return each
    const food: Food = {...ingredient.food, from: ['poultry'], state: 'raw'}
    return {...each, ingredient: {kind: 'food', food}}
  })
  return {...computed, lines}
}

describe('cautions', () => {
  test('stand on the recipe page with their sources and defer to local rules', () => {
    const cautions = cautionsOf(pot)
    const section = byId(recipePage(site, pot).tree, 'part-cautions')
    const page = textOf(recipePage(site, pot).tree)
    expect(textOf(section)).toBe(site.words.recipe.cautions)
    expect(cautions.length).toBeGreaterThan(0)
    for (const {text, source} of cautions) expect(page).toContain(`${text} ${source}`)
    expect(page).toContain(localRulesFirst)
  })

  test('stand on the card, which leaves their sources to the page and defers to local rules', () => {
    const card = textOf(cardPage(site, pot).tree)
    for (const {text} of cautionsOf(pot)) expect(card).toContain(text)
    expect(card).toContain(site.words.cards.cautionsFrom)
    expect(site.words.cards.cautionsFrom).toContain('Local rules and licensed practice come first')
  })

  test('leave no empty section where there is nothing to mind', () => {
    const plain = siteWith(recipe('plain', {groups: [{lines: [line('lemon', weight(100))]}]}))
    const headings = byTag(recipePage(plain.site, plain.computed).tree, 'h2').map(textOf)
    expect(headings).not.toContain(site.words.recipe.cautions)
  })
})
