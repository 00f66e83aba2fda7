/** The packed tarball, installed into an empty folder: what a stranger gets, run. */

import {execFileSync, spawnSync} from 'node:child_process'
import {createHash} from 'node:crypto'
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import process from 'node:process'
import {fileURLToPath} from 'node:url'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import * as library from '../../src/index.ts'
import {lockOf} from './lock-of.ts'

const project = fileURLToPath(new URL('../..', import.meta.url))
const libraryPage = readFileSync(path.join(project, 'docs/library.md'), 'utf8')

let folder = ''
let kitchen = ''
/** What npm says of the tarball. */
let packed: unknown

/** Compiles and packs a copy of the sources, and installs the tarball beside it. */
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'scalepan-installed-'))
  const source = path.join(folder, 'source')
  for (const part of ['src', 'templates', 'package.json', 'tsconfig.json', 'README.md']) {
    cpSync(path.join(project, part), path.join(source, part), {recursive: true})
  }
  for (const part of ['CHANGELOG.md', 'DATA.md', 'LICENSE']) {
    cpSync(path.join(project, part), path.join(source, part))
  }
  symlinkSync(path.join(project, 'node_modules'), path.join(source, 'node_modules'))
  npm(source, 'run', '--silent', 'compile')
  packed = JSON.parse(
    npm(source, 'pack', '--json', '--ignore-scripts', '--pack-destination', folder),
  )
  kitchen = path.join(folder, 'kitchen')
  mkdirSync(kitchen)
  const name = 'scalepan-0.1.0.tgz'
  const hash = createHash('sha512').update(readFileSync(path.join(folder, name)))
  const asked = {tarball: `file:../${name}`, integrity: `sha512-${hash.digest('base64')}`}
  const lock = lockOf(JSON.parse(readFileSync(path.join(project, 'package-lock.json'), 'utf8')), {
    ...asked,
    beside: 'metalsmith',
  })
  const dependencies = {scalepan: asked.tarball, metalsmith: '*'}
  writeFileSync(path.join(kitchen, 'package.json'), JSON.stringify({name: 'kitchen', dependencies}))
  writeFileSync(path.join(kitchen, 'package-lock.json'), JSON.stringify(lock))
  npm(kitchen, 'ci', '--silent', '--ignore-scripts', '--prefer-offline', '--no-audit', '--no-fund')
  expect(scalepan('new', 'cookbook', '.')).toMatchObject({code: 0, stderr: ''})
}, 120_000)

afterAll(() => rmSync(folder, {recursive: true, force: true}))

