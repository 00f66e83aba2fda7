import {mkdir, mkdtemp, rename, rm, writeFile} from 'node:fs/promises'
import {tmpdir} from 'node:os'
import path from 'node:path'
import {setTimeout} from 'node:timers/promises'
import {afterEach, beforeEach, expect, test} from 'vitest'
import {watchFolder} from '../../src/preview/watch-folder.ts'

let folder = ''
let end: () => Promise<void>
let calls = 0
let heard: () => void

beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), '.scalepan-watch-'))
  await writeFile(path.join(folder, 'a.md'), 'a')
  calls = 0
  heard = () => undefined
  end = await watchFolder(folder, () => {
    calls += 1
    heard()
  })
})

afterEach(async () => {
  await end()
  await rm(folder, {recursive: true})
})

/** Settles once the watch has called after some work. */
async function callAfter(work: () => Promise<unknown>): Promise<void> {
  const call = new Promise<void>((resolve) => {
    heard = resolve
  })
  await work()
  await call
}

test('a save by renaming, as editors do it, is heard', async () => {
  await callAfter(async () => {
    await writeFile(path.join(folder, '.a.md.swap'), 'b')
    await rename(path.join(folder, '.a.md.swap'), path.join(folder, 'a.md'))
  })
  expect(calls).toBeGreaterThan(0)
})

test('a file in a new folder is heard', async () => {
  await callAfter(() => mkdir(path.join(folder, 'recipes')))
  await callAfter(() => writeFile(path.join(folder, 'recipes', 'b.md'), 'b'))
  expect(calls).toBeGreaterThan(1)
})

test('hidden files, where editors keep copies, are not', async () => {
  await writeFile(path.join(folder, '.hidden'), 'x')
  // Longer than a save takes to be heard: a slow machine can only let a fault pass.
  await setTimeout(300)
  expect(calls).toBe(0)
})

test('a burst of saves is heard as few', async () => {
  await callAfter(() =>
    Promise.all(
      Array.from({length: 50}, (_, index) => writeFile(path.join(folder, `${index}.md`), 'x')),
    ),
  )
  expect(calls).toBeLessThan(10)
})
