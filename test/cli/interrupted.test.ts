/**
 * The command itself, killed at random moments and run twice at once. What happens at each single
 * disk operation is in test/site/write-site-crash.test.ts; here it is the real process.
 */

import {type ChildProcess, spawn} from 'node:child_process'
import {once} from 'node:events'
import {cpSync, mkdtempSync, renameSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import process from 'node:process'
import {setTimeout as wait} from 'node:timers/promises'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {recoverSite} from '../../src/site/write-site.ts'
import {seededRandom} from '../seeded-random.ts'
import {siteTree, workNames} from '../site/site-tree.ts'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand} from './command.ts'

const {entry, run} = bundledCommand()

/** Enough files that writing them takes a good part of a build. */
const pictures = 100

/** Kills in all: as many in flight as there are folders, one after the other in each. */
const kills = 100
const folders = 4

function book(title: string): Readonly<Record<string, string>> {
  const names = Array.from({length: pictures}, (_, n) => `content/images/${n}.jpg`)
  const images = Object.fromEntries(names.map((name) => [name, `${title} ${name}`]))
  return {'content/cookbook.yaml': `title: ${title}\n`, ...images}
}

/** Two cookbooks that take turns, and the sites they make. */
const calm = book('Calm water')
const rough = book('Rough water')
let calmSite: Readonly<Record<string, string>> = {}
let roughSite: Readonly<Record<string, string>> = {}
let built = ''

beforeAll(() => {
  built = mkdtempSync(path.join(tmpdir(), 'scalepan-built-'))
  expect(run(['new', 'cookbook', '.'], {cwd: built}).code).toBe(0)
  roughSite = siteOf(rough)
  calmSite = siteOf(calm)
  expect(Object.keys(calmSite).length).toBeGreaterThan(pictures)
  expect(calmSite).not.toEqual(roughSite)
})
afterAll(() => rmSync(built, {recursive: true, force: true}))

function siteOf(files: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  putFiles(built, files)
  expect(run(['build'], {cwd: built}).code).toBe(0)
  return siteTree(path.join(built, 'site'))
}

/** A folder in which the calm cookbook has been built. */
function calmFolder(): string {
  const folder = temporaryFolder()
  cpSync(built, folder, {recursive: true})
  return folder
}

function startBuild(folder: string, content = 'content'): ChildProcess {
  const args = [entry(), 'build', '--content', content]
  return spawn(process.execPath, args, {cwd: folder, stdio: 'ignore'})
}

async function ended(child: ChildProcess): Promise<number | null> {
  if (child.exitCode === null && child.signalCode === null) await once(child, 'exit')
  return child.exitCode
}

/** Notes of a build that is under way, or was killed. */
function unfinished(site: string): readonly string[] {
  return workNames(site).filter((name) => name !== 'manifest.json' && name !== 'receipt.json')
}

/** What kills in one folder found. */
interface Killed {
  /** Kills that left work of the build half done. */
  readonly amidst: number
  /** Kills behind which the site was another than before. */
  readonly changed: number
}

/** Kills builds in one folder, at moments from its start to shortly after the usual end. */
async function killBuilds(seed: number, wholeMilliseconds: number): Promise<Killed> {
  const folder = calmFolder()
  const site = path.join(folder, 'site')
  const random = seededRandom(seed)
  let isCalm = true
  let [amidst, changed] = [0, 0]
  for (let kill = 0; kill < kills / folders; kill++) {
    putFiles(folder, isCalm ? rough : calm)
    const build = startBuild(folder)
    await wait(wholeMilliseconds * 1.2 * random())
    build.kill('SIGKILL')
    await ended(build)
    if (unfinished(site).length > 0) amidst++
    await recoverSite(site)
    const tree = siteTree(site)
    const isNowCalm = tree['images/0.jpg'] === calmSite['images/0.jpg']
    expect(tree, `seed ${seed}, kill ${kill}`).toEqual(isNowCalm ? calmSite : roughSite)
    if (isNowCalm !== isCalm) changed++
    isCalm = isNowCalm
  }
  // The last build goes by what the cookbook holds, whatever the killed ones left.
  putFiles(folder, isCalm ? rough : calm)
  expect(run(['build'], {cwd: folder}).code).toBe(0)
  expect(siteTree(site)).toEqual(isCalm ? roughSite : calmSite)
  expect(unfinished(site)).toEqual([])
  return {amidst, changed}
}

test('a build killed at any of a hundred random moments leaves one whole site', async () => {
  const inFlight = <T>(act: (seed: number) => Promise<T>) =>
    Promise.all(Array.from({length: folders}, (_, index) => act(index + 1)))
  const began = performance.now()
  await inFlight(() => ended(startBuild(calmFolder())))
  const wholeMilliseconds = performance.now() - began
  const found = await inFlight((seed) => killBuilds(seed, wholeMilliseconds))
  const sum = (count: (killed: Killed) => number) =>
    found.map(count).reduce((all, one) => all + one)
  // Else the moments were too early or too late to show anything.
  expect(sum(({amidst}) => amidst)).toBeGreaterThan(0)
  expect(sum(({changed}) => changed)).toBeGreaterThan(0)
}, 600_000)

test('the next command puts a killed build right, even a command that fails', async () => {
  const folder = calmFolder()
  const site = path.join(folder, 'site')
  putFiles(folder, rough)
  const build = startBuild(folder)
  while (unfinished(site).length === 0 && build.exitCode === null) await wait(1)
  build.kill('SIGKILL')
  await ended(build)
  putFiles(folder, {'content/recipes/broken.md': 'no front matter'})
  expect(run(['build'], {cwd: folder}).code).toBe(1)
  const tree = siteTree(site)
  expect(tree).toEqual(tree['images/0.jpg'] === calmSite['images/0.jpg'] ? calmSite : roughSite)
})

test('builds at once follow each other: each ends well, and the site is the one of the last', async () => {
  const folder = calmFolder()
  cpSync(path.join(folder, 'content'), path.join(folder, 'other'), {recursive: true})
  const inOther = Object.entries(rough).map(([name, text]) => [
    name.replace('content', 'other'),
    text,
  ])
  putFiles(folder, Object.fromEntries(inOther))
  const builds = ['content', 'other', 'content', 'other'].map((content) =>
    startBuild(folder, content),
  )
  expect(await Promise.all(builds.map(ended))).toEqual([0, 0, 0, 0])
  const tree = siteTree(path.join(folder, 'site'))
  const isCalm = tree['images/0.jpg'] === calmSite['images/0.jpg']
  expect(tree).toEqual(isCalm ? calmSite : roughSite)
  expect(unfinished(path.join(folder, 'site'))).toEqual([])
})

test('a cookbook that is saved during builds gives one of its states, whole', async () => {
  const folder = calmFolder()
  const settings = path.join(folder, 'content/cookbook.yaml')
  const states = ['title: Calm water\n', 'title: High water\n']
  const sites = states.map((text) => {
    writeFileSync(settings, text)
    expect(run(['build'], {cwd: folder}).code).toBe(0)
    return JSON.stringify(siteTree(path.join(folder, 'site')))
  })
  expect(sites[0]).not.toBe(sites[1])
  for (let build = 0; build < 6; build++) {
    const child = startBuild(folder)
    for (let save = 0; child.exitCode === null; save++) {
      // As editors save: the file is never half there.
      writeFileSync(`${settings}~`, states[save % 2] ?? '')
      renameSync(`${settings}~`, settings)
      await wait(3)
    }
    expect(child.exitCode).toBe(0)
    expect(sites).toContain(JSON.stringify(siteTree(path.join(folder, 'site'))))
  }
})
