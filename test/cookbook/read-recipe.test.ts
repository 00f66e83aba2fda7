import {describe, expect, test} from 'vitest'
import {readRecipe} from '../../src/cookbook/read-recipe.ts'
import {recipeReader} from '../../src/cookbook/recipe-fields.ts'

const reader = recipeReader({cups: 'metric', measures: new Set()})

function reasons(front: readonly string[]): readonly string[] {
  const text = [
    '---',
    'title: Pot',
    ...front,
    '---',
    '',
    'Simmer the [barley](#pearl-barley) in the [stock](#stok).',
    '',
  ].join('\n')
  return readRecipe({path: 'recipes/pot.md', text}, reader).problems.map(({reason}) => reason)
}

const wrongLink = 'Link `#stok` names no ingredient or heading, expected `#stock`'

describe('A link to an ingredient', () => {
  test('whose line was refused is not told as well: the slip is in the line', () => {
    expect(
      reasons(['serves: 4', 'ingredients:', '  pearl barley: 0,2 kg', '  stock: 500 g']),
    ).toEqual(['`pearl barley` in `ingredients` is `0,2 kg`, expected a decimal point: `0.2 kg`'])
  })

  test('that leads nowhere is told beside slips in other keys', () => {
    const lines = ['ingredients:', '  pearl barley: 200 g', '  stock: 500 g']
    expect(reasons(['serves: 4', ...lines])).toEqual([wrongLink])
    expect(reasons(['serves: 4', 'sumary: Good.', ...lines])).toEqual([
      'Unknown key `sumary`, expected `summary`',
      wrongLink,
    ])
  })
})
