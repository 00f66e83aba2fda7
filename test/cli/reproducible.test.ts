/**
 * The same cookbook gives the same bytes, wherever, whenever and under whichever settings of the
 * machine it is built; manifest and all.
 */

import {createHash} from 'node:crypto'
import {readdirSync, readFileSync, utimesSync} from 'node:fs'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import {beforeAll, describe, expect, test} from 'vitest'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand} from './command.ts'
import {everySiteByte} from './site-bytes.ts'

const {run} = bundledCommand()

const demo = fileURLToPath(new URL('../../content', import.meta.url))
const files = readdirSync(demo, {recursive: true, withFileTypes: true})
  .filter((entry) => entry.isFile())
  .map((entry) => path.relative(demo, path.join(entry.parentPath, entry.name)))
  .toSorted()

interface Machine {
  readonly env?: Readonly<Record<string, string>>
  /** Folder of the cookbook, as it is given to the command; `content` by default. */
  readonly content?: string
  readonly site?: string
  /** In which the files come onto the disk. */
  readonly order?: (files: readonly string[]) => readonly string[]
  /** When every file was last written, seconds since 1970. */
  readonly writtenAt?: number
}

/** Builds the demo on a machine. @returns the hash of each file, by path below the site */
function built({env = {}, content = 'content', site = 'site', ...disk}: Machine) {
  const folder = temporaryFolder()
  const root = path.resolve(folder, content)
  for (const file of disk.order?.(files) ?? files) {
    putFiles(root, {[file]: readFileSync(path.join(demo, file))})
    if (disk.writtenAt !== undefined) {
      utimesSync(path.join(root, file), disk.writtenAt, disk.writtenAt)
    }
  }
  const ended = run(['build', '--content', content, '--site', site], {cwd: folder, env})
  expect(ended).toMatchObject({code: 0, stderr: ''})
  const bytes = [...everySiteByte(path.resolve(folder, site))]
  return Object.fromEntries(
    bytes.map(([file, base64]) => [file, createHash('sha256').update(base64).digest('hex')]),
  )
}

let first: Readonly<Record<string, string>> = {}
beforeAll(() => {
  first = built({env: {LC_ALL: 'C.UTF-8', TZ: 'UTC'}})
  expect(Object.keys(first).length).toBeGreaterThan(files.length)
}, 120_000)

const machines: Readonly<Record<string, Machine>> = {
  // The Turkish i, a comma for the decimal point, and the day before or after.
  'in Turkey, fourteen hours ahead of UTC': {
    env: {LC_ALL: 'tr_TR.UTF-8', LANG: 'tr_TR.UTF-8', TZ: 'Pacific/Kiritimati'},
  },
  'with another order of letters, eleven hours behind, in a folder with another name': {
    env: {LC_ALL: 'sv_SE.UTF-8', TZ: 'Pacific/Pago_Pago', CI: 'true', FORCE_COLOR: '1'},
    content: 'the kitchen’s/köket',
    site: 'www/öffentlich',
  },
  'from files that came in another order, long ago': {
    order: (names) => names.toReversed(),
    writtenAt: 1_000_000_000,
  },
  // SOURCE_DATE_EPOCH stands for the clock: Reproducible Builds, version 1.1 of its specification.
  'in the year 2040': {env: {SOURCE_DATE_EPOCH: '2208988800'}},
}

describe.each(Object.entries(machines))('built %s', (_, machine) => {
  test('the site has the same bytes', () => {
    expect(built(machine)).toEqual(first)
  })
})
