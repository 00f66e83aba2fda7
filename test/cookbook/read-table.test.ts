import {expect, test} from 'vitest'
import {readTable} from '../../src/cookbook/read-table.ts'

test('A table is named after its file, and its faults are problems of that file', () => {
  const {table, problems} = readTable({
    path: 'tables/national.tsv',
    text: 'id\tname\tfat_g\n7\tLard\t99.8\n8\tSuet\t-4\n',
  })
  expect(table.food('7')?.id).toBe('national/7')
  expect(problems).toEqual([
    {
      ruleId: 'readable-value',
      severity: 'error',
      file: 'tables/national.tsv',
      place: {
        start: {line: 3, column: 8, offset: 33},
        end: {line: 3, column: 10, offset: 35},
      },
      actual: '-4',
      reason: '`fat_g` is `-4`, expected a number from `0` to `100`',
      note: 'A figure nobody published is an empty cell; one too small to measure is `0`.',
    },
  ])
})
