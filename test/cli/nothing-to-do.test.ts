/** A build from what the last one was made from is over at a glance, and is never wrong about it. */

import {readFileSync, rmSync, statSync, utimesSync, writeFileSync} from 'node:fs'
import path from 'node:path'
import {describe, expect, test} from 'vitest'
import {temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand, everyByte} from './command.ts'
import {everySiteByte} from './site-bytes.ts'

const {run} = bundledCommand()

const receipt = 'site/.scalepan/receipt.json'

/** The warning is that its method never names the barley. */
const pot = `---
title: Barley pot
serves: 2
ingredients:
  pearl barley: 100 g
---

1. Simmer until soft.
`

function built() {
  const folder = temporaryFolder({'content/recipes/pot.md': pot})
  expect(build(folder)).toMatchObject({code: 0, stderr: expect.stringContaining('ingredient-used')})
  return folder
}

function build(folder: string) {
  return run(['build'], {cwd: folder})
}

function siteOf(folder: string) {
  return [...everySiteByte(path.join(folder, 'site'))]
}

const withoutTime = (text: string) => text.replace(/time .*\n/, '')

describe('with nothing changed', () => {
  test('a build tells the same again and touches nothing', () => {
    const folder = built()
    const site = path.join(folder, 'site/index.html')
    const [before, changed] = [everyByte(path.join(folder, 'site')), statSync(site).mtimeMs]
    const [again, third] = [build(folder), build(folder)]
    expect(again.stdout).toMatch(/0 written, \d+ unchanged, 0 removed/)
    expect(again.stderr).toContain('ingredient-used')
    expect(withoutTime(third.stdout)).toBe(withoutTime(again.stdout))
    expect(everyByte(path.join(folder, 'site'))).toEqual(before)
    expect(statSync(site).mtimeMs).toBe(changed)
  })

  test('what it tells comes from the receipt', () => {
    const folder = built()
    const text = readFileSync(path.join(folder, receipt), 'utf8')
    writeFileSync(path.join(folder, receipt), text.replace('"recipes"', '"dishes "'))
    expect(build(folder).stdout).toContain('dishes ')
  })

  test('`--quiet` leaves out its warnings', () => {
    const folder = built()
    expect(run(['build', '--quiet'], {cwd: folder})).toEqual({code: 0, stdout: '', stderr: ''})
  })
})

describe('all is done again', () => {
  test.each<readonly [string, (folder: string) => void]>([
    ['the receipt is gone', (folder) => rmSync(path.join(folder, receipt))],
    ['the receipt is no JSON', (folder) => writeFileSync(path.join(folder, receipt), '{"key":')],
    ['the receipt tells something else', (folder) => rewritten(folder, /"rows":.*?]]/, '"rows":1')],
    ['a file is missing in the receipt', (folder) => rewritten(folder, /"stamps":\[.*$/, '"a":0}')],
    ['a page is gone', (folder) => rmSync(path.join(folder, 'site/recipes/pot/index.html'))],
    [
      'a page has been emptied',
      (folder) => writeFileSync(path.join(folder, 'site/index.html'), ''),
    ],
  ])('where %s', (_, change) => {
    const folder = built()
    const before = siteOf(folder)
    change(folder)
    expect(build(folder)).toMatchObject({
      code: 0,
      stderr: expect.stringContaining('ingredient-used'),
    })
    const site = siteOf(folder).filter(([file]) => !file.includes('changed'))
    expect(site).toEqual(before)
  })

  test('where a page was changed by hand and is as long as before', () => {
    const folder = built()
    const page = path.join(folder, 'site/index.html')
    const text = readFileSync(page, 'utf8')
    const {atime, mtime} = statSync(page)
    writeFileSync(page, text.replace('Barley', 'Barlez'))
    // As if nobody had touched it.
    utimesSync(page, atime, mtime)
    expect(build(folder).stdout).toContain('1 written')
    expect(readFileSync(page, 'utf8')).toBe(text)
  })

  test.each<readonly [string, string, string]>([
    ['a recipe', 'content/recipes/pot.md', pot.replace('100 g', '120 g')],
    ['the settings', 'content/cookbook.yaml', 'title: Another table\n'],
    ['a new recipe', 'content/recipes/second.md', pot.replace('Barley pot', 'Second pot')],
    ['the foods', 'content/foods.yaml', 'pearl barley: { same as: usda/20005 }\n'],
  ])('where %s changed, as a build from nothing does it', (_, file, text) => {
    const folder = built()
    writeFileSync(path.join(folder, file), text)
    const ended = build(folder)
    const fresh = run(['build', '--site', 'fresh'], {cwd: folder})
    expect(ended.code).toBe(fresh.code)
    expect(siteOf(folder)).toEqual([...everySiteByte(path.join(folder, 'fresh'))])
  })

  test('where the day is another, since labels grow old', () => {
    const folder = built()
    const later = {SOURCE_DATE_EPOCH: '4000000000'}
    const before = keyOf(folder)
    expect(run(['build'], {cwd: folder, env: later}).stdout).toContain('0 written')
    expect(keyOf(folder)).not.toBe(before)
  })

  test('where it fails, and the site stays', () => {
    const folder = built()
    const before = siteOf(folder)
    writeFileSync(path.join(folder, 'content/recipes/pot.md'), pot.replace('100 g', 'some'))
    expect(build(folder)).toMatchObject({code: 1})
    expect(siteOf(folder)).toEqual(before)
  })
})

function rewritten(folder: string, from: RegExp, to: string): void {
  const file = path.join(folder, receipt)
  const text = readFileSync(file, 'utf8')
  expect(text).toMatch(from)
  writeFileSync(file, text.replace(from, to))
}

function keyOf(folder: string): unknown {
  return JSON.parse(readFileSync(path.join(folder, receipt), 'utf8')).key
}
