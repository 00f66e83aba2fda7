import {describe, expect, test} from 'vitest'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {containedAllergens} from '../../src/nutrition/contained-allergens.ts'
import {at, cookbook, line, recipe, weight} from '../templates/sample.ts'

function computedOf(slug: string, ...recipes: ReturnType<typeof recipe>[]): Computed {
  const {computed} = computeCookbook({
    ...cookbook,
    recipes: new Map(recipes.map((one) => [one.slug, one])),
  })
  const one = computed.get(slug)
  if (one === undefined) throw new Error(`${slug} was not computed`)
  return one
}

describe('the allergens of a dish', () => {
  test('come from its lines, counted or not', () => {
    const dish = recipe('dish', {
      groups: [
        {
          lines: [
            line('butter', weight(10)),
            line('wheat flour', weight(3), {uncounted: {because: at('dusting')}}),
          ],
        },
      ],
    })
    expect([...containedAllergens(computedOf('dish', dish)).contains].sort()).toEqual([
      'milk',
      'wheat',
    ])
  })

  test('come through components', () => {
    const dough = recipe('dough', {
      batch: at(weight(100)),
      groups: [{lines: [line('wheat flour', weight(100))]}],
    })
    const dish = recipe('dish', {
      groups: [{lines: [line('dough', weight(50), {recipe: at('dough')})]}],
    })
    expect([...containedAllergens(computedOf('dish', dish, dough)).contains]).toEqual(['wheat'])
  })

  test('of an optional line and of an alternative are told apart from those of the dish', () => {
    const dish = recipe('dish', {
      groups: [
        {
          lines: [
            line('carrot', weight(100), {
              instead: [{name: at('pearl barley'), amount: at(weight(100))}],
            }),
            line('butter', weight(10), {isOptional: true}),
          ],
        },
      ],
    })
    const {contains, onlyByChoice} = containedAllergens(computedOf('dish', dish))
    expect([...contains]).toEqual([])
    expect([...onlyByChoice].sort()).toEqual(['barley', 'milk'])
  })

  test('that are in the dish anyway are not told again as a choice', () => {
    const dish = recipe('dish', {
      groups: [
        {lines: [line('butter', weight(10)), line('butter', weight(5), {isOptional: true})]},
      ],
    })
    const {contains, onlyByChoice} = containedAllergens(computedOf('dish', dish))
    expect([...contains]).toEqual(['milk'])
    expect([...onlyByChoice]).toEqual([])
  })

  test('nobody has stated are named by their food, never taken as absent', () => {
    const dish = recipe('dish', {groups: [{lines: [line('pepper paste', weight(10))]}]})
    expect([...containedAllergens(computedOf('dish', dish)).notStated]).toEqual(['pepper paste'])
  })

  test('are found in a long chain of components that each use the last one twice', () => {
    const links = Array.from({length: 40}, (_, index) =>
      recipe(`part-${String(index).padStart(2, '0')}`, {
        batch: at(weight(100)),
        groups: [
          {
            lines:
              index === 0
                ? [line('butter', weight(100))]
                : ['first', 'second'].map((name) =>
                    line(name, weight(50), {
                      recipe: at(`part-${String(index - 1).padStart(2, '0')}`),
                    }),
                  ),
          },
        ],
      }),
    )
    expect([...containedAllergens(computedOf('part-39', ...links)).contains]).toEqual(['milk'])
  })
})
