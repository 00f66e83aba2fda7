/**
 * What a cookbook can do to a build, on purpose or by accident: each case ends with a message that
 * says where and what, and with every byte of the last site as it was.
 */

import {execFileSync} from 'node:child_process'
import {
  chmodSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand, everyByte} from './command.ts'

const {run} = bundledCommand()

const soup = 'content/recipes/red-lentil-soup.md'

let good = ''
beforeAll(() => {
  good = mkdtempSync(path.join(tmpdir(), 'scalepan-good-'))
  expect(run(['new', 'cookbook', '.'], {cwd: good})).toMatchObject({code: 0, stderr: ''})
  expect(run(['build'], {cwd: good})).toMatchObject({code: 0, stderr: ''})
})
afterAll(() => rmSync(good, {recursive: true, force: true}))

/** A folder with a cookbook that builds, and the site it built. */
function builtCookbook(): string {
  const folder = temporaryFolder()
  cpSync(good, folder, {recursive: true})
  return folder
}

/** A recipe with the front matter lines given; line 4 of the file is the first of them. */
function recipe(...lines: readonly string[]): string {
  return ['---', 'title: Pot', 'serves: 2', ...lines, '---', '', 'Cook it.', ''].join('\n')
}

interface Case {
  readonly damage: (folder: string) => void
  readonly code: 1 | 2
  /** Standard error has to match each. */
  readonly says: readonly RegExp[]
}

const write =
  (file: string, content: string | Uint8Array) =>
  (folder: string): void =>
    putFiles(folder, {[file]: content})

const pot = 'content/recipes/pot.md'
const potWith = (...lines: readonly string[]) => write(pot, recipe(...lines))

