import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {
  type JsonFault,
  type ListedObject,
  ObjectsReader,
} from '../../../src/food/import/json-objects.ts'

function read(pieces: readonly string[]) {
  const reader = new ObjectsReader()
  const told = pieces.flatMap((piece) => [...reader.push(piece)])
  const end = reader.end()
  const all = end ? [...told, end] : told
  return {
    key: reader.key,
    objects: all.filter((each): each is ListedObject => each.kind === 'object'),
    faults: all.filter((each): each is JsonFault => each.kind === 'fault'),
  }
}

const faultOf = (text: string) => read([text]).faults[0]

test('the objects of one list, each with its number and line', () => {
  const {key, objects, faults} = read([
    '{"Foods": [\n{"a": 1},\n\n{"a": "x]}\\"{[", "b": [[{}]]} ]}\n',
  ])
  expect(faults).toEqual([])
  expect(key).toBe('Foods')
  expect(objects).toEqual([
    {kind: 'object', value: {a: 1}, number: 1, line: 2},
    {kind: 'object', value: {a: 'x]}"{[', b: [[{}]]}, number: 2, line: 4},
  ])
  expect(read(['{"Foods":[]}']).objects).toEqual([])
})

test('what JSON.stringify writes comes back, however it is cut into pieces', () => {
  const list = fc.array(fc.dictionary(fc.string(), fc.jsonValue({maxDepth: 4})), {maxLength: 4})
  fc.assert(
    fc.property(list, fc.constantFrom('', ' ', '\n'), fc.nat(9), (given, space, step) => {
      const text = JSON.stringify({Foods: given}, undefined, space)
      const pieces = text.match(new RegExp(`[^]{1,${step + 1}}`, 'g')) ?? []
      const {objects, faults} = read(pieces)
      expect(faults).toEqual([])
      // As JSON has them: it knows no -0.
      expect(objects.map(({value}) => value)).toEqual(JSON.parse(text).Foods)
    }),
  )
})

test('cut off anywhere, it is told that something is missing', () => {
  const whole = '{"Foods":[{"a":"\\""},{"b":[1,2]}]}'
  expect(faultOf(whole)).toBeUndefined()
  for (let length = 0; length < whole.length; length++) {
    expect(faultOf(whole.slice(0, length))?.expected, whole.slice(0, length)).toContain(
      ', not the end',
    )
  }
  expect(faultOf('{"Foods":[\n{"a":1},\n{"b":')).toEqual({
    kind: 'fault',
    number: 2,
    line: 3,
    expected: 'the rest of the object, not the end',
  })
})

describe('what is no such list is refused at its place', () => {
  test.each<[string, string, number, number]>([
    ['<html>', 'an object with one list of objects, not the end', 0, 1],
    ['[{"a":1}]', 'an object with one list of objects', 0, 1],
    ['{"n": 3, "Foods": [{}]}', 'an object with one list of objects', 0, 1],
    ['{"Foods": [1]}', 'an object or `]`, not `1`', 0, 1],
    ['{"Foods": [{}\n{}]}', '`,` or `]`, not `{`', 1, 2],
    ['{"Foods": [{},]}', 'an object, not `]`', 1, 1],
    ['{"Foods": [{},\n{a: 1}]}', 'an object in JSON', 2, 2],
    ['{"Foods": [{"a": [1}]]}', 'an object in JSON', 1, 1],
    ['{"Foods": [{"a": 01}]}', 'an object in JSON', 1, 1],
    ['{"Foods": [{}], "More": []}', '`}`, not `,`', 1, 1],
    ['{"Foods": [{}]} {}', 'nothing more, not `{`', 1, 1],
  ])('%s', (text, expected, number, line) => {
    expect(faultOf(text)).toEqual({kind: 'fault', expected, number, line})
  })

  test('objects nested deeper than any food', () => {
    const nested = (levels: number) =>
      `{"Foods":[{},\n{"a":${'['.repeat(levels - 1)}${']'.repeat(levels - 1)}}]}`
    expect(faultOf(nested(20))).toBeUndefined()
    expect(faultOf(nested(21))).toMatchObject({number: 2, line: 2, expected: /20 levels/})
    expect(faultOf(nested(200_000))).toMatchObject({number: 2, line: 2})
  })

  test('a head without end, and an object without end, do not fill the memory', () => {
    expect(faultOf(`{"${'a'.repeat(2_000)}`)?.expected).toMatch(/one list of objects/)
    const reader = new ObjectsReader()
    const told = [...reader.push('{"Foods":[{"a":"')]
    for (let piece = 0; piece < 17 && told.length === 0; piece++) {
      told.push(...reader.push('b'.repeat(1_048_576)))
    }
    expect(told).toMatchObject([{kind: 'fault', number: 1, expected: 'a shorter object'}])
    expect([...reader.push('"}]}')]).toEqual([])
  })
})
