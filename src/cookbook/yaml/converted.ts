import type {Located} from '../problem.ts'
import type {Reader, Reading} from './reader.ts'

/**
 * A reader whose value is checked or turned into another. `convert` reports what it refuses, and
 * then returns nothing.
 */
export function converted<A, B>(
  reader: Reader<A>,
  convert: (read: Located<A>, reading: Reading) => B | undefined,
): Reader<B> {
  return {
    expected: reader.expected,
    schema: reader.schema,
    read(node, reading) {
      const read = reader.read(node, reading)
      const value = read && convert(read, reading)
      return value === undefined ? undefined : {value, place: node.place}
    },
  }
}

/** A reader that refuses the whole when it reports anything within, so that one slip is told once. */
export function intact<T>(reader: Reader<T>): Reader<T> {
  return {
    ...reader,
    read(node, reading) {
      let isIntact = true
      const read = reader.read(node, {
        ...reading,
        report(problem) {
          isIntact = false
          reading.report(problem)
        },
      })
      return isIntact ? read : undefined
    },
  }
}
