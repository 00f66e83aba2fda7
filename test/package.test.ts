/** What is there at run time beside scalepan itself. */

import {readFileSync} from 'node:fs'
import {expect, test} from 'vitest'

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
