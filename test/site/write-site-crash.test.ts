/**
 * The site is whole after a crash at every single disk operation of a build, after a crash of the
 * recovery from it, and after every way the disk can refuse: all of them tried, none by chance.
 */

import {rmSync, symlinkSync, type writeFileSync as trulyWrite} from 'node:fs'
import path from 'node:path'
import {beforeEach, describe, expect, test, vi} from 'vitest'
import {recoverSite, siteStanding, writeSite} from '../../src/site/write-site.ts'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'
import {siteTree, workNames} from './site-tree.ts'

/** What the disk does at its next changes: `left` go well, then it fails as `how` says. */
const disk = vi.hoisted(() => ({
  left: Number.POSITIVE_INFINITY,
  how: 'dies' as 'dies' | 'refuses once' | 'is full' | 'refuses once, then dies',
}))

class Death extends Error {}

vi.mock('node:fs', async (importOriginal) => {
  const real = await importOriginal<typeof import('node:fs')>()
  const takesSpace = ['mkdirSync', 'linkSync', 'copyFileSync', 'writeFileSync']
  const changes = [...takesSpace, 'renameSync', 'rmSync', 'rmdirSync', 'unlinkSync']
  const guarded = (name: string, change: (args: unknown[]) => unknown) =>
    function guard(...args: unknown[]) {
      disk.left--
      if (disk.left >= 0) return change(args)
      if (disk.how === 'dies' || (disk.how === 'refuses once, then dies' && disk.left < -2)) {
        // A file may be cut short by the crash, at its very first failing write.
        if (name === 'writeFileSync' && disk.left === -1) cutShort(real.writeFileSync, args)
        throw new Death()
      }
      const isRefused = disk.how === 'is full' ? takesSpace.includes(name) : disk.left === -1
      if (isRefused) throw Object.assign(new Error('no'), {code: 'ENOSPC'})
      return change(args)
    }
  const cutShort = (write: typeof trulyWrite, [full, content]: unknown[]) => {
    const text = typeof content === 'string' ? content : ''
    write(String(full), text.slice(0, text.length / 2))
  }
  const mocked = Object.entries(real).map(([name, value]) => [
    name,
    changes.includes(name) && typeof value === 'function'
      ? guarded(name, (args) => Reflect.apply(value, undefined, args))
      : value,
  ])
  return Object.fromEntries(mocked)
})

const own = {'.gitignore': '*', 'a/own.txt': 'own'}
const oldPages = {'a/changes.html': 'old', 'a/goes.html': 'gone', 'b/goes.html': 'gone', same: 's'}
const newPages = {
  'a/changes.html': 'new',
  'c/d/comes.html': 'come',
  'comes.html': 'come',
  same: 's',
}
const oldSite = {...own, ...oldPages}
const newSite = {...own, ...newPages}

const files = (tree: Readonly<Record<string, string>>) =>
  Object.entries(tree).map(([name, content]) => ({path: name, content}))

async function withDisk<T>(left: number, how: typeof disk.how, use: () => Promise<T>): Promise<T> {
  Object.assign(disk, {left, how})
  try {
    return await use()
  } finally {
    Object.assign(disk, {left: Number.POSITIVE_INFINITY, how: 'dies'})
  }
}

/** Error of a rejected promise; undefined where it went well. */
async function failure(promise: Promise<unknown>): Promise<unknown> {
  return promise.then(
    () => undefined,
    (error: unknown) => error,
  )
}

async function withOldSite(): Promise<string> {
  const site = temporaryFolder(own)
  await writeSite(site, files(oldPages))
  return site
}

/** Number of disk changes of the whole build. */
async function changesOfBuild(): Promise<number> {
  const site = await withOldSite()
  let left = 0
  await withDisk(10_000, 'dies', async () => {
    await writeSite(site, files(newPages))
    left = disk.left
  })
  return 10_000 - left
}

let changes: number
beforeEach(async () => {
  changes = await changesOfBuild()
  expect(changes).toBeGreaterThan(20)
})

describe('a build that dies at its n-th change of the disk', () => {
  test('leaves, after the next command, the whole old site or, later, the whole new one', async () => {
    const outcomes: string[] = []
    for (let n = 0; n < changes; n++) {
      const site = await withOldSite()
      const error = await withDisk(n, 'dies', () => failure(writeSite(site, files(newPages))))
      expect(error, `change ${n}`).toBeInstanceOf(Death)
      await recoverSite(site)
      const isNew = siteTree(site)['a/changes.html'] === 'new'
      expect(siteTree(site), `change ${n}`).toEqual(isNew ? newSite : oldSite)
      outcomes.push(isNew ? 'new' : 'old')
      await writeSite(site, files(newPages))
      expect(siteTree(site)).toEqual(newSite)
      expect(workNames(site)).toEqual(['manifest.json'])
    }
    // One moment decides: everything before it is the old site, everything after the new one.
    expect(outcomes).toContain('old')
    expect(outcomes).toContain('new')
    expect(outcomes).toEqual(outcomes.toSorted().toReversed())
  })

  test('is survived even when the recovery dies too, wherever', async () => {
    for (let n = 0; n < changes; n++) {
      for (let m = 0; m < changes; m++) {
        const site = await withOldSite()
        await withDisk(n, 'dies', () => failure(writeSite(site, files(newPages))))
        const error = await withDisk(m, 'dies', () => failure(recoverSite(site)))
        await recoverSite(site)
        const isNew = siteTree(site)['a/changes.html'] === 'new'
        expect(siteTree(site), `changes ${n}, ${m}`).toEqual(isNew ? newSite : oldSite)
        if (error === undefined) break
      }
    }
  })

  test('loses nothing that somebody wrote between the crash and the next command', async () => {
    for (let n = 0; n < changes; n++) {
      const site = await withOldSite()
      await withDisk(n, 'dies', () => failure(writeSite(site, files(newPages))))
      putFiles(site, {'a/changes.html': 'by hand', 'b/goes.html': 'by hand'})
      await recoverSite(site)
      await writeSite(site, files(newPages))
      const kept = siteTree(path.join(site, '.scalepan/changed'))
      expect([siteTree(site)['a/changes.html'], kept['a/changes.html']]).toEqual(['new', 'by hand'])
      expect(siteTree(site)['b/goes.html'], `change ${n}`).toBe('by hand')
    }
  })
})

