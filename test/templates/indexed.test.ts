import {expect, test} from 'vitest'
import {indexed, namesOf} from '../../templates/parts/indexed.ts'

const lists = indexed([['leek', 'barley', 'leek'], [], ['barley', 'egg']])

test('each name is written once, and once for each thing that has it', () => {
  expect(lists).toEqual({names: ['leek', 'barley', 'egg'], of: [[0, 1], [], [1, 2]]})
})

test('the names of a thing come back, and of none there are none', () => {
  expect([0, 1, 2, 3].map((index) => namesOf(lists, index))).toEqual([
    ['leek', 'barley'],
    [],
    ['barley', 'egg'],
    [],
  ])
})
