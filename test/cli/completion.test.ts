import {execFileSync} from 'node:child_process'
import {describe, expect, test} from 'vitest'
import {bashCompletion} from '../../src/cli/bash-completion.ts'
import {program} from '../../src/cli/program.ts'

const script = bashCompletion(program(() => undefined))

/** What bash itself offers behind some words; the last one is begun. */
function offered(...words: readonly string[]): readonly string[] {
  const asked = `
COMP_WORDS=(scalepan ${words.map((word) => `'${word}'`).join(' ')}); COMP_CWORD=${words.length}
_scalepan; printf '%s\\n' "\${COMPREPLY[@]}"`
  const text = execFileSync('bash', ['--norc', '-c', script + asked], {encoding: 'utf8'})
  return text.split('\n').filter((word) => word !== '')
}

describe('bash offers', () => {
  test('the commands that begin so', () => {
    expect(offered('pre')).toEqual(['preview'])
    expect(offered('')).toEqual(expect.arrayContaining(['build', 'check', 'fit', 'new', '--help']))
  })

  test('the options and parts of a command, whatever stands between', () => {
    expect(offered('preview', '--p')).toEqual(['--port'])
    expect(offered('new', 'r')).toEqual(['recipe'])
    expect(offered('new', 'recipe', '--con')).toEqual(['--content'])
    expect(offered('fit', 'barley-pot', 'energy <= 400 kcal', '--wr')).toEqual(['--write'])
    expect(offered('print', 'ca')).toEqual(['cards'])
  })

  test('nothing of its own where a file is meant', () => {
    expect(offered('check', 'content/')).toEqual([])
  })
})
