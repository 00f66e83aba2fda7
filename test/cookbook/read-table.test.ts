import {expect, test} from 'vitest'
import {limits} from '../../src/cookbook/limits.ts'
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

function tableOf(rows: number, end: string): string {
  const lines = Array.from({length: rows}, (_, row) => `${row}\tfood ${row}\t1${end}`)
  return `id\tname\tfat_g${end}${lines.join('')}`
}

test.each(['\n', '\r\n'])('A table of exactly the limit is read whole (line end %j)', (end) => {
  const whole = tableOf(limits.tableRows, end)
  for (const text of [whole, whole.slice(0, -end.length)]) {
    const {table, problems} = readTable({path: 'tables/national.tsv', text})
    expect(problems).toEqual([])
    expect(table.size).toBe(limits.tableRows)
  }
})

test('One row more is refused with its place; the rows before it can be named', () => {
  const text = tableOf(limits.tableRows + 1, '\n')
  const {table, problems} = readTable({path: 'tables/national.tsv', text})
  expect(problems).toMatchObject([
    {
      ruleId: 'table-rows',
      severity: 'error',
      file: 'tables/national.tsv',
      place: {start: {line: 100_002, column: 1}, end: {line: 100_002, column: 21}},
      reason: 'The table goes on behind `100000` rows, expected no more',
    },
  ])
  expect(table.size).toBe(limits.tableRows)
  expect(table.food('99999')?.id).toBe('national/99999')
  expect(table.food('100000')).toBeUndefined()
})

test('A fault behind a lone carriage return is on the line where an editor shows it', () => {
  const text = 'id\tname\tfat_g\n7\tLard\r\t-1\n'
  const {problems} = readTable({path: 'tables/national.tsv', text})
  expect(problems[0]?.place?.start).toEqual({line: 3, column: 2, offset: 22})
})

test('A message is one line, whatever a cell holds', () => {
  const {problems} = readTable({path: 'tables/national.tsv', text: 'id\tn\rame\n7\tLard\n'})
  expect(problems[0]?.reason).toBe('Column 2 of the table is `n␍ame`, expected `name`')
})
