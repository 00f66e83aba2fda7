import {describe, expect, test} from 'vitest'
import {placeInPassage} from '../../../src/cookbook/passage-place.ts'
import {durationsIn} from '../../../src/cookbook/prose/durations.ts'
import {readRecipeBody} from '../read-body.ts'

/** Each phrase with its times: words, minutes at least, at most. */
const spent: readonly (readonly [string, string, number, number])[] = [
  ['Fry for 10 minutes.', '10 minutes', 10, 10],
  ['Fry for 10 to 12 minutes.', '10 to 12 minutes', 10, 12],
  ['Bake 45-50 mins.', '45-50 mins', 45, 50],
  ['Bake 45–50 min, turning once.', '45–50 min', 45, 50],
  ['Leave between 10 and 12 min to rise.', '10 and 12 min', 10, 12],
  ['Simmer for two to three hours.', 'two to three hours', 120, 180],
  ['Simmer for two or three hours.', 'two or three hours', 120, 180],
  ['Rest an hour.', 'an hour', 60, 60],
  ['Rest for an hour and a half.', 'an hour and a half', 90, 90],
  ['Rest for one and a half hours.', 'one and a half hours', 90, 90],
  ['Rest for 1½ hours.', '1½ hours', 90, 90],
  ['Rest for 1 1/2 hours.', '1 1/2 hours', 90, 90],
  ['Rest for 1.5 h.', '1.5 h', 90, 90],
  ['Rest for 1 h 30 min.', '1 h 30 min', 90, 90],
  ['Rest for 1h30 in the tin.', '1h30', 90, 90],
  ['Rest for 1 hour and 15 minutes.', '1 hour and 15 minutes', 75, 75],
  ['Rest for 2 hours, 20 minutes, covered.', '2 hours, 20 minutes', 140, 140],
  ['Rest for 2½ hours.', '2½ hours', 150, 150],
  ['Soak for half an hour.', 'half an hour', 30, 30],
  ['Half an hour is enough.', 'Half an hour', 30, 30],
  ['Soak for a quarter of an hour.', 'a quarter of an hour', 15, 15],
  ['Soak for three-quarters of an hour.', 'three-quarters of an hour', 45, 45],
  ['Give it a 20-minute rest.', '20-minute', 20, 20],
  ['Knead for ten minutes.', 'ten minutes', 10, 10],
  ['Knead for twenty-five minutes.', 'twenty-five minutes', 25, 25],
  ['Knead a good 10 minutes.', '10 minutes', 10, 10],
  ['Cook another 5 minutes.', '5 minutes', 5, 5],
  ['Cook for 5 more minutes.', '5 more minutes', 5, 5],
  ['Cook for a further 5 minutes.', '5 minutes', 5, 5],
  ['Wait a few minutes.', 'a few minutes', 2, 5],
  ['Wait a couple of minutes.', 'a couple of minutes', 2, 2],
  ['Toast for a minute.', 'a minute', 1, 1],
  ['Toast for 90 seconds.', '90 seconds', 1.5, 1.5],
  ['Sear 3 minutes on each side.', '3 minutes', 6, 6],
  ['Sear for 3 minutes per side.', '3 minutes', 6, 6],
  ['Sear 2 to 3 minutes a side.', '2 to 3 minutes', 4, 6],
  ['Bake for 1 hour to 1½ hours.', '1 hour to 1½ hours', 60, 90],
  ['Bake for 50 minutes to 1 hour.', '50 minutes to 1 hour', 50, 60],
  ['Rest for up to 2 hours.', '2 hours', 0, 120],
  ['Chill overnight.', 'overnight', 480, 720],
  ['Prove in the fridge for 3 days.', '3 days', 4320, 4320],
  ['Simmer 10min.', '10min', 10, 10],
  ['Keep stirring for 5 minutes.', '5 minutes', 5, 5],
  ['Keep warm for 10 minutes.', '10 minutes', 10, 10],
  ['Simmer for at least 10 minutes.', '10 minutes', 10, 10],
  ['Simmer 2hrs.', '2hrs', 120, 120],
]

describe('durations', () => {
  test.each(spent)('%s', (phrase, words, lowMinutes, highMinutes) => {
    const [found, ...rest] = durationsIn(phrase)
    expect(rest).toEqual([])
    expect(found).toMatchObject({text: words, lowMinutes, role: 'spent'})
    expect(found?.highMinutes).toBeCloseTo(highMinutes)
    expect(phrase.slice(found?.from, found?.to)).toBe(words)
  })

  test.each([
    ['Stir every 5 minutes.', 'every'],
    ['Melt in 20-second bursts.', 'every'],
    ['Melt in bursts of 30 seconds.', 'every'],
    ['After 20 minutes turn the tray.', 'part'],
    ['Take the lid off for the last 5 minutes.', 'part'],
    ['Keep it covered for the first 10 minutes.', 'part'],
    ['Take it out 30 minutes before you bake.', 'part'],
    ['Cool within 2 hours.', 'within'],
    ['Keeps 3 days in the fridge.', 'keeping'],
    ['Store it in a jar for up to 2 weeks.', 'keeping'],
    ['It freezes well for 3 months.', 'keeping'],
    ['Kept in the fridge it lasts 12 hours.', 'keeping'],
    ['Roast for 20 minutes per 500 g.', 'rate'],
    ['The dish takes 45 minutes in all.', 'whole'],
    ['Ready in 20 minutes.', 'whole'],
  ])('%s', (phrase, role) => {
    expect(durationsIn(phrase)).toMatchObject([{role}])
  })

  test.each([
    'Take a second bowl.',
    'Turn after the second rise.',
    'Cut into 2 cm cubes.',
    'Use the minute steaks.',
    'A day-old loaf does best.',
    'Serve at once.',
    'Add 4 eggs.',
  ])('none in: %s', (phrase) => {
    expect(durationsIn(phrase)).toEqual([])
  })

  test('finds several in order', () => {
    const text = 'Fry 5 minutes, add the stock, simmer for 1 h, then rest ten minutes.'
    expect(durationsIn(text).map(({lowMinutes}) => lowMinutes)).toEqual([5, 60, 10])
  })

  test.each(['\n', '\r\n', '\n   '])('has its exact place in the file', (lineEnd) => {
    const text = `1. Simmer the *pearl* barley for **40${lineEnd}   minutes**, then rest.\n`
    const [passage] = readRecipeBody(text).method.passages
    if (!passage) throw new Error('no passage')
    const [found] = durationsIn(passage.text)
    expect(found).toMatchObject({lowMinutes: 40})
    const place = placeInPassage(passage, found?.from ?? 0, found?.to ?? 0)
    const pointed = text.slice(place.start.offset, place.end.offset)
    expect(pointed.replace(/\s+/g, ' ')).toBe('40 minutes')
  })
})
