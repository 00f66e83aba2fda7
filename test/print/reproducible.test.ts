import {expect, test} from 'vitest'
import {reproducible} from '../../src/print/reproducible.ts'

const date = new Date('2025-11-24T16:00:00Z')

test('dates and numbers of the making become the same, and no offset moves', () => {
  const made = (second: string, first: number) =>
    Buffer.from(
      `/CreationDate (D:202601010000${second}+00'00') /ModDate (D:202601010000${second}+00'00')
/ID (node${`${first}`.padStart(8, '0')}) /Headers [(node${`${first + 7}`.padStart(8, '0')})] \xff`,
      'latin1',
    )
  const [one, other] = [reproducible(made('01', 7), date), reproducible(made('59', 99), date)]
  expect(one.toString('latin1')).toBe(
    `/CreationDate (D:20251124160000+00'00') /ModDate (D:20251124160000+00'00')
/ID (node00000001) /Headers [(node00000002)] \xff`,
  )
  expect(other.equals(one)).toBe(true)
  expect(one.length).toBe(made('01', 7).length)
})
