/** I/O: commands and answers in the DevTools protocol, over two streams. */

import type {Readable, Writable} from 'node:stream'
import {fieldOf} from '../site/json-file.ts'

export type Parameters = Readonly<Record<string, unknown>>

interface Waiting {
  readonly resolve: (result: unknown) => void
  readonly reject: (error: Error) => void
}

/** One talk with a browser. What it answers is read without trusting its shape. */
export class DevtoolsConversation {
  readonly #commands: Writable
  readonly #waiting = new Map<number, Waiting>()
  readonly #listening = new Set<(message: unknown) => void>()
  #last = 0
  #ended: Error | undefined

  constructor(commands: Writable, answers: Readable) {
    this.#commands = commands
    // A browser that does not start closes both; why, its exit tells.
    commands.on('error', () => undefined)
    answers.on('error', () => undefined)
    onMessages(answers, (message) => this.#take(message))
  }

  get hasEnded(): boolean {
    return this.#ended !== undefined
  }

  send(method: string, params: Parameters = {}, sessionId?: string): Promise<unknown> {
    return new Promise((resolve, reject) => {
      if (this.#ended) return reject(this.#ended)
      this.#last += 1
      this.#waiting.set(this.#last, {resolve, reject})
      this.#commands.write(`${JSON.stringify({id: this.#last, method, params, sessionId})}\0`)
    })
  }

  /** Ends when the event has come in the session. Ask before what brings it about. */
  once(event: string, sessionId: string): Promise<void> {
    return new Promise((resolve) => {
      const listen = (message: unknown) => {
        if (fieldOf(message, 'method') !== event) return
        if (fieldOf(message, 'sessionId') !== sessionId) return
        this.#listening.delete(listen)
        resolve()
      }
      this.#listening.add(listen)
    })
  }

  /** Nothing will be answered any more: whoever waits is told why. */
  end(reason: Error): void {
    this.#ended ??= reason
    for (const {reject} of this.#waiting.values()) reject(this.#ended)
    this.#waiting.clear()
  }

  #take(message: unknown): void {
    const id = fieldOf(message, 'id')
    const waiting = typeof id === 'number' ? this.#waiting.get(id) : undefined
    if (typeof id !== 'number' || waiting === undefined) {
      for (const listen of this.#listening) listen(message)
      return
    }
    this.#waiting.delete(id)
    const error = fieldOf(message, 'error')
    if (error === undefined) waiting.resolve(fieldOf(message, 'result'))
    else waiting.reject(new Error(`Chromium refused: ${String(fieldOf(error, 'message'))}`))
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
