import type {Keeps} from '../../src/cookbook/recipe.ts'
import type {Words} from '../words/en.ts'
import {daysText} from './time-text.ts'

/** How long a dish keeps, as running text: `In the fridge: 3 days.`; empty where nobody says. */
export function keepingText(keeps: Keeps | undefined, words: Words): string {
  const {room, fridge, freezer} = words.recipe
  const places = [
    [room, keeps?.roomDays],
    [fridge, keeps?.fridgeDays],
    [freezer, keeps?.freezerDays],
  ] as const
  return places
    .flatMap(([place, days]) => (days ? `${place}: ${daysText(days.value, words)}.` : []))
    .join(' ')
}
