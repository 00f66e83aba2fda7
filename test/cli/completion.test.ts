import {execFileSync, spawnSync} from 'node:child_process'
import {readdirSync, writeFileSync} from 'node:fs'
import path from 'node:path'
import {describe, expect, test} from 'vitest'
import {bashCompletion} from '../../src/cli/bash-completion.ts'
import {completedCommands} from '../../src/cli/completed-commands.ts'
import {fishCompletion} from '../../src/cli/fish-completion.ts'
import {program} from '../../src/cli/program.ts'
import {zshCompletion} from '../../src/cli/zsh-completion.ts'
import {temporaryFolder} from '../temporary-folder.ts'

const root = program(() => undefined)
const commands = completedCommands(root)
const [bash, zsh, fish] = [bashCompletion, zshCompletion, fishCompletion].map((script) =>
  script(commands),
)

/** A folder with two recipes, whose slugs are completed. */
function kitchen(): string {
  return temporaryFolder({
    'content/recipes/barley-pot.md': '',
    'content/recipes/banana-loaf.md': '',
  })
}

const has = (shell: string): boolean => spawnSync(shell, ['--version']).status === 0

/** What bash itself offers behind some words; the last one is begun. */
function offeredByBash(...words: readonly string[]): readonly string[] {
  return offeredByBashIn(kitchen(), ...words)
}

function offeredByBashIn(folder: string, ...words: readonly string[]): readonly string[] {
  const asked = `
COMP_WORDS=(scalepan ${words.map((word) => `'${word}'`).join(' ')}); COMP_CWORD=${words.length}
_scalepan; printf '%s\\n' "\${COMPREPLY[@]}"`
  const text = execFileSync('bash', ['--norc', '-c', `${bash}${asked}`], {
    encoding: 'utf8',
    cwd: folder,
  })
  return text.split('\n').filter((word) => word !== '')
}

/** The same of fish, which tells what a word does behind a tab. */
function offeredByFish(...words: readonly string[]): readonly string[] {
  const line = ['scalepan', ...words.map((word) => (word.includes(' ') ? `'${word}'` : word))]
  const asked = `complete -C ${JSON.stringify(line.join(' '))}`
  const text = execFileSync('fish', ['--no-config', '-c', `${fish}\n${asked}`], {
    encoding: 'utf8',
    cwd: kitchen(),
  })
  return text.split('\n').filter((word) => word !== '')
}

/**
 * The same of zsh. Its completion runs in its line editor alone: the function is called as the
 * editor would, with a stand-in for the one that shows what is offered.
 */
function offeredByZsh(...words: readonly string[]): readonly string[] {
  const folder = temporaryFolder({_scalepan: `${zsh}`})
  const asked = `
autoload -Uz compinit; compinit -u -d ${folder}/dump
source ${folder}/_scalepan
_describe() { shift 2; print -rl -- "\${(@P)1}" > ${folder}/offered; return 0 }
words=(scalepan ${words.map((word) => `'${word}'`).join(' ')}); CURRENT=${words.length + 1}
cd ${kitchen()}
_scalepan; cat ${folder}/offered`
  const script = path.join(folder, 'ask.zsh')
  writeFileSync(script, asked)
  const begun = words.at(-1) ?? ''
  return execFileSync('zsh', ['--no-rcs', script], {encoding: 'utf8'})
    .split('\n')
    .filter((word) => word !== '' && word.startsWith(begun))
}

