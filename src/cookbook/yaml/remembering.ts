import type {Reading} from './reader.ts'

/** A reading that knows whether anything in it was refused, so that one slip is told once. */
export interface RememberingReading {
  readonly reading: Reading
  hasReported(): boolean
}

export function remembering(reading: Reading): RememberingReading {
  let count = 0
  return {
    reading: {
      ...reading,
      report(problem) {
        count++
        reading.report(problem)
      },
    },
    hasReported: () => count > 0,
  }
}
