import {chmodSync, readdirSync, readFileSync, statSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import {describe, expect, test} from 'vitest'
import {temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand, everyByte} from './command.ts'

const {run} = bundledCommand()

const pot = 'content/recipes/pot.md'

const potText = `---
title: Barley pot   # the crews' own
serves: 2
ingredients:
    pearl barley:   200 g
    water: 800 g
stated: {energy: "999 kcal",  protein: 9.9 g}
accepted: {portion-weight: none}
---

Simmer the [barley](#pearl-barley) in the [water](#water).
`

// USDA SR28 20005, barley, pearled, raw: 352 kcal and 9.91 g protein per 100 g.
const mended = potText.replace('999', '352')

function kitchen(text: string): string {
  return temporaryFolder({
    [pot]: text,
    'content/recipes/other.md': potText.replace('Barley pot', 'Other').replace('999', '352'),
  })
}

function read(folder: string): string {
  return readFileSync(path.join(folder, pot), 'utf8')
}

describe('check --fix', () => {
  test.each([
    ['', potText, mended],
    [' of a file with carriage returns', potText, mended].map((text) =>
      text.replaceAll('\n', '\r\n'),
    ),
    [' of a file with a byte order mark', `\uFEFF${potText}`, `\uFEFF${mended}`],
    [' of a file with two of them', `\uFEFF\uFEFF${potText}`, `\uFEFF\uFEFF${mended}`],
  ])('writes the one figure that is wrong%s, and no other byte', (_, before = '', after = '') => {
    const folder = kitchen(before)
    chmodSync(path.join(folder, pot), 0o640)
    const other = everyByte(folder).get('content/recipes/other.md')
    const ended = run(['check', '--fix'], {cwd: folder})
    expect(read(folder)).toBe(after)
    expect(ended.code).toBe(0)
    expect(ended.stderr).toBe(
      `As it was before: content/.scalepan/before/1\n${pot}: 1 finding mended\n`,
    )
    expect(everyByte(folder).get('content/.scalepan/before/1/recipes/pot.md')).toBe(
      Buffer.from(before).toString('base64'),
    )
    expect(ended.stdout).not.toContain('stated-macros')
    expect(everyByte(folder).get('content/recipes/other.md')).toBe(other)
    expect(statSync(path.join(folder, pot)).mode & 0o777).toBe(0o640)
    expect(readdirSync(path.join(folder, 'content/recipes'))).toEqual(['other.md', 'pot.md'])
  })

  test.skipIf(process.platform === 'win32')(
    'on a disk that is full leaves every byte, and says so',
    () => {
      const long = potText.replace('Simmer', `${'Rinse it well. '.repeat(400)}Simmer`)
      const folder = kitchen(long)
      // Files may grow to 4,096 bytes: the mended text does not fit.
      const ended = run(['check', '--fix'], {cwd: folder, mostBlocks: 8})
      expect(ended).toMatchObject({
        code: 2,
        stderr: expect.stringMatching(/^scalepan: Cannot write /u),
      })
      expect(read(folder)).toBe(long)
      expect(readdirSync(path.join(folder, 'content/recipes'))).toEqual(['other.md', 'pot.md'])
    },
  )

  test('is done when it is done', () => {
    const folder = kitchen(mended)
    const before = everyByte(folder)
    expect(run(['check', '--fix'], {cwd: folder}).stderr).toContain('Nothing to mend')
    expect(everyByte(folder)).toEqual(before)
  })

  test('leaves other files than those named', () => {
    const folder = kitchen(potText)
    run(['check', '--fix', 'content/recipes/other.md'], {cwd: folder})
    expect(read(folder)).toBe(potText)
  })

  test('leaves what the writer accepts', () => {
    const accepted = potText.replace('portion-weight: none', 'stated-macros: measured in a lab')
    const folder = kitchen(accepted)
    const ended = run(['check', '--fix'], {cwd: folder})
    expect(read(folder)).toBe(accepted)
    expect(ended.stdout).toContain('Accepted: measured in a lab')
    expect(ended.code).toBe(0)
  })

  test('leaves a file that would be worse off', () => {
    const flow =
      '---\n{title: Tea, serves: 1, ingredients: {water: 200 g}}\n---\n\nBoil the [water](#water).\n'
    const folder = kitchen(flow)
    run(['check', '--fix'], {cwd: folder})
    expect(read(folder)).toBe(flow)
  })

  test('still ends with 1 where errors are left', () => {
    const folder = kitchen(`${potText}\nSee [the other](missing.md).\n`)
    const ended = run(['check', '--fix'], {cwd: folder})
    expect(ended.code).toBe(1)
    expect(read(folder)).toContain('352 kcal')
  })
})

describe('check --fix-dry-run', () => {
  test('prints what would change, and changes nothing', () => {
    const folder = kitchen(potText)
    const before = everyByte(folder)
    const {stdout, code} = run(['check', '--fix-dry-run'], {cwd: folder})
    expect(code).toBe(0)
    expect(stdout).toContain(`--- a/${pot}\n+++ b/${pot}\n@@ -4,7 +4,7 @@\n`)
    expect(stdout).toContain('\n-stated: {energy: "999 kcal",  protein: 9.9 g}\n')
    expect(stdout).toContain('\n+stated: {energy: "352 kcal",  protein: 9.9 g}\n')
    expect(everyByte(folder)).toEqual(before)
  })
})
