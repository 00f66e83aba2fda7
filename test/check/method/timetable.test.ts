import {describe, expect, test} from 'vitest'
import {timesInSteps} from '../../../src/check/method/time-in-steps.ts'
import {type Timetable, timetable} from '../../../src/check/method/timetable.ts'
import {occupationOf} from '../../../src/check/method/wait-or-work.ts'
import type {Recipe} from '../../../src/cookbook/recipe.ts'
import {computedIn} from '../check-text.ts'

function recipeOf(method: string, time?: string): Recipe {
  const front = time === undefined ? [] : [`time: { ${time} }`]
  const {computed} = computedIn({ingredients: ['carrot: 200 g'], front, method})
  const dish = computed.get('dish')
  if (dish === undefined) throw new Error('no dish')
  return dish.recipe
}

/** Each step as `from–to: work 3, wait 35`. */
function rows(table: Timetable | undefined): readonly string[] {
  return (table?.steps ?? []).map(({fromMinutes, toMinutes, stretches}) => {
    const parts = stretches.map(
      ({occupation, ...ends}) => `${occupation} ${ends.toMinutes - ends.fromMinutes}`,
    )
    return `${fromMinutes}–${toMinutes}: ${parts.join(', ')}`
  })
}

describe('the hands', () => {
  test.each([
    ['Bake for 35 min.', 'wait'],
    ['Bring to the boil and simmer for 30 min.', 'wait'],
    ['Cover, and leave to rise for 1 h.', 'wait'],
    ['Boil the potatoes, peeled and quartered, for 20 min.', 'wait'],
    ['Knead for 10 min, until smooth.', 'work'],
    ['Fry the pepper in the rest of the oil for 4 min.', 'work'],
    ['Fry the boiled potatoes for 5 min.', 'work'],
    ['Simmer for 10 min, stirring all the time.', 'work'],
    ['For 20 min, roast the squash.', 'wait'],
    ['Cook for 5 min.', 'work'],
    ['Cook for 40 min.', 'wait'],
    ['Fry with the bay leaves for 1 min.', 'work'],
    ['Leave for 1 h.', 'wait'],
  ])('%s: %s', (method, occupation) => {
    const [time] = timesInSteps(recipeOf(`1. ${method}`))
    expect(time && occupationOf(time)).toBe(occupation)
  })
})

describe('a timetable', () => {
  // 20 + 40 of 75 min are told; of the other 15, 5 are work (25 hands-on less 20 of frying) and 10
  // nobody tells: 3, 3, 4 rounded so that the first steps get the odd minute.
  test('shares out the work and the gaps that no step tells', () => {
    const table = timetable(
      recipeOf(
        '1. Fry it for 20 min.\n2. Simmer for 40 min.\n3. Serve it.',
        'hands-on: 25 min, total: 1 h 15 min',
      ),
    )
    expect(rows(table)).toEqual(['0–22: work 22', '26–68: work 2, wait 40', '71–72: work 1'])
    expect(table).toMatchObject({
      totalMinutes: 75,
      sharedWorkMinutes: 5,
      gapMinutes: 10,
      workInWaitsMinutes: 0,
      beyondMinutes: 0,
      isOpen: false,
    })
  })

  test('has no room for all the work where some must be done in the waiting', () => {
    const table = timetable(
      recipeOf('1. Cut it.\n2. Bake for 50 min.', 'hands-on: 20 min, total: 1 h'),
    )
    expect(rows(table)).toEqual(['0–5: work 5', '5–60: work 5, wait 50'])
    expect(table).toMatchObject({sharedWorkMinutes: 10, workInWaitsMinutes: 10, gapMinutes: 0})
  })

  test('lays beside a step only what opens with “meanwhile”', () => {
    const table = timetable(
      recipeOf(
        '1. Simmer for 40 min.\n2. Meanwhile, fry it for 10 min.\n3. Leave for 5 min.',
        'hands-on: 10 min, total: 45 min',
      ),
    )
    expect(rows(table)).toEqual(['0–40: wait 40', '0–10: work 10', '40–45: wait 5'])
    expect(table?.steps.map(({isBeside}) => isBeside)).toEqual([false, true, false])
  })

  test('goes on beside the step before with what a “meanwhile” step tells further', () => {
    const table = timetable(
      recipeOf(
        '1. Simmer for 40 min.\n2. Meanwhile, fry it for 10 min. Rest it for 5 min.',
        'total: 45 min',
      ),
    )
    expect(rows(table)).toEqual(['0–45: work 5, wait 40', '5–20: work 10, wait 5'])
    expect(table).toMatchObject({totalMinutes: 45, sharedWorkMinutes: 5})
  })

  test('takes the longer end of a range where the whole leaves room, else the shorter', () => {
    const method = '1. Bake for 30 to 40 min.'
    expect(timetable(recipeOf(method, 'total: 45 min'))?.steps[0]?.stretches.at(-1)).toMatchObject({
      occupation: 'wait',
      toMinutes: 45,
      fromMinutes: 5,
    })
    expect(rows(timetable(recipeOf(method, 'total: 35 min')))).toEqual(['0–35: work 5, wait 30'])
  })

  test('says where the steps take longer than the recipe', () => {
    const table = timetable(recipeOf('1. Bake for 50 min.', 'total: 40 min'))
    expect(table).toMatchObject({totalMinutes: 50, beyondMinutes: 10})
  })

  test('is open where the recipe does not say how long it takes', () => {
    const table = timetable(recipeOf('1. Cut it.\n2. Bake for 50 min.'))
    expect(rows(table)).toEqual(['0–0: ', '0–50: wait 50'])
    expect(table).toMatchObject({isOpen: true, totalMinutes: 50})
  })

  test('is none where nothing waits', () => {
    expect(timetable(recipeOf('1. Fry it for 8 min.', 'total: 15 min'))).toBeUndefined()
    expect(timetable(recipeOf('1. Cut it.', 'total: 2 h'))).toBeUndefined()
  })
})