const cases: Readonly<Record<string, Case>> = {
  'front matter that is no YAML': {
    damage: potWith('ingredients: {red lentils: 200 g'),
    code: 1,
    says: [/^content\/recipes\/pot\.md:\d+:\d+ {2}error {2}.*yaml-readable$/mu],
  },
  'front matter that never ends': {
    damage: write(pot, '---\ntitle: Pot\n\nCook it.\n'),
    code: 1,
    says: [/^content\/recipes\/pot\.md:1:1 {2}error {2}/mu],
  },
  'settings that are no YAML': {
    damage: write('content/cookbook.yaml', 'title: [\n'),
    code: 1,
    says: [/^content\/cookbook\.yaml:\d+:\d+ {2}error {2}/mu],
  },
  'foods that are no YAML': {
    damage: write('content/foods.yaml', 'skyr: {label: {per: 100 g\n'),
    code: 1,
    says: [/^content\/foods\.yaml:\d+:\d+ {2}error {2}/mu],
  },
  'a component that is not there': {
    damage: potWith('ingredients:', '  stock: { amount: 200 g, recipe: brown-stock }'),
    code: 1,
    says: [/pot\.md:5:\d+ {2}error {2}.*`brown-stock`.*unknown-component$/mu],
  },
  'a food nobody knows': {
    damage: potWith('ingredients:', '  red lentlis: 200 g'),
    code: 1,
    says: [/pot\.md:5:3 {2}error {2}.*`red lentlis`.*`red lentils`.*unknown-food$/mu],
  },
  'a picture renamed .md': {
    damage: write(pot, Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0)),
    code: 1,
    says: [/pot\.md:1:1 {2}error {2}.*expected plain text in UTF-8.*utf8-text$/mu],
  },
  'a recipe of 10 MB': {
    damage: write(pot, `${recipe('ingredients:', '  red lentils: 200 g')}${'word '.repeat(2e6)}`),
    code: 1,
    says: [/pot\.md:1:1 {2}error {2}.*`10\.0 MB`, expected `1\.0 MB` at most.*file-size$/mu],
  },
  'a recipe of 10,000 ingredients': {
    damage: potWith(
      'ingredients:',
      ...Array.from(
        {length: 10_000},
        (_, n) => `  red lentils ${n}: { amount: 1 g, food: red lentils }`,
      ),
    ),
    code: 1,
    says: [/pot\.md:\d+:\d+ {2}error {2}.*10000/mu],
  },
  'a bomb of YAML aliases': {
    damage: potWith(
      'a: &a [x, x, x, x, x, x, x, x, x, x]',
      ...'bcdefghij'.split('').map((letter, index) => {
        const before = 'abcdefghij'[index]
        return `${letter}: &${letter} [${Array(10).fill(`*${before}`).join(', ')}]`
      }),
      'ingredients:',
      '  red lentils: 200 g',
    ),
    code: 1,
    says: [/pot\.md:4:\d+ {2}error {2}.*no-alias$/mu],
  },
  'values nested a thousand deep': {
    damage: potWith(`tags: ${'['.repeat(1000)}${']'.repeat(1000)}`, 'ingredients:', '  onion: 1 g'),
    code: 1,
    says: [/pot\.md:4:\d+ {2}error {2}.*no-deep-nesting$/mu],
  },
  'keys that would change every object': {
    damage: potWith(
      '__proto__: { polluted: true }',
      'constructor: x',
      'ingredients:',
      '  onion: 1 g',
    ),
    code: 1,
    says: [/pot\.md:4:1 {2}error {2}.*`__proto__`/mu, /pot\.md:5:1 {2}.*`constructor`/mu],
  },
  ...Object.fromEntries(
    ['.nan', 'NaN', '.inf', '-.inf', 'Infinity', '-200 g', '1e400 g', '0/0 g', '1,5 g'].map(
      (amount): [string, Case] => [
        `an amount of ${amount}`,
        {
          damage: potWith('ingredients:', `  red lentils: ${amount}`),
          code: 1,
          says: [/pot\.md:5:16 {2}error {2}/mu],
        },
      ],
    ),
  ),
  'components that contain each other': {
    damage: (folder) => {
      const uses = (slug: string) =>
        recipe('yield: 300 g', 'ingredients:', `  the other: { amount: 100 g, recipe: ${slug} }`)
      putFiles(folder, {
        'content/recipes/hen.md': uses('egg'),
        'content/recipes/egg.md': uses('hen'),
      })
    },
    code: 1,
    says: [/error {2}.*(?:hen → egg → hen|egg → hen → egg).*component-loop$/mu],
  },
  'a recipe that contains itself': {
    damage: potWith('yield: 300 g', 'ingredients:', '  itself: { amount: 100 g, recipe: pot }'),
    code: 1,
    says: [/pot\.md:6:\d+ {2}error {2}.*`pot → pot`.*component-loop$/mu],
  },
  'two files with one slug': {
    damage: write('content/recipes/Red-Lentil-Soup.md', recipe('ingredients:', '  onion: 1 g')),
    code: 1,
    says: [/recipes\/Red-Lentil-Soup\.md:1:1 {2}error {2}.*slug-name$/mu],
  },
  'a file whose slug climbs': {
    damage: write('content/recipes/..\\..\\out.md', recipe('ingredients:', '  onion: 1 g')),
    code: 1,
    says: [/out\.md:1:1 {2}error {2}.*slug-name$/mu],
  },
  'a file named two dots': {
    damage: write('content/recipes/...md', recipe('ingredients:', '  onion: 1 g')),
    code: 1,
    says: [/recipes\/\.\.\.md:1:1 {2}error {2}.*slug-name$/mu],
  },
  'a component whose slug climbs': {
    damage: potWith('ingredients:', '  secret: { amount: 1 g, recipe: ../../secret }'),
    code: 1,
    says: [/pot\.md:5:\d+ {2}error {2}.*`\.\.\/\.\.\/secret`/mu],
  },
  'a picture of the dish that climbs': {
    damage: potWith('image: { file: ../../../etc/passwd, alt: x }', 'ingredients:', '  onion: 1 g'),
    code: 1,
    says: [/pot\.md:4:\d+ {2}error {2}/mu],
  },
  'a picture of the dish that is not there': {
    damage: potWith('image: { file: pot.jpg, alt: A pot }', 'ingredients:', '  onion: 1 g'),
    code: 1,
    says: [/pot\.md:4:\d+ {2}error {2}.*pot\.jpg/mu],
  },
  'a picture in the method that is not there': {
    damage: (folder) => {
      const text = recipe('ingredients:', '  onion: 1 g')
      write(pot, `${text}\n![A pot](../images/pot.jpg)\n`)(folder)
    },
    code: 1,
    says: [/pot\.md:\d+:\d+ {2}error {2}.*pot\.jpg/mu],
  },
  'a link out of the cookbook': {
    damage: (folder) => symlinkSync('/etc/passwd', path.join(folder, 'content/recipes/pot.md')),
    code: 1,
    says: [/pot\.md:1:1 {2}error {2}.*leads out of the cookbook folder.*inside-folder$/mu],
  },
  'a stated figure that no longer follows': {
    damage: (folder) => {
      execFileSync('sed', ['-i', 's/protein: 14 g/protein: 41 g/', path.join(folder, soup)])
    },
    code: 1,
    says: [/soup\.md:16:38 {2}error {2}Stated protein `41 g`.*stated-macros$/mu],
  },
  'a cookbook without recipes': {
    damage: (folder) => rmSync(path.join(folder, soup)),
    code: 2,
    says: [/^scalepan: No recipes in content/u, /scalepan new recipe/u],
  },
  'an empty cookbook folder': {
    damage: (folder) => {
      rmSync(path.join(folder, 'content'), {recursive: true})
      mkdirSync(path.join(folder, 'content'))
    },
    code: 2,
    says: [/^scalepan: No recipes in content/u],
  },
  'no cookbook folder': {
    damage: (folder) => rmSync(path.join(folder, 'content'), {recursive: true}),
    code: 2,
    says: [/^scalepan: No cookbook here: the folder content is missing/u, /new cookbook DIR/u],
  },
  'a file where the cookbook should be': {
    damage: (folder) => {
      rmSync(path.join(folder, 'content'), {recursive: true})
      writeFileSync(path.join(folder, 'content'), 'text')
    },
    code: 2,
    says: [/^scalepan: content is a file/u],
  },
}

