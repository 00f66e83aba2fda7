import {expect, test} from 'vitest'
import {SpilledLines} from '../../src/cli/spilled-lines.ts'
import {seededRandom} from '../seeded-random.ts'
import {temporaryFolder} from '../temporary-folder.ts'

test('every bucket gives its lines in the order they came, however many buckets there are', () => {
  const spilled = new SpilledLines(temporaryFolder(), 'part')
  const random = seededRandom(3)
  const expected = new Map<number, string[]>()
  for (let index = 0; index < 30_000; index++) {
    const bucket = Math.floor(random() ** 2 * 3_000)
    const line = `${index} ${[...'é€😀x'].slice(0, index % 5).join('')}`
    spilled.add(bucket, line)
    expected.set(bucket, [...(expected.get(bucket) ?? []), line])
  }
  const buckets = spilled.buckets()
  expect(buckets).toEqual([...expected.keys()].toSorted((left, right) => left - right))
  for (const bucket of buckets) expect([...spilled.lines(bucket)]).toEqual(expected.get(bucket))
  expect([...spilled.lines(9_999)]).toEqual([])
})

test('lines longer than what is held or read at once come back whole', () => {
  const spilled = new SpilledLines(temporaryFolder(), 'part')
  const lines = ['a', 'ß'.repeat(1_500_000), '', 'b'.repeat(40_000), 'c']
  for (const line of lines) spilled.add(0, line)
  expect([...spilled.lines(0)]).toEqual(lines)
})
