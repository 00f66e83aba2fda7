import {expect, test} from 'vitest'
import {pieceOf} from '../../src/shopping/piece.ts'
import {food} from '../templates/sample.ts'

test('a piece weighs what the shop weighs, with its peel', () => {
  const onion = food('onion', {}, {measures: new Map([['medium', 90]]), refuseRatio: 0.1})
  expect(pieceOf(onion)).toEqual({size: 'medium', grams: 100})
})

test('what comes in one size has no size to name', () => {
  const egg = food('egg', {}, {measures: new Map([['each', 50]])})
  expect(pieceOf(egg)).toEqual({size: '', grams: 50})
})

test('nobody counts raisins', () => {
  expect(pieceOf(food('raisins', {}, {measures: new Map([['each', 0.5]])}))).toBeUndefined()
})

test('flour is not bought by the piece', () => {
  expect(pieceOf(food('flour', {}, {measures: new Map([['cup', 125]])}))).toBeUndefined()
})
