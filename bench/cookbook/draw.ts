import {seededRandom} from '../../test/seeded-random.ts'

/** Choices that are the same in every run. */
export interface Draw {
  readonly from: <Value>(values: readonly [Value, ...Value[]]) => Value
  /** Different values, in the order they were drawn. */
  readonly some: <Value>(count: number, values: readonly Value[]) => readonly Value[]
  /** A multiple of `step` from `least` to `most`. */
  readonly number: (least: number, most: number, step: number) => number
}

/** @param seed whole number from 1 up; near ones give unlike choices */
export function drawer(seed: number): Draw {
  const random = seededRandom((seed * 7919) % (2 ** 31 - 1))
  // The first numbers of near seeds are near each other.
  for (let warmUp = 0; warmUp < 5; warmUp++) random()
  const below = (count: number) => Math.floor(random() * count)
  return {
    from: (values) => values[below(values.length)] ?? values[0],
    some(count, values) {
      const left = [...values]
      return Array.from({length: Math.min(count, left.length)}, () =>
        left.splice(below(left.length), 1),
      ).flat()
    },
    number: (least, most, step) => least + step * below((most - least) / step + 1),
  }
}
