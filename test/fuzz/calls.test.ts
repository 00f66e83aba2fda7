/** The command itself, called with slips in its arguments: it ends, and says what it did not take. */

import {execFile} from 'node:child_process'
import {cpSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import {promisify} from 'node:util'
import fc from 'fast-check'
import {expect, test} from 'vitest'
import {bundledCommand} from '../cli/command.ts'
import {temporaryFolder} from '../temporary-folder.ts'
import {corpus, linesOf} from './corpus.ts'

const {entry} = bundledCommand()

const runs = 16

/** A call's arguments; quoted ones may hold blanks. */
const calls = linesOf('calls.txt').map((line) =>
  [...line.matchAll(/"([^"]*)"|(\S+)/gu)].map(([, quoted, plain]) => quoted ?? plain ?? ''),
)

/** Nothing here that leads out of the folder, waits for a reader or listens for one. */
const scrap = fc.constantFrom(
  ...['', '--', '-', '--content', '--format', '--format=', '--help', '-V', '--quiet', '--no-color'],
  ...['content', 'pot', 'stock', '\u202E', 'x'.repeat(5_000), '*', '$HOME', '%s', '-1', '1e999'],
  ...[
    'protein >= 0 g',
    'protein >=',
    'energy: NaN',
    '--limit',
    '--change',
    '--write',
    '{',
    '🍋',
    '\n',
  ],
)

const call = fc
  .tuple(fc.constantFrom(...calls), fc.array(fc.tuple(fc.nat(9), fc.nat(2), scrap), {maxLength: 3}))
  .map(([sound, slips]) =>
    slips.reduce<readonly string[]>(
      (args, [at, without, added]) => args.toSpliced(at % (args.length + 1), without, added),
      sound,
    ),
  )
  .filter(([first = '']) => !['preview', 'lsp', 'print'].includes(first))

test('a call with slips in it ends with 0, 1 or 2, and never as a fault of scalepan', async () => {
  await fc.assert(
    fc.asyncProperty(call, async (args) => {
      const folder = temporaryFolder()
      cpSync(path.join(corpus, 'cookbook'), path.join(folder, 'content'), {recursive: true})
      const {code, text} = await ended(args, folder)
      expect([0, 1, 2], text).toContain(code)
      expect(text).not.toMatch(/fault in scalepan|\n {4}at |Warning: /u)
      if (code === 2) expect(text.trim()).not.toBe('')
    }),
    {seed: 20_261_125, numRuns: runs, endOnFailure: true},
  )
}, 240_000)

async function ended(
  args: readonly string[],
  cwd: string,
): Promise<{readonly code: unknown; readonly text: string}> {
  const options = {cwd, env: {PATH: process.env.PATH}, timeout: 60_000}
  try {
    const {stdout, stderr} = await promisify(execFile)(
      process.execPath,
      [entry(), ...args],
      options,
    )
    return {code: 0, text: stdout + stderr}
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && 'stderr' in error)) throw error
    return {code: error.code, text: String(error.stderr)}
  }
}
