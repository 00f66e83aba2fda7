import {spawn, spawnSync} from 'node:child_process'
import {once} from 'node:events'
import {mkdirSync, rmSync, statSync, utimesSync} from 'node:fs'
import {hostname} from 'node:os'
import path from 'node:path'
import {afterEach, describe, expect, test, vi} from 'vitest'
import {withSiteLock} from '../../src/site/site-lock.ts'
import {workFolder} from '../../src/site/work-folder.ts'
import {recoverSite, writeSite} from '../../src/site/write-site.ts'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'
import {siteTree, workNames} from './site-tree.ts'

const pages = [{path: 'index.html', content: 'one'}]

function siteLockedBy(holder: unknown): string {
  const site = temporaryFolder()
  putFiles(site, {'.scalepan/lock/holder.json': JSON.stringify(holder)})
  return site
}

afterEach(() => {
  vi.useRealTimers()
})

describe('a lock that somebody left', () => {
  test('by a process that is gone is taken over', async () => {
    const {pid} = spawnSync(process.execPath, ['--version'])
    const site = siteLockedBy({pid, host: hostname(), token: 'x'})
    await writeSite(site, pages)
    expect(siteTree(site)).toEqual({'index.html': 'one'})
    expect(workNames(site)).toEqual(['manifest.json'])
  })

  test.each([
    ['with our own number, from an earlier life', {pid: process.pid, host: hostname(), token: 'x'}],
    ['with no name in it', {}],
  ])('%s is taken over', async (_, holder) => {
    const site = siteLockedBy(holder)
    await writeSite(site, pages)
    expect(siteTree(site)).toEqual({'index.html': 'one'})
  })

  test('by another machine is waited for, then told, and the site stays', async () => {
    vi.useFakeTimers()
    const site = siteLockedBy({pid: 4711, host: 'galley', token: 'x'})
    const written = writeSite(site, pages).catch((error: unknown) => error)
    await vi.advanceTimersByTimeAsync(11_000)
    expect(await written).toMatchObject({
      name: 'EnvironmentFailure',
      message: 'Another build (process 4711 on galley) is writing the site',
      hint: expect.stringContaining(path.join(site, '.scalepan/lock')),
    })
    expect(siteTree(site)).toEqual({})
    expect(workNames(site)).toEqual(['lock'])
  })

  test('is waited for beyond that while it shows signs of life', async () => {
    vi.useFakeTimers()
    const site = siteLockedBy({pid: 4711, host: 'galley', token: 'x'})
    const lock = path.join(site, '.scalepan/lock')
    const written = writeSite(site, pages)
    for (let second = 8; second <= 40; second += 8) {
      await vi.advanceTimersByTimeAsync(8000)
      utimesSync(path.join(lock, 'holder.json'), second, second)
    }
    rmSync(lock, {recursive: true})
    await vi.advanceTimersByTimeAsync(100)
    await written
    expect(siteTree(site)).toEqual({'index.html': 'one'})
  })

  test('by a process that runs is waited for until it ends', async () => {
    const other = spawn(process.execPath, ['-e', 'setTimeout(() => {}, 60_000)'])
    await once(other, 'spawn')
    const site = siteLockedBy({pid: other.pid, host: hostname(), token: 'x'})
    let isWritten = false
    const written = writeSite(site, pages).then(() => {
      isWritten = true
    })
    await new Promise((resolve) => setTimeout(resolve, 200))
    expect(isWritten).toBe(false)
    other.kill()
    await once(other, 'exit')
    await written
    expect(siteTree(site)).toEqual({'index.html': 'one'})
  })
})

describe('a lock that is held', () => {
  test('is lost when another build took it over: the change does not happen', async () => {
    const work = workFolder(temporaryFolder())
    mkdirSync(work.folder)
    const lost = withSiteLock(work, ({assertHeld}) => {
      assertHeld()
      const other = JSON.stringify({pid: 1, host: 'galley', token: 'other'})
      putFiles(work.folder, {'lock/holder.json': other})
      assertHeld()
    })
    await expect(lost).rejects.toThrow('Another build (process 1 on galley) is writing the site')
    expect(workNames(work.site)).toEqual(['lock'])
  })

  test('lost while the site was compared: nothing is written', async () => {
    const site = temporaryFolder()
    const other = JSON.stringify({pid: 1, host: 'galley', token: 'other'})
    const page = {
      path: 'index.html',
      get content() {
        putFiles(site, {'.scalepan/lock/holder.json': other})
        return 'one'
      },
    }
    await expect(writeSite(site, [page])).rejects.toThrow('Another build (process 1 on galley)')
    expect(siteTree(site)).toEqual({})
    expect(workNames(site)).toEqual(['lock'])
  })

  test('shows a sign of life with a page, each second anew', async () => {
    vi.useFakeTimers()
    const site = temporaryFolder()
    const signs: number[] = []
    function* slowPages() {
      for (const content of ['one', 'two', 'three']) {
        signs.push(statSync(path.join(site, '.scalepan/lock/holder.json')).mtimeMs)
        vi.setSystemTime(Date.now() + 1500)
        yield {path: content, content}
      }
    }
    await writeSite(site, slowPages())
    expect(new Set(signs).size).toBe(3)
  })

  test('is let go when the work fails', async () => {
    const work = workFolder(temporaryFolder())
    mkdirSync(work.folder)
    const failed = withSiteLock(work, () => {
      throw new Error('slip')
    })
    await expect(failed).rejects.toThrow('slip')
    expect(workNames(work.site)).toEqual([])
  })
})

test('looking for an interrupted build in a folder that is not there makes nothing', async () => {
  const folder = temporaryFolder()
  expect(await recoverSite(path.join(folder, 'site'))).toBe('nothing')
  expect(workNames(folder)).toEqual([])
})
