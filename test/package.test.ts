/** What somebody who installs scalepan gets, and what runs when they do. */

import {execFileSync} from 'node:child_process'
import {readFileSync} from 'node:fs'
import {fileURLToPath} from 'node:url'
import {expect, test} from 'vitest'

const project = fileURLToPath(new URL('..', import.meta.url))

const lock: unknown = JSON.parse(
  readFileSync(new URL('../package-lock.json', import.meta.url), 'utf8'),
)

/** Packages of the lock file that are there at run time, by path. */
const installed = Object.entries(objectAt(lock, 'packages')).filter(
  ([path, entry]) => path !== '' && Reflect.get(Object(entry), 'dev') !== true,
)

function objectAt(value: unknown, key: string): object {
  return Object(Reflect.get(Object(value), key))
}

test('nothing that is there at run time runs a script when it is installed', () => {
  expect(installed.length).toBeGreaterThan(10)
  const withScript = installed.filter(([, entry]) => Reflect.get(Object(entry), 'hasInstallScript'))
  expect(withScript.map(([path]) => path)).toEqual([])
})

test('everything that is there at run time comes under a licence that lets anybody use it', () => {
  const licenceOf = (path: string, entry: unknown) =>
    Reflect.get(Object(entry), 'license') ?? saidElsewhere[path]
  const others = installed.flatMap(([path, entry]) => {
    const licence = licenceOf(path, entry)
    return permissive.has(licence) ? [] : [`${path}: ${licence}`]
  })
  expect(others).toEqual([])
})

const permissive: ReadonlySet<unknown> = new Set(['MIT', 'ISC', 'Apache-2.0'])

/** Packages whose package.json names no licence, with the one their own files name. */
const saidElsewhere: Readonly<Record<string, string>> = {
  // Under `licenses` in its package.json, as was done once, and in its Readme.md.
  'node_modules/format': 'MIT',
}

test('the package holds what was compiled and what is read, and no source, test or recipe', () => {
  const listed = execFileSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
    cwd: project,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  })
  const [packed]: unknown[] = JSON.parse(listed)
  const files = Object.values(objectAt(packed, 'files')).map((file) =>
    String(Reflect.get(Object(file), 'path')),
  )
  const others = files.filter((file) => !file.startsWith('dist/'))
  expect(others.toSorted()).toEqual([
    'CHANGELOG.md',
    'DATA.md',
    'LICENSE',
    'README.md',
    'package.json',
  ])
  const strange =
    /\.(?!js$|d\.ts$|css$|svg$|json$|woff2$)[a-z0-9]+$|(?:^|\/)(?:test|node_modules|content)\//
  expect(
    files.filter((file) => file.startsWith('dist/') && strange.test(file.replace(/\.d\.ts$/, ''))),
  ).toEqual([])
})
