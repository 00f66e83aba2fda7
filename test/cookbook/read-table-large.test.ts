import {readFileSync, truncateSync, writeFileSync} from 'node:fs'
import {afterEach, describe, expect, test} from 'vitest'
import {EnvironmentFailure} from '../../src/cookbook/environment-failure.ts'
import {LargeTable} from '../../src/cookbook/read-table-large.ts'
import {macrosOf} from '../../src/food/nearest-foods.ts'
import {standardUncertainty} from '../../src/units/uncertain.ts'
import {type LargeFood, writeLargeTable} from '../large-table.ts'
import {seededRandom} from '../seeded-random.ts'

const open: LargeTable[] = []

afterEach(async () => {
  for (const table of open.splice(0)) await table.close()
})

async function opened(foods: readonly LargeFood[]): Promise<LargeTable> {
  const table = await LargeTable.open(await writeLargeTable(foods))
  open.push(table)
  return table
}

async function names(table: LargeTable, written: string, most = 10): Promise<readonly string[]> {
  return (await table.find(written, most)).map(({name}) => name)
}

const shelf: readonly LargeFood[] = [
  {id: 3, name: 'CRISP OATS, Boathouse Mill', serving: '30\t'},
  {id: 40, name: 'CRISP OATS WITH PLUMS, Boathouse Mill'},
  {id: 41, name: 'OAT DRINK, Slipway (per 100 ml)', serving: '\t240'},
  {id: 4_294_967_295, name: 'Crème of leeks', figures: [90, 2, 6, 7]},
]

describe('a row by its id', () => {
  test('is found, and nothing is found for what is no id', async () => {
    const table = await opened(shelf)
    expect(table.name).toBe('packets')
    expect(table.size).toBe(4)
    expect(await table.row('3')).toBe('3\tCRISP OATS, Boathouse Mill\t30\t\t400\t10\t10\t60')
    expect(await table.row('4294967295')).toMatch(/^4294967295\tCrème/)
    for (const id of ['2', '5', '42', '03', '3 ', '', '-3', '4294967296', '99999999999', 'x']) {
      expect(await table.row(id), id).toBeUndefined()
    }
  })

  test('of 20,000, each of its own, over many blocks', async () => {
    const foods = Array.from({length: 20_000}, (_, index) => ({
      id: 7 * index + 1,
      name: `Barley No. ${index}`,
    }))
    const table = await opened(foods)
    for (let index = 0; index < foods.length; index += 37) {
      expect(await table.row(String(7 * index + 1))).toContain(`\tBarley No. ${index}\t`)
      expect(await table.row(String(7 * index + 2))).toBeUndefined()
    }
  })
})

describe('foods by name', () => {
  test('exactly, with slips of the pen, in another order, by the beginning of a word', async () => {
    const table = await opened(shelf)
    expect(await names(table, 'Crisp oats, Boathouse Mill', 1)).toEqual([shelf[0]?.name])
    expect(await names(table, 'crips oats')).toEqual([shelf[0]?.name, shelf[1]?.name])
    expect(await names(table, 'plums oats crisp', 1)).toEqual([shelf[1]?.name])
    expect(await names(table, 'creme lee', 1)).toEqual(['Crème of leeks'])
    expect(await names(table, 'boathouze')).toHaveLength(2)
    expect(await names(table, 'slip')).toEqual([shelf[2]?.name])
  })

  test('the shortest of those with all the words first, and no word counts twice', async () => {
    const table = await opened([
      {id: 1, name: 'RYE BAR WITH WALNUTS AND PLUMS'},
      {id: 2, name: 'RYE BAR'},
      // Three words that are like `oats`, and none like the other that is asked for.
      {id: 3, name: 'OATS AND OAT AND OATEN'},
    ])
    expect(await names(table, 'rye bar')).toEqual(['RYE BAR', 'RYE BAR WITH WALNUTS AND PLUMS'])
    expect(await names(table, 'oats curd')).toEqual([])
  })

  test('nothing for what is alike to none, for signs alone and for no name at all', async () => {
    const table = await opened(shelf)
    for (const written of ['zwieback', '?!', '', 'oats '.repeat(100)]) {
      expect(await names(table, written), written).toEqual([])
    }
  })

  test('of 5,000, those a plain search of all names gives, and no more than asked for', async () => {
    const random = seededRandom(5)
    const words = ['oat', 'rye', 'plum', 'leek', 'curd', 'spread', 'bar', 'soup', 'smooth', 'dark']
    const foods = Array.from({length: 5_000}, (_, index) => ({
      id: index + 1,
      name: [0, 1, 2].map(() => words[Math.floor(random() * words.length)]).join(' '),
    }))
    const table = await opened(foods)
    for (const wanted of [['rye', 'soup'], ['dark'], ['plum', 'curd', 'bar']]) {
      const holding = foods.filter(({name}) =>
        wanted.every((word) => name.split(' ').includes(word)),
      )
      const found = await names(table, wanted.join(' '), holding.length)
      expect(found.toSorted()).toEqual(holding.map(({name}) => name).toSorted())
      expect(await names(table, wanted.join(' '), 3)).toEqual(found.slice(0, 3))
    }
  })
})