function npm(cwd: string, ...args: readonly string[]): string {
  return execFileSync('npm', args, {cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit']})
}

function run(program: string, args: readonly string[]) {
  const {status, stdout, stderr} = spawnSync(program, args, {cwd: kitchen, encoding: 'utf8'})
  return {code: status, stdout, stderr}
}

/** The command as npm put it in place. */
function scalepan(...args: readonly string[]) {
  return run(path.join(kitchen, 'node_modules/.bin/scalepan'), args)
}

/** Runs an example of docs/library.md, as it stands there. */
function example(name: string, ...args: readonly string[]) {
  const fence = '`'.repeat(3)
  const start = libraryPage.indexOf(`${fence}js file=${name}\n`)
  expect(start, `${name} in docs/library.md`).toBeGreaterThan(0)
  const block = libraryPage.slice(libraryPage.indexOf('\n', start) + 1)
  writeFileSync(path.join(kitchen, name), block.slice(0, block.indexOf(`\n${fence}`) + 1))
  return run(process.execPath, [name, ...args])
}

const soup = 'content/recipes/red-lentil-soup.md'

/** The starting recipe with a figure that does not follow. */
function withDrift(act: () => void): void {
  const file = path.join(kitchen, soup)
  const text = readFileSync(file, 'utf8')
  const drifted = text.replace('protein: 14 g', 'protein: 41 g')
  expect(drifted).not.toBe(text)
  writeFileSync(file, drifted)
  try {
    act()
  } finally {
    writeFileSync(file, text)
  }
}

test('the tarball holds what was compiled and what is read, and no source, test or recipe', () => {
  const [{files = []}] = Object(packed)
  const paths = Array.from(files, (file) => String(Object(file).path))
  const others = paths.filter((file) => !file.startsWith('dist/'))
  expect(others.toSorted()).toEqual([
    'CHANGELOG.md',
    'DATA.md',
    'LICENSE',
    'README.md',
    'package.json',
  ])
  const compiled = paths.filter((file) => file.startsWith('dist/'))
  expect(compiled.length).toBeGreaterThan(100)
  const strange =
    /\.(?!js$|d\.ts$|css$|svg$|json$|woff2$)[a-z0-9]+$|(?:^|\/)(?:test|node_modules|content)\//
  expect(compiled.filter((file) => strange.test(file.replace(/\.d\.ts$/, '')))).toEqual([])
})

describe('the command', () => {
  test('checks and builds what it started', () => {
    expect(scalepan('check').stdout).toMatch(/^0 errors, 0 warnings, 0 notes in 1 recipe/u)
    expect(scalepan('build')).toMatchObject({code: 0, stderr: ''})
    const page = readFileSync(path.join(kitchen, 'site/recipes/red-lentil-soup/index.html'), 'utf8')
    expect(page).toContain('Red lentil soup')
  })

  test('fits with its solver', () => {
    const {code, stdout} = scalepan('fit', 'red-lentil-soup', 'energy <= 230 kcal')
    expect(code).toBe(0)
    expect(stdout).toMatch(/energy <= 230 kcal: met/u)
  })

  test('looks foods up, and completes', () => {
    expect(scalepan('foods', 'find', 'zuchini').stdout).toContain('usda/11477')
    expect(scalepan('completion', 'bash').stdout).toContain('complete -o default')
  })
})

describe('the examples of docs/library.md', () => {
  test('build a site', () => {
    rmSync(path.join(kitchen, 'site'), {recursive: true})
    const {code, stdout, stderr} = example('build.mjs')
    expect({code, stderr}).toEqual({code: 0, stderr: ''})
    expect(stdout).toMatch(/^\d+ written, 0 unchanged\n$/u)
    expect(existsSync(path.join(kitchen, 'site/index.html'))).toBe(true)
    withDrift(() => {
      expect(example('build.mjs').stdout).toMatch(
        /^recipes\/red-lentil-soup\.md:\d+ error Stated protein `41 g` .* \(stated-macros\)\n$/u,
      )
    })
  })

  test('print figures', () => {
    expect(example('figures.mjs').stdout).toMatch(/^red-lentil-soup: protein 1\d\.\d ± 0\.\d g\n$/u)
  })

  test('check in a unified pipeline', () => {
    expect(example('pipeline.mjs', soup)).toEqual({code: 0, stdout: '', stderr: ''})
    withDrift(() => {
      const {code, stdout} = example('pipeline.mjs', soup)
      expect(code).toBe(1)
      expect(stdout).toMatch(
        /^content\/recipes\/red-lentil-soup\.md:\d+:\d+.*\(stated-macros\)\n$/u,
      )
    })
  })

  test('make pages in a general Markdown site, and none of a recipe that drifted', () => {
    const page = path.join(kitchen, 'pages/red-lentil-soup.html')
    withDrift(() => {
      const {code, stderr} = example('pages.mjs')
      expect(code).not.toBe(0)
      expect(stderr).toContain('Stated protein `41 g`')
      expect(existsSync(page)).toBe(false)
    })
    expect(example('pages.mjs')).toMatchObject({code: 0, stderr: ''})
    const html = readFileSync(page, 'utf8')
    expect(html).toContain('<title>Red lentil soup</title>')
    // A linked ingredient has become its words with the amount.
    expect(html).toMatch(/150 g/u)
  })
})

describe('the page about the library', () => {
  /** Where it lists everything. */
  const list = libraryPage.slice(libraryPage.indexOf('## Everything'))

  test('names every function and value that is exported', () => {
    const names = Object.keys(library)
    expect(names.length).toBeGreaterThan(10)
    for (const name of names) expect(list).toMatch(new RegExp(`\`${name}[\`(]`, 'u'))
  })

  test('names every type that is exported, and no other', () => {
    const face = readFileSync(path.join(project, 'src/index.ts'), 'utf8')
    const exported = [...face.matchAll(/export (type )?\{([^}]+)\}/gu)].flatMap(
      ([, all = '', names = '']) =>
        names
          .split(',')
          .map((name) => name.trim())
          .filter((name) => name !== '' && (all !== '' || name.startsWith('type ')))
          .map((name) => name.replace('type ', '')),
    )
    const listed = list.slice(list.indexOf('Types:'), list.indexOf('Each says'))
    const named = [...listed.matchAll(/`(\w+)`/gu)].map(([, name]) => name)
    expect(named.toSorted()).toEqual(exported.toSorted())
  })
})

test('its types are whole: a strict program with no type of its own compiles', () => {
  writeFileSync(
    path.join(kitchen, 'consumer.mts'),
    `import {build, examine, type Problem, publishedBy, publishedFigure, readAssets, readCookbook, remarkChecks, remarkRecipe, writeSite} from 'scalepan'
import {unified} from 'unified'
import {VFile} from 'vfile'

const read = await readCookbook('content')
const {cookbook, computed, problems} = examine(read)
const errors: readonly Problem[] = problems.filter(({severity}) => severity === 'error')
const built = build(read, await readAssets())
const written: number = (await writeSite('site', built.files)).written
for (const {perServing, recipe} of computed.values()) {
  const figure = perServing && publishedFigure(perServing, 'protein', publishedBy(cookbook.settings, recipe))
  const grams: number | undefined = figure?.value
  console.log(grams, errors.length, written)
}
unified().use(remarkRecipe, {cookbook}).use(remarkChecks, {cookbook})
const title: string | undefined = new VFile().data.recipe?.title.value
// @ts-expect-error no such nutrient
computed.get('pot')?.batch.vigour
console.log(title)
`,
  )
  const flags = ['--strict', '--module', 'nodenext', '--target', 'es2023', '--lib', 'es2023,dom']
  const tsc = path.join(project, 'node_modules/.bin/tsc')
  const checked = run(tsc, ['--noEmit', ...flags, '--types', '', 'consumer.mts'])
  expect(checked.stdout).toBe('')
  expect(checked.code).toBe(0)
})
