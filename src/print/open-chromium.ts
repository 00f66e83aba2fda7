/**
 * I/O: a Chromium of one's own, told what to do over a pipe in the DevTools protocol (version 1.3,
 * chromedevtools.github.io/devtools-protocol). No port is opened, so nobody else can talk to it.
 */

import {type ChildProcess, spawn} from 'node:child_process'
import {mkdtemp, rm} from 'node:fs/promises'
import {tmpdir} from 'node:os'
import path from 'node:path'
import {Readable, Writable} from 'node:stream'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {DevtoolsConversation} from './devtools-conversation.ts'

export interface Launch {
  readonly executable: string
  /** Without its sandbox a Chromium runs where it has no right to one: as root, in containers. */
  readonly hasSandbox: boolean
}

export interface Chromium {
  readonly devtools: DevtoolsConversation
  /** Ends the browser and takes away what it kept. */
  readonly close: () => Promise<void>
}

/** A print takes seconds; a browser that hangs must not keep the command. */
const patienceMilliseconds = 180_000

const flags = [
  '--headless',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-dev-shm-usage',
  '--font-render-hinting=none',
  '--remote-debugging-pipe',
]

/** Starts a Chromium that knows nothing and leaves nothing behind. */
export async function openChromium({executable, hasSandbox}: Launch): Promise<Chromium> {
  const profile = await mkdtemp(path.join(tmpdir(), 'scalepan-print-'))
  const args = [...flags, ...(hasSandbox ? [] : ['--no-sandbox']), `--user-data-dir=${profile}`]
  const child = spawn(executable, [...args, 'about:blank'], {
    stdio: ['ignore', 'ignore', 'pipe', 'pipe', 'pipe'],
  })
  const [, , , commands, answers] = child.stdio
  if (!(commands instanceof Writable && answers instanceof Readable)) {
    throw new Error('the pipes of a child process are streams')
  }
  const devtools = new DevtoolsConversation(commands, answers)
  const gone = endOf(child, executable).then((reason) => devtools.end(reason))
  const patience = setTimeout(() => child.kill('SIGKILL'), patienceMilliseconds)
  return {
    devtools,
    close: async () => {
      if (!devtools.hasEnded) devtools.send('Browser.close').catch(() => undefined)
      await gone
      clearTimeout(patience)
      await rm(profile, {recursive: true, force: true, maxRetries: 5})
    },
  }
}

/** Why the browser is gone, once it is: of use to whoever still waited for it. */
function endOf(child: ChildProcess, executable: string): Promise<EnvironmentFailure> {
  let said = ''
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    said = `${said}${text}`.slice(-4000)
  })
  return new Promise((resolve) => {
    child.once('error', (error) => {
      resolve(new EnvironmentFailure(`${executable} cannot be started: ${error.message}`))
    })
    child.once('exit', () => {
      const hint = /sandbox/i.test(said)
        ? 'It may not use its sandbox here, as for root or in a container: try `--no-sandbox`'
        : said.trim().split('\n').at(-1)
      resolve(new EnvironmentFailure(`${executable} ended before the PDF was made`, hint))
    })
  })
}
