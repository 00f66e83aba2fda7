import {execFile} from 'node:child_process'
import {promises as disk} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import process from 'node:process'
import {promisify} from 'node:util'
import {EnvironmentFailure, errorCode} from '../cookbook/environment-failure.ts'
import {readCookbook} from '../cookbook/read-folder.ts'
import {readNamedRows} from '../cookbook/read-table-rows.ts'
import type {ReadCookbook} from '../cookbook/sources.ts'

const called = promisify(execFile)

/**
 * A cookbook folder as it was in a revision of its git repository. The work tree and the index stay
 * as they are: the files are laid out in a temporary folder, which is gone afterwards.
 * @param folder the cookbook folder of today
 * @param revision as git takes it: `main`, `HEAD~3`, a tag
 */
export async function cookbookAt(folder: string, revision: string): Promise<ReadCookbook> {
  const temporary = await disk.mkdtemp(path.join(tmpdir(), 'scalepan-revision-'))
  try {
    const commit = await commitOf(folder, revision)
    const prefix = await git(folder, ['rev-parse', '--show-prefix'])
    const env = {GIT_INDEX_FILE: path.join(temporary, 'index')}
    await tree(folder, `${commit}:${prefix}`, revision, env)
    const laidOut = path.join(temporary, 'content')
    // Below the top it would leave out whatever is not below the folder it is called in.
    const top = await git(folder, ['rev-parse', '--show-toplevel'])
    await git(top, ['checkout-index', '--all', `--prefix=${laidOut}/`], env)
    return await withRowsOf(folder, await readCookbook(laidOut))
  } finally {
    await disk.rm(temporary, {recursive: true, force: true})
  }
}

/** Large tables are too large for most repositories: where the revision has none, today's are read. */
async function withRowsOf(folder: string, read: ReadCookbook): Promise<ReadCookbook> {
  const {texts} = read.sources
  const rows = await readNamedRows(await disk.realpath(folder), texts)
  const missing = rows.filter(({path: file}) => !texts.some((text) => text.path === file))
  return {...read, sources: {...read.sources, texts: [...texts, ...missing]}}
}

async function commitOf(folder: string, revision: string): Promise<string> {
  await git(folder, ['rev-parse', '--git-dir']).catch((error: unknown) => {
    throw refusal(error, `${folder} is in no git repository`)
  })
  const wanted = ['rev-parse', '--verify', '--quiet', '--end-of-options', `${revision}^{commit}`]
  return await git(folder, wanted).catch((error: unknown) => {
    throw refusal(error, `git knows no revision ${revision}`)
  })
}

async function tree(
  folder: string,
  which: string,
  revision: string,
  env: Readonly<Record<string, string>>,
): Promise<void> {
  await git(folder, ['read-tree', which], env).catch((error: unknown) => {
    throw refusal(error, `There was no ${folder} at ${revision}`)
  })
}

/** Calls git in a folder, whatever repository the surroundings may name. */
async function git(
  folder: string,
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<string> {
  const {GIT_DIR: _, GIT_WORK_TREE: __, GIT_INDEX_FILE: ___, ...inherited} = process.env
  const {stdout} = await called('git', args, {cwd: folder, env: {...inherited, ...env}})
  return stdout.trimEnd()
}

/** What a failed call means; git's own complaint where it is none of ours. */
function refusal(error: unknown, meaning: string): unknown {
  if (errorCode(error) === 'ENOENT') {
    return new EnvironmentFailure(
      'git is not installed here, so there is no revision to compare with',
      'Compare with a folder instead: a copy of the cookbook as it was',
    )
  }
  const hint = 'Name a folder, or a revision such as `main` or `HEAD~1`'
  return new EnvironmentFailure(meaning, hint)
}
