import type {Food} from './food.ts'
import {nearestSpelled, type SpelledName, spelled} from './nearest-names.ts'

/** Names looked at for each food that is asked for: several may be of one food. */
const namesPerFood = 8

/**
 * The foods whose name or other name is most like what was written, best first: names with a few
 * slips of the pen, then longer ones in which every written word begins a word.
 * @param most length of the answer at most
 */
export function findFoods(written: string, foods: Iterable<Food>, most: number): readonly Food[] {
  const byName = new Map<string, readonly Food[]>()
  for (const food of foods) {
    for (const name of [food.name, ...food.also]) {
      byName.set(name, [...(byName.get(name) ?? []), food])
    }
  }
  const names = [...byName.keys()].map(spelled)
  const ranked = [
    ...nearestSpelled(written, names, most * namesPerFood),
    ...holding(spelled(written).words, names),
  ]
  return [...new Set(ranked.flatMap((name) => byName.get(name) ?? []))].slice(0, most)
}

/** Names with all the words, written whole or begun; the shortest, which say least else, first. */
function holding(words: readonly string[], names: readonly SpelledName[]): readonly string[] {
  if (words.length === 0) return []
  return names
    .filter((name) => words.every((word) => name.words.some((other) => other.startsWith(word))))
    .toSorted((left, right) => left.joined.length - right.joined.length || order(left, right))
    .map(({name}) => name)
}

function order(left: SpelledName, right: SpelledName): number {
  return left.name < right.name ? -1 : 1
}
