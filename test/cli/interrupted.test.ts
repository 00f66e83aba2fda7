/**
 * The command itself, killed at random moments and run twice at once. What happens at each single
 * disk operation is in test/site/write-site-crash.test.ts; here it is the real process.
 */

import {type ChildProcess, spawn} from 'node:child_process'
import {once} from 'node:events'
import {cpSync, mkdtempSync, rmSync} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import process from 'node:process'
import {setTimeout as wait} from 'node:timers/promises'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {siteTree, workNames} from '../site/site-tree.ts'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand} from './command.ts'

const {entry, run} = bundledCommand()

/** Enough files that writing them takes a good part of a build. */
const pictures = 300
const kills = 20

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

test('a build killed at any moment leaves one whole site after the next command, even a failing one', async () => {
  const folder = calmFolder()
  const site = path.join(folder, 'site')
  const broken = path.join(folder, 'content/recipes/broken.md')
  putFiles(folder, rough)
  const began = performance.now()
  await ended(startBuild(folder))
  const wholeMilliseconds = performance.now() - began
  let isCalm = false
  for (let kill = 0; kill < kills; kill++) {
    putFiles(folder, isCalm ? rough : calm)
    const build = startBuild(folder)
    await wait(wholeMilliseconds * ((kill + 0.5) / kills))
    build.kill('SIGKILL')
    await ended(build)
    putFiles(folder, {'content/recipes/broken.md': 'no front matter'})
    expect(run(['build'], {cwd: folder}).code).toBe(1)
    rmSync(broken)
    const tree = siteTree(site)
    isCalm = tree['images/0.jpg'] === calmSite['images/0.jpg']
    expect(tree, `kill ${kill}`).toEqual(isCalm ? calmSite : roughSite)
  }
  expect(run(['build'], {cwd: folder}).code).toBe(0)
  expect(workNames(site)).toEqual(['manifest.json'])
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
  expect(workNames(path.join(folder, 'site'))).toEqual(['manifest.json'])
})
