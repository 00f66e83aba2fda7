import {expect, test} from 'vitest'
import {once, remembered, rememberedText} from '../../src/units/remembered.ts'

test('an object is asked once, another one for itself', () => {
  const asked: string[] = []
  const nameOf = remembered(({name}: {readonly name: string}) => {
    asked.push(name)
    return name === 'none' ? undefined : name
  })
  const [oats, none] = [{name: 'oats'}, {name: 'none'}]
  expect([nameOf(oats), nameOf(none), nameOf(oats), nameOf(none)]).toEqual([
    'oats',
    undefined,
    'oats',
    undefined,
  ])
  expect(nameOf({name: 'oats'})).toBe('oats')
  expect(asked).toEqual(['oats', 'none', 'oats'])
})

test('a text is asked once, until there are more than are kept', () => {
  const asked: string[] = []
  const length = rememberedText((text) => {
    asked.push(text)
    return text.length
  }, 2)
  for (const text of ['a', 'bb', 'a', 'bb', 'ccc', 'a']) expect(length(text)).toBe(text.length)
  expect(asked).toEqual(['a', 'bb', 'ccc', 'a'])
})

test('what is made once is made when it is wanted', () => {
  let made = 0
  const number = once(() => {
    made++
    return made
  })
  expect(made).toBe(0)
  expect([number(), number()]).toEqual([1, 1])
})
