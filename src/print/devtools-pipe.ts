/**
 * I/O: a Chromium of one's own, told what to do over a pipe in the DevTools protocol (version 1.3,
 * chromedevtools.github.io/devtools-protocol). No port is opened, so nobody else can talk to it.
 */

import {spawn} from 'node:child_process'
import {mkdtemp, rm} from 'node:fs/promises'
import {tmpdir} from 'node:os'
import path from 'node:path'
import {Readable, Writable} from 'node:stream'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {fieldOf} from '../site/json-file.ts'

/** What answers a command, or tells of an event, is read without trusting its shape. */
export interface Devtools {
  readonly send: (
    method: string,
    params?: Readonly<Record<string, unknown>>,
    sessionId?: string,
  ) => Promise<unknown>
  /** Ends when the event has come in the session. Ask before what brings it about. */
  readonly once: (event: string, sessionId: string) => Promise<void>
  /** Ends the browser and takes away what it kept. */
  readonly close: () => Promise<void>
}

export interface Launch {
  readonly executable: string
  /** Without its sandbox a Chromium runs where it has no right to one: as root, in containers. */
  readonly hasSandbox: boolean
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

interface Waiting {
  readonly resolve: (result: unknown) => void
  readonly reject: (error: Error) => void
}

/** Starts a Chromium that knows nothing and leaves nothing behind. */
export async function openDevtools({executable, hasSandbox}: Launch): Promise<Devtools> {
  const profile = await mkdtemp(path.join(tmpdir(), 'scalepan-print-'))
  const child = spawn(
    executable,
    [
      ...flags,
      ...(hasSandbox ? [] : ['--no-sandbox']),
      `--user-data-dir=${profile}`,
      'about:blank',
    ],
    {stdio: ['ignore', 'ignore', 'pipe', 'pipe', 'pipe']},
  )
  const waiting = new Map<number, Waiting>()
  const listening = new Set<(message: unknown) => void>()
  let said = ''
  let ended: Error | undefined
  const end = (error: Error) => {
    ended ??= error
    for (const {reject} of waiting.values()) reject(ended)
    waiting.clear()
  }
  const gone = new Promise<void>((resolve) => {
    child.once('exit', () => {
      end(endedEarly(executable, said))
      resolve()
    })
    child.once('error', (error) => {
      end(new EnvironmentFailure(`${executable} cannot be started: ${error.message}`))
      resolve()
    })
  })
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    said = `${said}${text}`.slice(-4000)
  })
  const patience = setTimeout(() => child.kill('SIGKILL'), patienceMilliseconds)
  const [, , , commands, answers] = child.stdio
  if (!(commands instanceof Writable && answers instanceof Readable)) {
    throw new Error('the pipes of a child process are streams')
  }
  // A browser that does not start closes them: its exit tells more.
  commands.on('error', ignore)
  answers.on('error', ignore)
  onMessages(answers, (message) => {
    const id = fieldOf(message, 'id')
    const answered = typeof id === 'number' ? waiting.get(id) : undefined
    if (typeof id !== 'number' || answered === undefined) {
      for (const listen of listening) listen(message)
      return
    }
    waiting.delete(id)
    const error = fieldOf(message, 'error')
    if (error === undefined) answered.resolve(fieldOf(message, 'result'))
    else answered.reject(new Error(`Chromium refused: ${String(fieldOf(error, 'message'))}`))
  })
  let last = 0
  const send: Devtools['send'] = (method, params = {}, sessionId) =>
    new Promise((resolve, reject) => {
      if (ended) return reject(ended)
      last += 1
      waiting.set(last, {resolve, reject})
      commands.write(`${JSON.stringify({id: last, method, params, sessionId})}\0`)
    })
  return {
    send,
    once: (event, sessionId) =>
      new Promise((resolve) => {
        const listen = (message: unknown) => {
          if (fieldOf(message, 'method') !== event) return
          if (fieldOf(message, 'sessionId') !== sessionId) return
          listening.delete(listen)
          resolve()
        }
        listening.add(listen)
      }),
    close: async () => {
      if (ended === undefined) send('Browser.close').catch(ignore)
      await gone
      clearTimeout(patience)
      await rm(profile, {recursive: true, force: true, maxRetries: 5})
    },
  }
}

/** Messages are JSON, each ended by a zero byte. */
function onMessages(stream: Readable, tell: (message: unknown) => void): void {
  let rest = ''
  stream.setEncoding('utf8').on('data', (text: string) => {
    const texts = `${rest}${text}`.split('\0')
    rest = texts.pop() ?? ''
    for (const whole of texts) tell(JSON.parse(whole))
  })
}

function endedEarly(executable: string, said: string): EnvironmentFailure {
  const isSandbox = /sandbox/i.test(said)
  return new EnvironmentFailure(
    `${executable} ended before the PDF was made`,
    isSandbox
      ? 'It may not use its sandbox here, as for root or in a container: try `--no-sandbox`'
      : said.trim().split('\n').at(-1),
  )
}

function ignore(): void {
  // The end of the browser itself is told by its exit.
}
