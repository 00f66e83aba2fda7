import {expect, test} from 'vitest'
import {fingerprint} from '../../src/site/fingerprint.ts'

test('the sign of a content is FNV-1a', () => {
  // Fowler, Noll, Vo, test vectors of 32-bit FNV-1a (from memory): "a" e40c292c, "foobar" bf9cf968.
  // Our sign also takes in the byte 0xff after each content.
  const ended = (sign: number) =>
    (Math.imul(sign ^ 0xff, 16777619) >>> 0).toString(16).padStart(8, '0')
  expect(fingerprint(['a'])).toBe(ended(0xe40c292c))
  expect(fingerprint(['foobar'])).toBe(ended(0xbf9cf968))
})

test('another content, order or border gives another sign, text and bytes the same', () => {
  const signs = [['ab', 'c'], ['a', 'bc'], ['c', 'ab'], ['abc'], ['abd']].map(fingerprint)
  expect(new Set(signs).size).toBe(signs.length)
  expect(fingerprint([new TextEncoder().encode('müsli')])).toBe(fingerprint(['müsli']))
})