describe('bash offers', () => {
  test('the commands that begin so', () => {
    expect(offeredByBash('pre')).toEqual(['preview'])
    expect(offeredByBash('')).toEqual(
      expect.arrayContaining(['build', 'check', 'fit', 'new', '--help', '--quiet']),
    )
  })

  test('the options and parts of a command, whatever stands between', () => {
    expect(offeredByBash('preview', '--p')).toEqual(['--port'])
    expect(offeredByBash('new', 'r')).toEqual(['recipe'])
    expect(offeredByBash('new', 'recipe', '--con')).toEqual(['--content'])
    expect(offeredByBash('fit', 'barley-pot', 'energy <= 400 kcal', '--wr')).toEqual(['--write'])
    expect(offeredByBash('print', 'ca')).toEqual(['cards'])
  })

  test('recipes where one is asked for', () => {
    expect(offeredByBash('explain', 'ba')).toEqual(['banana-loaf', 'barley-pot'])
    expect(offeredByBash('foods', 'like', 'feta', '--in', 'ba')).toEqual([
      'banana-loaf',
      'barley-pot',
    ])
    expect(offeredByBash('foods', 'like', 'feta', '--i')).toEqual(['--in'])
    expect(offeredByBash('build', 'ba')).toEqual([])
  })

  test('no recipe whose name a shell would run', () => {
    const folder = temporaryFolder({
      'content/recipes/barley-pot.md': '',
      'content/recipes/$(touch ran).md': '',
      'content/recipes/`touch ran`.md': '',
    })
    expect(offeredByBashIn(folder, 'explain', '')).toContain('barley-pot')
    expect(readdirSync(folder)).toEqual(['content'])
    expect(offeredByBashIn(temporaryFolder(), 'explain', 'ba')).toEqual([])
  })

  test('nothing of its own where a file is meant', () => {
    expect(offeredByBash('check', 'content/')).toEqual([])
  })
})

describe.skipIf(!has('fish'))('fish offers', () => {
  test('commands, options and recipes, with what they do', () => {
    expect(offeredByFish('pre')).toEqual([
      'preview\tshow the site in a browser, and again on every save',
    ])
    expect(offeredByFish('new', 'r')).toEqual(['recipe\tstart a recipe'])
    expect(offeredByFish('fit', 'barley-pot', 'energy <= 400 kcal', '--wr')).toEqual([
      '--write\twrite the amounts into the recipe',
    ])
    expect(offeredByFish('explain', 'ba')).toEqual(['banana-loaf', 'barley-pot'])
  })
})

describe.skipIf(!has('zsh'))('zsh offers', () => {
  test('commands, options and recipes, with what they do', () => {
    expect(offeredByZsh('pre')).toEqual([
      'preview:show the site in a browser, and again on every save',
    ])
    expect(offeredByZsh('new', 'r')).toEqual(['recipe:start a recipe'])
    expect(offeredByZsh('fit', 'barley-pot', 'energy <= 400 kcal', '--wr')).toEqual([
      '--write:write the amounts into the recipe',
    ])
    expect(offeredByZsh('explain', 'ba')).toEqual(['banana-loaf', 'barley-pot'])
  })
})

describe('every command and option', () => {
  const byPath = new Map(commands.map((command) => [command.path, command]))

  test('is there, whichever the shell', () => {
    const walk = (command: typeof root, at: string): void => {
      const words = (byPath.get(at)?.words ?? []).map(({word}) => word)
      for (const {long} of command.options) expect(words, at).toContain(long)
      for (const one of command.commands) {
        expect(words, at).toContain(one.name())
        walk(one, `${at} ${one.name()}`)
      }
    }
    walk(root, '')
    expect(commands.length).toBeGreaterThan(15)
    for (const {path: at, words} of commands) {
      for (const {word} of words) {
        const isOption = word.startsWith('--')
        expect(lineWith(bash, `    '${at}')`), word).toContain(word)
        expect(blockOf(zsh, at), word).toContain(`'${word}`)
        const inFish = isOption ? `-l ${word.slice(2)}` : `-a '${word}'`
        expect(fish?.split('\n')).toContainEqual(
          expect.stringMatching(`^complete .*__scalepan_at .*${at.trim()}.* ${inFish}`),
        )
      }
    }
  })

  test('quotes what it says, so that a shell reads it', () => {
    const odd = [
      {
        path: '',
        words: [{word: 'odd', does: 'a recipe’s "quote", it\'s: 5 $HOME'}],
        takesRecipe: false,
      },
    ]
    expect(zshCompletion(odd)).toContain(`'odd:a recipe’s "quote", it'\\''s\\: 5 $HOME'`)
    expect(fishCompletion(odd)).toContain(`-d 'a recipe’s "quote", it\\'s: 5 $HOME'`)
  })
})

function lineWith(script: string | undefined, start: string): string {
  return script?.split('\n').find((line) => line.startsWith(start)) ?? ''
}

/** What zsh offers at a command: the line below its path. */
function blockOf(script: string | undefined, at: string): string {
  const lines = script?.split('\n') ?? []
  return lines[lines.indexOf(`    '${at}')`) + 1] ?? ''
}