describe('a receipt', () => {
  const outcome = 'told'

  test.each([
    ['replaces and removes', newPages],
    ['only adds', {...oldPages, 'comes.html': 'come'}],
  ])('speaks for no other site, wherever a build dies that %s', async (_, pages) => {
    const sites: Readonly<Record<string, unknown>> = {old: oldSite, new: {...own, ...pages}}
    const believed: string[] = []
    for (let n = 0; n < changes + 2; n++) {
      const site = temporaryFolder(own)
      await writeSite(site, files(oldPages), {key: 'old', outcome})
      const dying = () => failure(writeSite(site, files(pages), {key: 'new', outcome}))
      await withDisk(n, 'dies', dying)
      await recoverSite(site)
      for (const [key, expected] of Object.entries(sites)) {
        if (!siteStanding(site, key)) continue
        believed.push(key)
        expect(siteTree(site), `change ${n}, ${key}`).toEqual(expected)
      }
    }
    expect(new Set(believed)).toEqual(new Set(['old', 'new']))
  })
})

describe('between a crash and the next command', () => {
  test('a folder that became a link is not written through', async () => {
    for (let n = 0; n < changes; n++) {
      const site = await withOldSite()
      await withDisk(n, 'dies', () => failure(writeSite(site, files(newPages))))
      const outside = temporaryFolder({'changes.html': 'old', 'goes.html': 'gone'})
      rmSync(path.join(site, 'a'), {recursive: true})
      symlinkSync(outside, path.join(site, 'a'))
      await failure(recoverSite(site))
      await failure(writeSite(site, files(newPages)))
      const tree = siteTree(outside)
      expect(tree, `change ${n}`).toEqual({'changes.html': 'old', 'goes.html': 'gone'})
    }
  })

  test('a page written by hand while a change was being taken back stays', async () => {
    let takenBack = 0
    for (let n = 0; n < changes; n++) {
      const site = await withOldSite()
      // The disk refuses once at change n; the build takes the change back and dies at that, later.
      await withDisk(n, 'refuses once, then dies', () => failure(writeSite(site, files(newPages))))
      if (!workNames(site).includes('undoing')) continue
      takenBack++
      putFiles(site, {'a/changes.html': 'by hand'})
      expect(await recoverSite(site)).toBe('taken back')
      expect(siteTree(site), `change ${n}`).toEqual({...oldSite, 'a/changes.html': 'by hand'})
    }
    expect(takenBack).toBeGreaterThan(0)
  })
})

describe('a disk that refuses', () => {
  test.each(['refuses once', 'is full'] as const)(
    '(it %s) leaves the old site at once',
    async (how) => {
      const refusals: number[] = []
      for (let n = 0; n < changes; n++) {
        const site = await withOldSite()
        const error = await withDisk(n, how, () => failure(writeSite(site, files(newPages))))
        const isNew = siteTree(site)['a/changes.html'] === 'new'
        expect(siteTree(site), `change ${n}`).toEqual(isNew ? newSite : oldSite)
        if (error !== undefined) {
          refusals.push(n)
          expect(error).toMatchObject({
            name: 'EnvironmentFailure',
            message: `Cannot write the site into ${site}: the disk is full`,
          })
        }
        if (!isNew) expect(error).toBeDefined()
        expect(await failure(writeSite(site, files(newPages)))).toBeUndefined()
        expect(siteTree(site)).toEqual(newSite)
        expect(workNames(site)).toEqual(['manifest.json'])
      }
      expect(refusals.length).toBeGreaterThan(10)
    },
  )

  test('a first build that fails leaves nothing behind', async () => {
    const folder = temporaryFolder()
    const site = path.join(folder, 'site')
    for (const n of [1, 2, 3, 5, 8]) {
      const error = await withDisk(n, 'is full', () => failure(writeSite(site, files(newPages))))
      expect(error).toMatchObject({message: expect.stringContaining('the disk is full')})
      expect(workNames(folder)).toEqual([])
      expect(siteTree(folder), `change ${n}`).toEqual({})
    }
  })
})
