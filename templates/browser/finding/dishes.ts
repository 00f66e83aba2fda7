import type {ColumnData, FindingData} from '../../parts/finding-data.ts'
import {namesOf} from '../../parts/indexed.ts'
import type {Dish, Known} from './find.ts'

/** The dishes that the data of the table tell of, in its order. */
export function dishesOf(data: FindingData): readonly Dish[] {
  const notStated = new Set(data.notStated)
  const columns = Object.entries(data.columns).map(
    ([key, column]) => [key, knownIn(column)] as const,
  )
  return data.slugs.map((_, place) => ({
    words: data.words.of[place] ?? [],
    figures: Object.fromEntries(columns.map(([key, known]) => [key, known(place)])),
    tags: namesOf(data.tags, place),
    diets: namesOf(data.diets, place),
    allergens: namesOf(data.allergens, place),
    isOpen: notStated.has(place),
  }))
}

function knownIn({values, open}: ColumnData): (place: number) => Known | undefined {
  const bounds = new Set(open)
  return (place) => {
    const value = values[place]
    return value === null || value === undefined
      ? undefined
      : {value, isComplete: !bounds.has(place)}
  }
}
