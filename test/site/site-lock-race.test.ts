/** Two builds that find the same lock stale: the slower one must not take the faster one's. */

import {renameSync} from 'node:fs'
import {hostname} from 'node:os'
import path from 'node:path'
import {expect, test, vi} from 'vitest'
import {writeSite} from '../../src/site/write-site.ts'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'
import {siteTree} from './site-tree.ts'

/** Runs once, right before the build under test moves the stale lock away. */
const meanwhile = vi.hoisted(() => ({act: undefined as (() => void) | undefined}))

vi.mock('node:fs', async (importOriginal) => {
  const real = await importOriginal<typeof import('node:fs')>()
  return {
    ...real,
    renameSync(from: string, to: string) {
      const {act} = meanwhile
      if (from.endsWith('lock') && act !== undefined) {
        meanwhile.act = undefined
        act()
      }
      real.renameSync(from, to)
    },
  }
})

test('a fresh lock moved by mistake is put back, and waited for', async () => {
  vi.useFakeTimers()
  const site = temporaryFolder()
  const lock = path.join(site, '.scalepan/lock')
  // Our own number in a lock is from an earlier life: stale.
  const stale = {pid: process.pid, host: hostname(), token: 'stale'}
  putFiles(site, {'.scalepan/lock/holder.json': JSON.stringify(stale)})
  meanwhile.act = () => {
    renameSync(lock, path.join(site, '.scalepan/scrap-of-the-faster'))
    const fresh = {pid: 4711, host: 'galley', token: 'fresh'}
    putFiles(lock, {'holder.json': JSON.stringify(fresh)})
  }
  const written = writeSite(site, [{path: 'index.html', content: 'one'}]).catch(
    (error: unknown) => error,
  )
  await vi.advanceTimersByTimeAsync(11_000)
  expect(await written).toMatchObject({
    message: 'Another build (process 4711 on galley) is writing the site',
  })
  expect(siteTree(site)).toEqual({})
  vi.useRealTimers()
})
