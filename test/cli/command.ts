import {execFileSync, spawnSync} from 'node:child_process'
import {mkdtempSync, readdirSync, readFileSync, rmSync} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import process from 'node:process'
import {fileURLToPath} from 'node:url'
import {afterAll, beforeAll} from 'vitest'
import {bundleCommand} from './bundle-command.ts'

const project = fileURLToPath(new URL('../..', import.meta.url))

/** How a call of the command ended. */
export interface Ended {
  readonly code: number | null
  readonly stdout: string
  readonly stderr: string
}

interface Call {
  readonly cwd: string
  readonly env?: Readonly<Record<string, string>>
  /** Runs as somebody who owns nothing, where the tests run as root, whom no permission stops. */
  readonly asNobody?: boolean
  /** The most that a file may grow to, in blocks of 512 bytes as POSIX has them: a disk that is full. */
  readonly mostBlocks?: number
}

/** Number of the user nobody on every Unix. */
const nobody = 65_534

export interface BundledCommand {
  /** Full path of the command's entry. */
  readonly entry: () => string
  readonly run: (args: readonly string[], call: Call) => Ended
}

/**
 * The command as it is shipped, made once for a test file: bundled by the package's own scripts
 * into a folder that has nothing else of the project.
 */
export function bundledCommand(): BundledCommand {
  let folder = ''
  let entry = ''
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'scalepan-package-'))
    entry = bundleCommand(project, folder)
    execFileSync('chmod', ['-R', 'a+rX', folder])
  })
  afterAll(() => rmSync(folder, {recursive: true, force: true}))
  return {
    entry: () => entry,
    run(args, {cwd, env = {}, asNobody = false, mostBlocks}) {
      const call = [process.execPath, entry, ...args]
      const limited = ['sh', '-c', `ulimit -f ${mostBlocks}; exec "$@"`, 'sh', ...call]
      const [program = '', ...rest] = mostBlocks === undefined ? call : limited
      const {status, stdout, stderr} = spawnSync(program, rest, {
        cwd,
        env: {PATH: process.env.PATH, ...env},
        encoding: 'utf8',
        ...(asNobody && process.getuid?.() === 0 && {uid: nobody, gid: nobody}),
      })
      return {code: status, stdout, stderr}
    },
  }
}

/** Every file below a folder with its bytes, hidden ones too: nothing may differ. */
export function everyByte(folder: string): ReadonlyMap<string, string> {
  const files = readdirSync(folder, {recursive: true, withFileTypes: true})
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name))
    .toSorted()
  return new Map(files.map((file) => [path.relative(folder, file), readFileSync(file, 'base64')]))
}
