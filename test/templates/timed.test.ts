import {h} from 'hastscript'
import {expect, test} from 'vitest'
import {timed} from '../../templates/parts/timed.ts'
import {byClass, textOf} from './tree.ts'

/** The times of steps that get a timer, with the minutes it runs. */
function times(...steps: Parameters<typeof h>[2][]): readonly string[] {
  const list = h(
    'ol',
    steps.map((step) => h('li', step)),
  )
  return byClass(h('div', timed([list])), 'time').map(
    (time) => `${textOf(time)} = ${String(time.properties.dataMinutes)}`,
  )
}

test('a step has a timer for each time it takes, a range for its shorter end', () => {
  expect(times('Fry for 8 min, then simmer for 30 to 40 minutes.', 'Rest for an hour.')).toEqual([
    '8 min = 8',
    '30 to 40 minutes = 30',
    'an hour = 60',
  ])
})

test('what repeats, limits or keeps has none', () => {
  expect(
    times('Stir every 5 minutes.', 'Chill within 2 hours.', 'Keeps for 3 days in the fridge.'),
  ).toEqual([])
})

test('the text around a time stays as it was', () => {
  const step = h('li', 'Fry for ', h('strong', '8 min, not more'), ', then 2 min without.')
  const marked = h('div', timed([step]))
  expect(textOf(marked)).toBe(textOf(step))
  expect(byClass(marked, 'time').map(textOf)).toEqual(['8 min', '2 min'])
  expect(byClass(step, 'time')).toEqual([])
})

test('a time in a link or in the plain text below has none', () => {
  const link = h('li', 'See ', h('a', {href: '#x'}, 'wait for 10 min'), '.')
  const text = h('p', 'Let it stand for 10 min.')
  expect(byClass(h('div', timed([link, text])), 'time')).toEqual([])
})
