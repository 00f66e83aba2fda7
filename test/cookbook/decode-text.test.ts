import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {decodeText} from '../../src/cookbook/decode-text.ts'

const utf8 = (text: string) => new TextEncoder().encode(text)

describe('a file that is text', () => {
  test('any text comes back as it was saved', () => {
    fc.assert(
      fc.property(fc.string({unit: 'grapheme'}), (text) => {
        fc.pre(!text.includes('\0') && !text.startsWith('\uFEFF'))
        expect(decodeText(utf8(text))).toEqual({kind: 'text', text})
      }),
    )
  })

  test.each(['\uFEFF', '\uFEFF\uFEFF'])(
    'byte order marks are no part of the text, and line ends stay',
    (marks) => {
      expect(decodeText(utf8(`${marks}---\r\ntitle: Pot\r\n`))).toEqual({
        kind: 'text',
        text: '---\r\ntitle: Pot\r\n',
      })
    },
  )
})

describe('a file that is not text', () => {
  test('½ saved in Windows-1252 is found at its line and column', () => {
    const bytes = Uint8Array.of(...utf8('title: Pôt\nx: '), 0xbd, ...utf8(' cup\n'))
    expect(decodeText(bytes)).toEqual({
      kind: 'not text',
      what: 'the byte `BD`',
      at: {line: 2, column: 4, offset: 14},
    })
  })

  test('a character cut off at the end of the file is found', () => {
    const bytes = utf8('serves: 4\n½').subarray(0, 11)
    expect(decodeText(bytes)).toEqual({
      kind: 'not text',
      what: 'the byte `C2`',
      at: {line: 2, column: 1, offset: 10},
    })
  })

  test('a NUL byte is found where it stands', () => {
    expect(decodeText(utf8('one\ntwo\0'))).toEqual({
      kind: 'not text',
      what: 'a NUL byte',
      at: {line: 2, column: 4, offset: 7},
    })
  })

  test.each([
    ['little endian', [0xff, 0xfe, 0x2d, 0x00]],
    ['big endian', [0xfe, 0xff, 0x00, 0x2d]],
  ])('UTF-16, %s, is named', (_, bytes) => {
    expect(decodeText(Uint8Array.from(bytes))).toMatchObject({what: 'UTF-16 text'})
  })

  test('no bytes at all make it hang, throw or lose its place', () => {
    fc.assert(
      fc.property(fc.uint8Array({maxLength: 40}), (bytes) => {
        const decoded = decodeText(bytes)
        if (decoded.kind === 'text') expect(decoded.text).not.toContain('\0')
        else expect(decoded.at.line).toBeGreaterThanOrEqual(1)
      }),
    )
  })
})
