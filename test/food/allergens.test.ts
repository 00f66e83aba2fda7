import {describe, expect, test} from 'vitest'
import {allergenGroups, declaredAllergens} from '../../src/food/allergens.ts'
import {type Allergen, allergens} from '../../src/food/food.ts'

function declaredBy(allergen: Allergen): readonly string[] {
  return (['us', 'eu'] as const).filter(
    (rules) => declaredAllergens(new Set([allergen]), rules).length > 0,
  )
}

// US: Food Allergen Labeling and Consumer Protection Act (2004), FASTER Act (2021), FDA guidance of
// January 2025, edition 5 (tree nuts). EU: Regulation (EU) 1169/2011 Annex II. Secondary summaries.
describe('Which law has an allergen declared', () => {
  test('the US has nine, the EU fourteen groups', () => {
    expect(allergenGroups.us).toHaveLength(9)
    expect(allergenGroups.eu).toHaveLength(14)
  })

  test.each<[Allergen, readonly string[]]>([
    ['pine nut', ['us']],
    ['rye', ['eu']],
    ['barley', ['eu']],
    ['oats', ['eu']],
    ['mollusc', ['eu']],
    ['celery', ['eu']],
    ['mustard', ['eu']],
    ['lupin', ['eu']],
    ['sulphites', ['eu']],
    ['wheat', ['us', 'eu']],
    ['sesame', ['us', 'eu']],
    ['crustacean', ['us', 'eu']],
    ['macadamia', ['us', 'eu']],
  ])('%s', (allergen, laws) => {
    expect(declaredBy(allergen)).toEqual(laws)
  })

  test('no allergen stands in two groups of one law, and each stands in some group', () => {
    for (const groups of Object.values(allergenGroups)) {
      const members = groups.flatMap((group) => group.members)
      expect(new Set(members).size).toBe(members.length)
    }
    for (const allergen of allergens) expect(declaredBy(allergen)).not.toEqual([])
  })

  test('coconut and chestnut are no allergen of either law', () => {
    const named: readonly string[] = allergens
    expect(named).not.toContain('coconut')
    expect(named).not.toContain('chestnut')
  })
})

test('Nuts and cereals are named one by one, in the order of the law', () => {
  const held = new Set<Allergen>(['pine nut', 'barley', 'almond', 'brazil nut', 'milk'])
  expect(declaredAllergens(held, 'us')).toEqual([
    'milk',
    'tree nuts (almond, Brazil nut, pine nut)',
  ])
  expect(declaredAllergens(held, 'eu')).toEqual([
    'cereals containing gluten (barley)',
    'milk',
    'nuts (almond, Brazil nut)',
  ])
})
