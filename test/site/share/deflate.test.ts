import {inflateSync} from 'node:zlib'
import fc from 'fast-check'
import {expect, test} from 'vitest'
import {zlibPacked} from '../../../src/site/share/deflate.ts'

/** Unpacked by the zlib of Node.js, which knows nothing of our packer. */

test('what is packed comes out the same, however it repeats', () => {
  const runs = fc.array(fc.tuple(fc.integer({min: 0, max: 255}), fc.integer({min: 1, max: 700})))
  fc.assert(
    fc.property(runs, fc.integer({min: 1, max: 500}), (parts, rowLength) => {
      const bytes = new Uint8Array(parts.flatMap(([byte, count]) => Array(count).fill(byte)))
      expect(new Uint8Array(inflateSync(zlibPacked(bytes, rowLength)))).toEqual(bytes)
    }),
    {numRuns: 50},
  )
})

test('bytes without order come out the same too', () => {
  fc.assert(
    fc.property(fc.uint8Array({maxLength: 2000}), (bytes) => {
      expect(new Uint8Array(inflateSync(zlibPacked(bytes, 401)))).toEqual(bytes)
    }),
    {numRuns: 50},
  )
})

test('a row like the one above takes hardly any room', () => {
  const row = Uint8Array.from({length: 400}, (_, index) => (index * 37) % 251)
  const rows = new Uint8Array(
    Array(100)
      .fill([...row])
      .flat(),
  )
  expect(zlibPacked(rows, 400).length).toBeLessThan(1200)
})