test('the figures of a serving are as uncertain as its label; those per 100 ml are passed over', async () => {
  const table = await opened(shelf)
  const foods = []
  for await (const {food, macros} of table.rowsByWeight()) {
    foods.push(food())
    expect(macros).toEqual(macrosOf(food().per100g))
  }
  expect(foods.map(({id}) => id)).toEqual(['packets/3', 'packets/40', 'packets/4294967295'])
  const [oats, plain] = foods
  // 10 g in 100 g are 3 g in 30 g, which a US label prints for 2.5 to 3.5 g: 21 CFR 101.9(c)(7).
  expect(oats && standardUncertainty(oats.per100g.protein)).toBeCloseTo(100 / 30 / Math.sqrt(12), 9)
  expect(plain && standardUncertainty(plain.per100g.protein)).toBeCloseTo(1 / Math.sqrt(12), 9)
})

describe('a file that is not as it was written', () => {
  const foods = Array.from({length: 3_000}, (_, index) => ({id: index, name: `Rye bar ${index}`}))

  test('is refused at every length but its own, with what to do', async () => {
    const file = await writeLargeTable(foods)
    const {length} = readFileSync(file)
    for (const cut of [length - 1, length - 200, Math.floor(length / 2), 1, 0]) {
      truncateSync(file, cut)
      const failure = await LargeTable.open(file).catch((error: unknown) => error)
      expect(failure).toBeInstanceOf(EnvironmentFailure)
      expect(failure).toMatchObject({
        message: expect.stringContaining('cannot be used: it is cut off'),
        hint: expect.stringContaining('scalepan foods import'),
      })
    }
  })

  test('gives what it gave or is refused, whichever byte was changed', async () => {
    const file = await writeLargeTable(foods)
    const sound = readFileSync(file)
    const random = seededRandom(11)
    let refused = 0
    for (let round = 0; round < 150; round++) {
      const changed = Buffer.from(sound)
      const at = Math.floor(random() * sound.length)
      changed.writeUInt8(changed.readUInt8(at) ^ (1 + Math.floor(random() * 255)), at)
      writeFileSync(file, changed)
      try {
        const table = await LargeTable.open(file)
        open.push(table)
        expect(await table.row('1234')).toMatch(/^1234\tRye bar 1234\t/)
        expect(await names(table, 'rye bar 77', 1)).toEqual(['Rye bar 77'])
      } catch (error) {
        if (!(error instanceof EnvironmentFailure)) throw error
        expect(error.message).toContain('cannot be used')
        refused++
      }
    }
    // What lies in blocks that neither question reads does no harm; most of this small file is read.
    expect(refused).toBeGreaterThan(75)
  })

  test('is refused when its checksums or its trailer were changed', async () => {
    const file = await writeLargeTable(foods)
    const sound = readFileSync(file)
    const trailer = sound.lastIndexOf('scalepan foods')
    const changed = Buffer.from(sound)
    changed.writeUInt8(changed.readUInt8(trailer - 1) ^ 1, trailer - 1)
    writeFileSync(file, changed)
    await expect(LargeTable.open(file)).rejects.toThrow('its checksums were changed')
    for (const end of [sound.subarray(trailer), sound.subarray(trailer - 70_000)]) {
      writeFileSync(file, end)
      await expect(LargeTable.open(file)).rejects.toThrow('it is cut off')
    }
  })

  test('another version, and a file of something else', async () => {
    const file = await writeLargeTable(foods)
    const text = readFileSync(file, 'latin1').replace('scalepan foods 1:', 'scalepan foods 2:')
    writeFileSync(file, text, 'latin1')
    await expect(LargeTable.open(file)).rejects.toThrow('no table of this version')
    writeFileSync(file, 'id\tname\n')
    await expect(LargeTable.open(file)).rejects.toThrow('no table of this version')
    await expect(LargeTable.open(`${file}.gone`)).rejects.toThrow('not found')
  })
})

test('the same foods give the same bytes', async () => {
  const [left, right] = [await writeLargeTable(shelf), await writeLargeTable(shelf)]
  expect(readFileSync(left).equals(readFileSync(right))).toBe(true)
})
