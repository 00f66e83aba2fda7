/** The map in DEVELOPERS.md, held to: imports point one way, in no circle, and pure code stays pure. */

import {readdirSync, readFileSync} from 'node:fs'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import {expect, test} from 'vitest'

const project = fileURLToPath(new URL('..', import.meta.url))

/** From the ground up: a stage imports from itself and from those before it. */
const flow = [
  'src/units',
  'src/food',
  'src/cookbook',
  'src/nutrition',
  'src/check',
  'src/shopping',
  'src/remark',
  'templates',
  'src/site',
  'src/print',
  'src/build.ts',
  'src/report',
  'src/preview',
  'src/fit',
  'src/editor',
  'src/cli',
  'src/index.ts',
]

/** Runs in browsers: loads none of the rest but types and what is bundled into it. */
const browser = 'templates/browser'

const sources = ['src', 'templates'].flatMap((folder) =>
  readdirSync(path.join(project, folder), {recursive: true, encoding: 'utf8'})
    .filter((file) => /\.tsx?$/u.test(file))
    .map((file) => path.posix.join(folder, file.split(path.sep).join('/'))),
)

const importPattern =
  /^(?:import|export) (?<type>type )?[^'"]*?from '(?<from>[^']+)'|import\('(?<lazy>[^']+)'\)/gmu

interface Import {
  readonly from: string
  readonly isType: boolean
}

function importsOf(file: string): readonly Import[] {
  const text = readFileSync(path.join(project, file), 'utf8')
  return [...text.matchAll(importPattern)].map(({groups = {}}) => ({
    from: groups.from ?? groups.lazy ?? '',
    isType: groups.type !== undefined,
  }))
}

/** Files of the project that a file imports. */
function neighbours(file: string): readonly string[] {
  return importsOf(file)
    .filter(({from}) => from.startsWith('.'))
    .map(({from}) => path.posix.join(path.posix.dirname(file), from))
}

function stage(file: string): number {
  return flow.findIndex((part) => file === part || file.startsWith(`${part}/`))
}

test('the walk sees the sources and their imports', () => {
  expect(sources).toContain('src/cli/scalepan.ts')
  expect(neighbours('src/build.ts')).toContain('src/site/render-site.ts')
  expect(neighbours('src/cli/program.ts')).toContain('src/cli/build-command.ts')
})

test('every source belongs to a stage', () => {
  expect(sources.filter((file) => stage(file) < 0)).toEqual([])
})

test('imports point one way', () => {
  const against = sources.flatMap((file) =>
    neighbours(file)
      .filter((other) => stage(other) > stage(file))
      .map((other) => `${file} → ${other}`),
  )
  expect(against).toEqual([])
})

test('nothing imports itself by way of others', () => {
  const done = new Set<string>()
  const circles: string[] = []
  function walk(file: string, way: readonly string[]): void {
    if (way.includes(file)) circles.push([...way.slice(way.indexOf(file)), file].join(' → '))
    if (done.has(file) || way.includes(file)) return
    for (const other of neighbours(file)) walk(other, [...way, file])
    done.add(file)
  }
  for (const file of sources) walk(file, [])
  expect(circles).toEqual([])
})

test('only the command and the files marked I/O touch the system', () => {
  const touching = sources.filter((file) => importsOf(file).some(({from}) => /^node:/u.test(from)))
  const unmarked = touching.filter((file) => {
    const [head = ''] = readFileSync(path.join(project, file), 'utf8').split('*/')
    return !file.startsWith('src/cli/') && !head.includes('I/O')
  })
  expect(touching.length).toBeGreaterThan(10)
  expect(unmarked).toEqual([])
})

test('nothing but the command speaks to the console, the process or the clock', () => {
  const speaking = sources.filter((file) => {
    if (file.startsWith('src/cli/') || file.startsWith(browser)) return false
    return /\bconsole\.|\bprocess\.(?:std|exit|env|argv)|\bDate\.now\(|\bnew Date\(\)|Math\.random\(/u.test(
      readFileSync(path.join(project, file), 'utf8'),
    )
  })
  // A lock waits for another build, and must know how long.
  expect(speaking).toEqual(['src/site/site-lock.ts'])
})

test('sources import only what package.json lists', () => {
  const {dependencies} = JSON.parse(readFileSync(path.join(project, 'package.json'), 'utf8'))
  const listed = new Set(Object.keys(dependencies))
  const unlisted = sources.flatMap((file) =>
    importsOf(file)
      .filter(({from, isType}) => !isType && !/^(?:\.|node:|#assets)/u.test(from))
      .map(({from}) =>
        from
          .split('/')
          .slice(0, from.startsWith('@') ? 2 : 1)
          .join('/'),
      )
      .filter((name) => !listed.has(name))
      .map((name) => `${file} → ${name}`),
  )
  expect(unlisted).toEqual([])
})

test('package.json lists only what sources import', () => {
  const {dependencies} = JSON.parse(readFileSync(path.join(project, 'package.json'), 'utf8'))
  const imported = sources.flatMap((file) => importsOf(file).map(({from}) => from))
  const idle = Object.keys(dependencies).filter(
    (name) => !imported.some((from) => from === name || from.startsWith(`${name}/`)),
  )
  expect(idle).toEqual([])
})

test('every rule id that sources name is told on the rules page', async () => {
  const {ruleTexts} = await import('../src/check/rule-texts.ts')
  const told = new Set(ruleTexts.map(({id}) => id))
  const named = sources.flatMap((file) =>
    [...readFileSync(path.join(project, file), 'utf8').matchAll(/ruleId: '([a-z0-9-]+)'/gu)].map(
      ([, id = '']) => id,
    ),
  )
  expect(named.length).toBeGreaterThan(10)
  expect(named.filter((id) => !told.has(id))).toEqual([])
  expect(told.size).toBe(ruleTexts.length)
})
