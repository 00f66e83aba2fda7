import {execFileSync} from 'node:child_process'
import {readFileSync} from 'node:fs'
import path from 'node:path'
import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {unifiedDiff} from '../../src/report/unified-diff.ts'
import {temporaryFolder} from '../temporary-folder.ts'

/** What a program of others makes of the first text with the difference. */
function applied(before: string, diff: string): string {
  const folder = temporaryFolder({'a.md': before, 'change.diff': diff})
  execFileSync('git', ['apply', '--unidiff-zero', '--whitespace=nowarn', 'change.diff'], {
    cwd: folder,
    stdio: 'pipe',
    env: {PATH: process.env.PATH, GIT_CEILING_DIRECTORIES: path.dirname(folder)},
  })
  return readFileSync(path.join(folder, 'a.md'), 'utf8')
}

describe('the difference of two texts', () => {
  test('is nothing for the same text', () => {
    expect(unifiedDiff('a.md', 'x\n', 'x\n')).toBe('')
  })

  // The form of POSIX `diff -u`, IEEE Std 1003.1-2024: line counts and three lines of context.
  test('shows a changed line between three others, and where it stands', () => {
    const before = 'one\ntwo\nthree\nfour\nfive\nsix\nseven\neight\nnine\n'
    expect(unifiedDiff('a.md', before, before.replace('five', 'FIVE'))).toBe(
      '--- a/a.md\n+++ b/a.md\n@@ -2,7 +2,7 @@\n two\n three\n four\n-five\n+FIVE\n six\n seven\n eight\n',
    )
  })

  test('changes far apart are two hunks', () => {
    const before = `${Array.from({length: 30}, (_, index) => `line ${index}`).join('\n')}\n`
    const after = before.replace('line 3\n', 'line x\n').replace('line 25\n', 'line y\n')
    expect(unifiedDiff('a.md', before, after).match(/^@@.*@@$/gmu)).toEqual([
      '@@ -1,7 +1,7 @@',
      '@@ -23,7 +23,7 @@',
    ])
  })

  test.each([
    ['a line more', 'a\nb\nc\n', 'a\nb\nnew\nc\n'],
    ['a line less', 'a\nb\nc\n', 'a\nc\n'],
    ['no line ending at the end', 'a\nb', 'a\nc'],
    ['one that comes', 'a\nb', 'a\nb\n'],
    ['carriage returns', 'a\r\nb\r\n', 'a\r\nB\r\n'],
  ])('git applies %s', (_, before, after) => {
    expect(applied(before, unifiedDiff('a.md', before, after))).toBe(after)
  })

  test('git applies the difference of any two texts', () => {
    const text = fc
      .array(fc.constantFrom('a\n', 'b\n', 'c\n', 'd\n'), {minLength: 1, maxLength: 12})
      .map((lines) => lines.join(''))
    fc.assert(
      fc.property(text, text, (before, after) => {
        fc.pre(before !== after)
        return applied(before, unifiedDiff('a.md', before, after)) === after
      }),
      {numRuns: 60, seed: 7},
    )
  })
})
