/**
 * The language server, sent messages with slips in them: it answers a sound question after each
 * batch, and ends when it is told to.
 */

import {type ChildProcess, spawn} from 'node:child_process'
import {once} from 'node:events'
import {cpSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import {pathToFileURL} from 'node:url'
import fc from 'fast-check'
import {expect, test} from 'vitest'
import {bundledCommand} from '../cli/command.ts'
import {temporaryFolder} from '../temporary-folder.ts'
import {corpus, linesOf} from './corpus.ts'
import {slipped} from './slips.ts'

const {entry} = bundledCommand()

const batches = 4
const messagesInBatch = 25

/** A message that ends the server is a right one; what is between them must not. */
const message = slipped(linesOf('messages.txt'), 3).filter((text) => !text.includes('exit'))
const batch = fc.array(message, {minLength: messagesInBatch, maxLength: messagesInBatch})

test('a server goes on answering whatever it was sent', async () => {
  await fc.assert(
    fc.asyncProperty(batch, async (messages) => {
      const folder = temporaryFolder()
      cpSync(path.join(corpus, 'cookbook'), folder, {recursive: true})
      const root = pathToFileURL(folder).href
      const server = new Server()
      await server.answer({id: 'first', method: 'initialize', params: initializing})
      server.send(JSON.stringify({jsonrpc: '2.0', method: 'initialized', params: {}}))
      const uri = `${root}/recipes/bowl.md`
      for (const text of messages) server.send(text.replaceAll('FOLDER', root))
      server.notify('textDocument/didOpen', {
        textDocument: {uri, languageId: 'markdown', version: 1, text: sound},
      })
      const position = {line: 4, character: 5}
      const hover = {
        id: 'last',
        method: 'textDocument/hover',
        params: {textDocument: {uri}, position},
      }
      expect(JSON.stringify(await server.answer(hover))).toContain('usda/20005')
      expect(await server.end()).toBe(0)
      expect(server.complaints).not.toMatch(/\n {4}at /u)
    }),
    {seed: 20_261_125, numRuns: batches, endOnFailure: true},
  )
}, 240_000)

const initializing = {processId: null, rootUri: null, capabilities: {}}

const sound = `---
title: Plain bowl
serves: 1
ingredients:
  pearl barley: 200 g
---
`

class Server {
  readonly #process: ChildProcess
  complaints = ''
  #said = Buffer.alloc(0)
  #told: () => void = () => undefined

  constructor() {
    this.#process = spawn(process.execPath, [entry(), 'lsp', '--stdio'], {
      env: {PATH: process.env.PATH},
    })
    this.#process.stdout?.on('data', (bytes: Buffer) => {
      this.#said = Buffer.concat([this.#said, bytes])
      this.#told()
    })
    this.#process.stderr?.on('data', (bytes: Buffer) => {
      this.complaints += bytes.toString()
    })
    this.#process.on('exit', () => this.#told())
  }

  /** A body in its frame, whatever the body is. */
  send(body: string): void {
    const bytes = Buffer.from(body)
    this.#process.stdin?.write(`Content-Length: ${bytes.length}\r\n\r\n`)
    this.#process.stdin?.write(bytes)
  }

  notify(method: string, params: object): void {
    this.send(JSON.stringify({jsonrpc: '2.0', method, params}))
  }

  /** @returns the answer to a question of that id */
  async answer({
    id,
    ...asked
  }: {
    readonly id: string
    readonly [key: string]: unknown
  }): Promise<unknown> {
    this.send(JSON.stringify({jsonrpc: '2.0', id, ...asked}))
    for (;;) {
      const answer = this.#messages().find((one) => one.includes(`"id":${JSON.stringify(id)}`))
      if (answer !== undefined) return JSON.parse(answer)
      if (this.#process.exitCode !== null) {
        throw new Error(`The server ended with ${this.#process.exitCode}: ${this.complaints}`)
      }
      await new Promise<void>((resolve) => {
        this.#told = resolve
      })
    }
  }

  async end(): Promise<number | null> {
    const ended = once(this.#process, 'exit')
    await this.answer({id: 'end', method: 'shutdown'})
    this.notify('exit', {})
    await ended
    return this.#process.exitCode
  }

  #messages(): readonly string[] {
    const messages: string[] = []
    let rest = this.#said
    for (;;) {
      const head = rest.indexOf('\r\n\r\n')
      const length = Number(/Content-Length: (\d+)/u.exec(rest.subarray(0, head).toString())?.[1])
      if (head === -1 || rest.length < head + 4 + length) return messages
      messages.push(rest.subarray(head + 4, head + 4 + length).toString())
      rest = rest.subarray(head + 4 + length)
    }
  }
}
