import {execFileSync} from 'node:child_process'
import path from 'node:path'
import process from 'node:process'
import {describe, expect, test} from 'vitest'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand, everyByte} from './command.ts'

const {run} = bundledCommand()

const pot = `---
title: Barley pot
serves: 2
ingredients:
  pearl barley: 200 g
  water: 800 g
stated: { energy: 352 kcal, protein: 9.9 g }
---

Simmer the [barley](#pearl-barley) in the [water](#water).
`
const tea = pot.replace('Barley pot', 'Barley tea')

/** The same cookbook with a quarter more barley. */
const more = pot.replace('200 g', '250 g')

function git(cwd: string, ...args: readonly string[]): void {
  const author = {
    GIT_AUTHOR_NAME: 'Test',
    GIT_AUTHOR_EMAIL: 'test@rowing.example',
    GIT_COMMITTER_NAME: 'Test',
    GIT_COMMITTER_EMAIL: 'test@rowing.example',
    GIT_CONFIG_GLOBAL: '/dev/null',
  }
  execFileSync('git', args, {cwd, stdio: 'pipe', env: {PATH: process.env.PATH, ...author}})
}

/** A repository with the cookbook two folders down, and one commit. */
function repository(): string {
  const folder = temporaryFolder({
    'book/content/recipes/pot.md': pot,
    'book/content/recipes/tea.md': tea,
    'README.md': 'A repository.\n',
  })
  git(folder, 'init', '--quiet', '--initial-branch=main')
  git(folder, 'add', '.')
  git(folder, 'commit', '--quiet', '-m', 'Start')
  return folder
}

// USDA SR28 20005, barley, pearled, raw: 352 kcal and 9.91 g protein per 100 g; 25 g more a
// serving is 88 kcal and 2.5 g.
const moved = /energy +352 +→ +440 +kcal +\+88\n +protein +9\.9 +→ +12\.4 +g +\+2\.5\n/u

describe('compare with a revision', () => {
  test('says what moved, by how much, and which line did it', () => {
    const folder = repository()
    putFiles(folder, {'book/content/recipes/pot.md': more})
    const {stdout, stderr, code} = run(['compare', 'main'], {cwd: path.join(folder, 'book')})
    expect(stderr).toBe('')
    expect(stdout).toMatch(moved)
    expect(stdout).toContain('pearl barley: 200 g → 250 g  +88 kcal, +2.5 g protein')
    expect(stdout).toContain('The figures of 1 recipe moved, those of 1 did not.')
    expect(code).toBe(0)
  })

  test('leaves work tree, index and repository as they are', () => {
    const folder = repository()
    putFiles(folder, {'book/content/recipes/pot.md': more, 'book/content/recipes/new.md': pot})
    git(folder, 'add', 'book/content/recipes/new.md')
    const before = everyByte(folder)
    const {stdout} = run(['compare', 'HEAD'], {cwd: path.join(folder, 'book')})
    expect(stdout).toContain('New: Barley pot.')
    expect(everyByte(folder)).toEqual(before)
  })

  test('says that nothing moved', () => {
    const folder = repository()
    expect(run(['compare', 'HEAD', '--content', 'book/content'], {cwd: folder}).stdout).toBe(
      'The figures of 0 recipes moved, those of 2 did not.\n',
    )
  })

  test.each([
    ['--format=json', 'git knows no revision'],
    ['no-such-branch', 'git knows no revision no-such-branch'],
  ])('a revision that is none: %s', (revision, told) => {
    const folder = path.join(repository(), 'book')
    const ended = run(['compare', '--', revision], {cwd: folder})
    expect(ended).toMatchObject({code: 2, stdout: ''})
    expect(ended.stderr).toContain(told)
  })

  test('a revision without the cookbook', () => {
    const folder = repository()
    putFiles(folder, {'second/recipes/pot.md': pot})
    const ended = run(['compare', 'main', '--content', 'second'], {cwd: folder})
    expect(ended).toMatchObject({code: 2, stdout: ''})
    expect(ended.stderr).toContain('There was no second at main')
  })

  test('outside of a repository', () => {
    const folder = temporaryFolder({'content/recipes/pot.md': pot})
    const env = {GIT_CEILING_DIRECTORIES: path.dirname(folder)}
    const ended = run(['compare', 'main'], {cwd: folder, env})
    expect(ended).toMatchObject({code: 2, stdout: ''})
    expect(ended.stderr).toContain('content is in no git repository')
  })

  test('without git', () => {
    const folder = temporaryFolder({'content/recipes/pot.md': pot})
    const ended = run(['compare', 'main'], {cwd: folder, env: {PATH: folder}})
    expect(ended).toMatchObject({code: 2, stdout: ''})
    expect(ended.stderr).toContain('git is not installed')
  })
})

describe('compare with a folder', () => {
  const folder = () =>
    temporaryFolder({
      'content/recipes/pot.md': more,
      'content/recipes/tea.md': tea.replace('serves: 2', 'serves: 4'),
      'before/recipes/pot.md': pot,
      'before/recipes/tea.md': tea,
      'before/recipes/gone.md': pot,
    })

  test('as a table for a pull request', () => {
    const {stdout} = run(['compare', 'before', '--format', 'markdown'], {cwd: folder()})
    expect(stdout).toBe(`The figures of 2 recipes moved, those of 0 did not.

| Recipe | Figure | Before | After | Change | Because |
| --- | --- | ---: | ---: | ---: | --- |
| Barley pot, per serving | energy | 352 kcal | 440 kcal | +88 | pearl barley: 200 g → 250 g (+88 kcal, +2.5 g protein, +0.3 g fat, +15.5 g carbohydrate) |
|  | protein | 9.9 g | 12.4 g | +2.5 |  |
|  | fat | 1.2 g | 1.5 g | +0.3 |  |
|  | carbohydrate | 62.1 g | 77.7 g | +15.5 |  |
| Barley tea, per serving | energy | 352 kcal | 176 kcal | −176 | serves 2 → 4 (−176 kcal, −5.0 g protein, −0.6 g fat, −31.1 g carbohydrate) |
|  | protein | 9.9 g | 5.0 g | −5.0 |  |
|  | fat | 1.2 g | 0.6 g | −0.6 |  |
|  | carbohydrate | 62.1 g | 31.1 g | −31.1 |  |

Gone: Barley pot.
`)
  })

  test('as JSON', () => {
    const {stdout} = run(['compare', 'before', '--format', 'json'], {cwd: folder()})
    expect(JSON.parse(stdout)).toMatchObject({
      moved: [
        {
          slug: 'pot',
          file: 'content/recipes/pot.md',
          per: 'serving',
          figures: [{nutrient: 'energy', before: 352, after: 440, unit: 'kcal'}, {}, {}, {}],
        },
        {slug: 'tea'},
      ],
      removed: [{slug: 'gone'}],
      added: [],
      uncomputed: [],
      unchanged: 0,
    })
  })
})