describe.each(Object.entries(cases))('%s', (_, {damage, code, says}) => {
  test('stops the build with a message and leaves every byte of the site', () => {
    const folder = builtCookbook()
    damage(folder)
    const before = everyByte(path.join(folder, 'site'))
    const built = run(['build'], {cwd: folder})
    for (const message of says) expect(built.stderr).toMatch(message)
    expect(built).toMatchObject({code, stdout: ''})
    expect(built.stderr).not.toMatch(/fault in scalepan|\n {4}at /u)
    expect(everyByte(path.join(folder, 'site'))).toEqual(before)
    const checked = run(['check'], {cwd: folder})
    expect(checked.code).toBe(code)
    for (const message of says) expect(checked.stdout + checked.stderr).toMatch(message)
  })
})

describe.skipIf(process.platform === 'win32')('a system that refuses', () => {
  test('a recipe that may not be read stops the build', () => {
    const folder = builtCookbook()
    putFiles(folder, {[pot]: recipe('ingredients:', '  onion: 1 g')})
    chmodSync(path.join(folder, pot), 0o000)
    chmodSync(folder, 0o755)
    const before = everyByte(path.join(folder, 'site'))
    const built = run(['build'], {cwd: folder, asNobody: true})
    expect(built).toMatchObject({
      code: 2,
      stdout: '',
      stderr: 'scalepan: Cannot read content/recipes/pot.md: permission denied\n',
    })
    expect(everyByte(path.join(folder, 'site'))).toEqual(before)
  })

  test('a folder of recipes that may not be listed stops the build', () => {
    const folder = builtCookbook()
    chmodSync(folder, 0o755)
    chmodSync(path.join(folder, 'content/recipes'), 0o000)
    const built = run(['build'], {cwd: folder, asNobody: true})
    chmodSync(path.join(folder, 'content/recipes'), 0o755)
    expect(built).toMatchObject({
      code: 2,
      stderr: 'scalepan: Cannot list content/recipes: permission denied\n',
    })
  })

  test('a site folder that may not be written stays as it is', () => {
    const folder = builtCookbook()
    chmodSync(folder, 0o755)
    chmodSync(path.join(folder, 'site'), 0o555)
    putFiles(folder, {'content/pages/about.md': '---\ntitle: About\n---\n\nUs.\n'})
    const before = everyByte(path.join(folder, 'site'))
    const built = run(['build'], {cwd: folder, asNobody: true})
    chmodSync(path.join(folder, 'site'), 0o755)
    expect(built).toMatchObject({
      code: 2,
      stdout: '',
      stderr: expect.stringMatching(
        /^scalepan: Cannot write the site into site: permission denied\n.*last site is as it was/u,
      ),
    })
    expect(everyByte(path.join(folder, 'site'))).toEqual(before)
  })

  test('one page folder that may not be written keeps the whole site from changing', () => {
    const folder = builtCookbook()
    execFileSync('chmod', ['-R', 'a+rwX', folder])
    const locked = path.join(folder, 'site/recipes/red-lentil-soup')
    chmodSync(locked, 0o555)
    execFileSync('sed', ['-i', 's/Red lentil soup/Lentil soup/', path.join(folder, soup)])
    const before = everyByte(path.join(folder, 'site'))
    const built = run(['build'], {cwd: folder, asNobody: true})
    chmodSync(locked, 0o755)
    expect(built).toMatchObject({
      code: 2,
      stderr: expect.stringContaining('permission denied'),
    })
    expect(everyByte(path.join(folder, 'site'))).toEqual(before)
  })

  test('a disk that is full keeps the last site, and the next build is whole', () => {
    const folder = builtCookbook()
    execFileSync('sed', ['-i', 's/Red lentil soup/Lentil soup/', path.join(folder, soup)])
    const before = everyByte(path.join(folder, 'site'))
    // No file may grow beyond 4,096 bytes, and most pages are larger.
    const built = run(['build'], {cwd: folder, mostBlocks: 8})
    expect(built).toMatchObject({
      code: 2,
      stdout: '',
      stderr: expect.stringMatching(
        /^scalepan: Cannot write the site into site: the file would be larger than the disk allows\n.*last site is as it was/u,
      ),
    })
    expect(everyByte(path.join(folder, 'site'))).toEqual(before)
    expect(run(['build'], {cwd: folder}).code).toBe(0)
  })

  test('a file where the site should be is left alone', () => {
    const folder = builtCookbook()
    renameSync(path.join(folder, 'site'), path.join(folder, 'old'))
    putFiles(folder, {site: 'a file'})
    expect(run(['build'], {cwd: folder})).toMatchObject({
      code: 2,
      stderr: expect.stringMatching(/^scalepan: Cannot write the site into site: /u),
    })
  })

  test('a site inside the cookbook is refused', () => {
    const folder = builtCookbook()
    for (const site of ['content', 'content/site', './content/recipes/../x']) {
      expect(run(['build', '--site', site], {cwd: folder})).toMatchObject({
        code: 2,
        stderr: expect.stringContaining('lies in the cookbook folder'),
      })
    }
  })
})
