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
