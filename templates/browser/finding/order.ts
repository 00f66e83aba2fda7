import type {Dish} from './find.ts'

/** Which column sorts the table, by its key in the head. */
export interface Order {
  readonly key: string
  readonly isDown: boolean
}

/** Places of dishes in the order that is asked for; they come by name. */
export function sorted(
  places: readonly number[],
  dishes: readonly Dish[],
  order: Order | undefined,
): readonly number[] {
  if (order === undefined) return places
  const {key, isDown} = order
  if (key === 'title') return isDown ? places.toReversed() : places
  const direction = isDown ? -1 : 1
  return places.toSorted((left, right) => {
    const [here, there] = [left, right].map((place) => dishes[place]?.figures[key]?.value)
    // What is not known stands last, whichever way the column is sorted.
    if (here === undefined || there === undefined) {
      return Number(here === undefined) - Number(there === undefined)
    }
    return direction * (here - there)
  })
}
