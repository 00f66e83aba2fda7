import {expect, test} from 'vitest'
import {count, median} from '../../bench/ratios.ts'
import {tables} from '../../bench/tables.ts'
import type {ProgramName, Round, Usage} from '../../bench/usage.ts'

function round(wallSeconds: Partial<Record<ProgramName, number>>): Round {
  const names: readonly ProgramName[] = ['E', 'R', 'B', 'version', 'cold', 'unchanged', 'one edit']
  return new Map(
    names.flatMap((name): readonly (readonly [ProgramName, Usage])[] => {
      const seconds = wallSeconds[name]
      if (seconds === undefined) return []
      return [[name, {wallSeconds: seconds, cpuSeconds: 2 * seconds, peakMegabytes: 100 * seconds}]]
    }),
  )
}

test('the median is the middle of what was measured, in whatever order', () => {
  expect(median([9, 1, 5])).toBe(5)
  expect(median([4, 1, 3, 100])).toBe(3.5)
})

test('large numbers are set apart in thousands', () => {
  expect([100, 1_000, 10_000, 1_234_567].map(count)).toEqual([
    '100',
    '1,000',
    '10,000',
    '1,234,567',
  ])
})

test('a ratio is taken within each run, and its median is held against the target', () => {
  const rounds = new Map([
    [10_000, [round({cold: 8, B: 10}), round({cold: 7, B: 10}), round({cold: 70, B: 100})]],
  ])
  expect(tables(rounds)).toContain(
    '| 10,000 | cold build, wall / B | 0.70 (0.70–0.80) | 0.75 | met |',
  )
  const slower = new Map([[10_000, [round({cold: 8, B: 10})]]])
  expect(tables(slower)).toContain('| 10,000 | cold build, wall / B | 0.80 | 0.75 | missed |')
})

test('each target of a large cookbook is in the table with its limit', () => {
  const all = round({E: 1, R: 1, B: 1, version: 2, cold: 1, unchanged: 3, 'one edit': 3})
  const text = tables(new Map([[10_000, [all]]]))
  for (const row of [
    '| cold build, CPU / B | 1.00 | 1.25 | met |',
    '| cold build, peak memory / B | 1.00 | 3 | met |',
    '| no change, wall / R | 3.00 | 2 | missed |',
    '| one edit, wall / R | 3.00 | 3 | met |',
    '| `--version`, wall / E | 2.00 | 1.5 | missed |',
  ]) {
    expect(text).toContain(row)
  }
})

test('how a build grows is told between two sizes of one round', () => {
  const rounds = new Map([
    [1_000, [round({cold: 2}), round({cold: 4})]],
    [10_000, [round({cold: 18}), round({cold: 44})]],
  ])
  const text = tables(rounds)
  expect(text).toContain('| 10,000 | cold build, wall / that of 1,000 | 10.00 (9.00–11.00) | 10 |')
  // 100 MiB a second: (1800 - 200) / 9 and (4400 - 400) / 9 for each thousand.
  expect(text).toContain(
    '| cold build, MiB more for each 1,000 beyond 1,000 | 311.11 (177.78–444.44) | 12 | missed |',
  )
})

test('a program that failed is no target met', () => {
  const text = tables(new Map([[10_000, [round({B: 10})]]]))
  expect(text).toContain('| 10,000 | cold build, wall / B | – | 0.75 | failed |')
})
