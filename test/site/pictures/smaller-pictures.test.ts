import {expect, test} from 'vitest'
import {smallerPaths} from '../../../src/site/pictures/smaller-pictures.ts'
import {jpeg, png} from './picture.ts'

/** The head of a JPEG with the frame that says its size (ITU-T T.81, B.2.2). */
function jpegOf(width: number, height: number): Uint8Array {
  const [high, low] = [width >> 8, width & 0xff]
  const frame = [0xff, 0xc0, 0, 11, 8, height >> 8, height & 0xff, high, low, 1, 1, 0x11, 0]
  return new Uint8Array([0xff, 0xd8, ...frame, 0xff, 0xda, 0, 2, 0xff, 0xd9])
}

function paths(path: string, bytes: Uint8Array): readonly string[] {
  return [...smallerPaths({path, bytes}).values()]
}

test('a photograph gets smaller ones beside it, widest first', () => {
  expect(paths('pots/bowl.jpg', jpegOf(4032, 3024))).toEqual([
    'pots/bowl.1600.jpg',
    'pots/bowl.800.jpg',
    'pots/bowl.400.jpg',
  ])
})

test('one that is hardly wider than a smaller one gets none of that width', () => {
  expect(paths('bowl.jpeg', jpegOf(1999, 800))).toEqual(['bowl.800.jpeg', 'bowl.400.jpeg'])
  expect(paths('bowl.jpeg', jpegOf(2000, 800))).toHaveLength(3)
  expect(paths('bowl.jpg', jpeg())).toEqual([])
})

test('smaller ones and other kinds of picture get none', () => {
  expect(paths('bowl.1600.jpg', jpegOf(1600, 1200))).toEqual([])
  expect(paths('bowl.png', png())).toEqual([])
})
