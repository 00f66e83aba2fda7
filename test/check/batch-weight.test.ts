import {expect, test} from 'vitest'
import {findingsIn, pointedAt} from './check-text.ts'

const ingredients = ['pearl barley: 200 g', 'water: 800 g']

function reasons(...front: readonly string[]): readonly string[] {
  const dish = {ingredients, front: ['serves: 4', ...front], method: ''}
  return findingsIn(dish).map((finding) => `${pointedAt(dish, finding)}: ${finding.reason}`)
}

// Conservation of mass: 1,000 g went in, so no more can be served and left together.
test.each([
  ['yield: 700 g', 'left behind: 300 g', []],
  [
    'yield: 950 g',
    'left behind: 300 g',
    [
      '950 g: Yield `950 g` with `300 g` left behind, expected `1000 g` or less together: the counted ingredients weigh no more',
    ],
  ],
  ['yield factor: 0.9', 'left behind: 890 g', []],
  [
    'yield factor: 0.9',
    'left behind: 900 g',
    ['900 g: Left behind `900 g`, expected less than `900 g`: no more was in the pot'],
  ],
] as const)('batch-weight with %s and %s', (weight, left, expected) => {
  expect(reasons(weight, left)).toEqual(expected)
})

test('batch-weight finds more left behind than was mixed, where nobody weighed the batch', () => {
  expect(reasons('left behind: 990 g')).toEqual([])
  expect(reasons('left behind: 1.2 kg')).toEqual([
    '1.2 kg: Left behind `1.2 kg`, expected less than `1000 g`: no more was in the pot',
  ])
})
