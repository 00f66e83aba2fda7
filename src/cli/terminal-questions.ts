import process from 'node:process'
import {createInterface} from 'node:readline'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {Ask} from './ask.ts'

/** Runs something that asks questions on the terminal. */
export async function onTerminal<T>(run: (ask: Ask) => Promise<T>): Promise<T> {
  // Questions are no result: a redirected output stays clean.
  const terminal = createInterface({input: process.stdin, output: process.stderr})
  const lines = terminal[Symbol.asyncIterator]()
  try {
    return await run(async (question) => {
      terminal.setPrompt(question)
      terminal.prompt()
      const line = await lines.next()
      if (line.done !== true) return line.value
      throw new EnvironmentFailure('The questions were left; nothing was written')
    })
  } finally {
    terminal.close()
  }
}
