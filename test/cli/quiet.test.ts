import {spawnSync} from 'node:child_process'
import {realpathSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import {pathToFileURL} from 'node:url'
import {describe, expect, test} from 'vitest'
import {temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand} from './command.ts'

const {run, entry} = bundledCommand()

/** A warning (a component that nothing uses) and a note (no stated figures). */
const untidy = {
  'content/cookbook.yaml': 'title: Boathouse\n',
  'content/recipes/broth.md':
    '---\ntitle: Broth\nyield: 290 g\ningredients:\n  leek: 300 g\n---\n\nSimmer the leek.\n',
}
const drifted = {
  ...untidy,
  'content/recipes/tea.md':
    '---\ntitle: Tea\nserves: 1\ningredients:\n  leek: 100 g\nstated: { protein: 40 g }\n---\n\nSteep the leek.\n',
}

describe('--quiet', () => {
  test.each([
    [['check']],
    [['build']],
    [['new', 'recipe', 'Pot']],
    [['new', 'cookbook', 'other']],
    [['check', '--fix']],
    [['foods', 'audit']],
  ])('says nothing where all is well: %j', (args) => {
    const {stdout, stderr} = run(args, {cwd: temporaryFolder(untidy)})
    expect(stdout + stderr).not.toBe('')
    const quiet = run([...args, '--quiet'], {cwd: temporaryFolder(untidy)})
    expect(quiet).toEqual({code: 0, stdout: '', stderr: ''})
  })

  test('stands before or after the command', () => {
    const cwd = temporaryFolder(untidy)
    expect(run(['-q', 'check'], {cwd})).toEqual({code: 0, stdout: '', stderr: ''})
    expect(run(['check', '-q'], {cwd})).toEqual({code: 0, stdout: '', stderr: ''})
  })

  test('leaves errors, one block each, and the exit code', () => {
    const cwd = temporaryFolder(drifted)
    const ended = run(['check', '--quiet'], {cwd})
    expect(ended).toMatchObject({code: 1, stderr: ''})
    expect(ended.stdout).toMatch(/^content\/recipes\/tea\.md:6:20 {2}error {2}Stated protein/u)
    expect(ended.stdout).not.toMatch(/warning|note|stated figures:/u)
    const built = run(['build', '--quiet'], {cwd})
    expect(built).toMatchObject({code: 1, stdout: ''})
    expect(built.stderr).toContain('Stated protein')
    expect(built.stderr).not.toContain('warning')
  })

  test('leaves results', () => {
    const cwd = temporaryFolder(untidy)
    const {stdout} = run(['foods', 'show', 'leek'], {cwd})
    expect(stdout).not.toBe('')
    expect(run(['foods', 'show', 'leek', '--quiet'], {cwd}).stdout).toBe(stdout)
    const report = run(['check', '--format', 'json'], {cwd}).stdout
    expect(run(['check', '--format', 'json', '-q'], {cwd}).stdout).toBe(report)
  })
})

describe('a slip in the call', () => {
  test.each([
    [['biuld'], 'See: scalepan --help'],
    [['check', '--fromat', 'json'], 'See: scalepan check --help'],
    [['foods', 'fnd'], 'See: scalepan foods --help'],
    [['new', 'recipe', 'Pot', 'Pan'], 'See: scalepan new recipe --help'],
  ])('%j leads to the help of its command', (args, says) => {
    const {code, stderr} = run(args, {cwd: temporaryFolder({})})
    expect(code).toBe(2)
    expect(stderr.trimEnd().split('\n').at(-1)).toBe(says)
  })

  test('of a recipe suggests the nearest', () => {
    const {code, stderr} = run(['explain', 'borth'], {cwd: temporaryFolder(untidy)})
    expect([code, stderr]).toEqual([
      2,
      'scalepan: No recipe is called borth\n  Did you mean broth?\n',
    ])
  })
})

// A terminal to look at, where the system has one for tests (util-linux, "script").
const hasScript = spawnSync('script', ['--version'], {encoding: 'utf8'}).stdout?.includes(
  'util-linux',
)

describe.skipIf(!hasScript)('on a terminal', () => {
  function shown(cwd: string, env: Readonly<Record<string, string>> = {}): string {
    const call = `'${process.execPath}' '${entry()}' check`
    const surroundings = {PATH: process.env.PATH, TERM: 'xterm', ...env}
    return spawnSync('script', ['-qec', call, '/dev/null'], {
      cwd,
      env: surroundings,
      encoding: 'utf8',
    }).stdout
  }

  test('a place leads to its file; not in a pipe, and not where none is wanted', () => {
    const cwd = realpathSync(temporaryFolder(drifted))
    const {href} = pathToFileURL(path.join(cwd, 'content/recipes/tea.md'))
    const link = `\u001B]8;;${href}\u001B\\`
    expect(shown(cwd)).toContain(link)
    expect(shown(cwd, {NO_COLOR: '1'})).not.toContain('\u001B]8')
    expect(run(['check'], {cwd, env: {FORCE_COLOR: '1'}}).stdout).not.toContain('\u001B]8')
  })
})
