import {expect, test} from 'vitest'
import {findingsIn, pointedAt} from './check-text.ts'

function toldWrong(summary: string, time = 'time: { total: 1 h }'): readonly string[] {
  const dish = {
    ingredients: ['pearl barley: 200 g', 'water: 800 g'],
    front: [`summary: ${summary}`, 'serves: 4', time],
    method: 'Simmer the barley in the water for 30 min.',
  }
  return findingsIn(dish)
    .filter(({ruleId}) => ruleId === 'time-in-summary')
    .map((finding) => pointedAt(dish, finding))
}

test.each([
  ['Ready in 15 minutes.', '15 minutes'],
  ['On the table in half an hour.', 'half an hour'],
  ['Ready in just under 20 minutes', '20 minutes'],
  ['A 20-minute supper for tired people.', '20-minute'],
  ['Takes only 20 minutes.', '20 minutes'],
  ['20 minutes from start to finish.', '20 minutes'],
  ['Comes together in about 25 min.', '25 min'],
  ['Ready in 2 hours.', '2 hours'],
])('a time for the whole dish is held to `time`: %s', (summary, at) => {
  expect(toldWrong(summary)).toEqual([at])
})

test.each([
  'Ready in an hour.',
  'Ready in 55 minutes.',
  'Ready in under 2 hours.',
  'Made in 15 minutes of work.',
  'Barley that simmers 30 minutes by itself.',
  'Mince browned hard, then an hour with beans.',
  'Roasted wings, three quiet hours, and the fat lifted off.',
  'Takes 10 minutes on the hob and 40 in the oven.',
  'Keeps 3 days in the fridge.',
])('other times are none of its business: %s', (summary) => {
  expect(toldWrong(summary)).toEqual([])
})

test('without `time` the steps are the least it takes', () => {
  expect(toldWrong('Ready in 20 minutes.', 'tags: [soup]')).toEqual(['20 minutes'])
  expect(toldWrong('Ready in 2 hours.', 'tags: [soup]')).toEqual([])
})
