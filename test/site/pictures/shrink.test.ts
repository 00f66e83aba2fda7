import {describe, expect, test} from 'vitest'
import {type Raster, shrunk} from '../../../src/site/pictures/shrink.ts'

/** A grey picture from its rows. */
function grey(...rows: readonly (readonly number[])[]): Raster {
  const data = new Uint8ClampedArray(rows.flat().flatMap((value) => [value, value, value, 255]))
  return {width: rows[0]?.length ?? 0, height: rows.length, data}
}

function reds({data}: Raster): readonly number[] {
  return [...data].filter((_, index) => index % 4 === 0)
}

describe('a picture in fewer pixels', () => {
  test('has the mean of what each covers', () => {
    const half = shrunk(grey([0, 100, 40, 40], [100, 200, 80, 0]), 2)
    expect(half).toMatchObject({width: 2, height: 1})
    expect(reds(half)).toEqual([100, 40])
  })

  test('counts a pixel that two share for each by its part', () => {
    // Each of two covers one and a half of three: (0 + 90 / 2) / 1.5 and (90 / 2 + 240) / 1.5.
    expect(reds(shrunk(grey([0, 90, 240]), 2))).toEqual([30, 190])
  })

  test('keeps an even ground and its opacity as they are', () => {
    const small = shrunk(grey(...Array.from({length: 7}, () => Array(11).fill(77))), 4)
    expect(new Set(reds(small))).toEqual(new Set([77]))
    expect(new Set([...small.data].filter((_, index) => index % 4 === 3))).toEqual(new Set([255]))
  })

  test('is at least a line high', () => {
    expect(shrunk(grey([1, 2, 3, 4, 5, 6]), 2)).toMatchObject({width: 2, height: 1})
  })
})
