/** I/O: the process in which mutants are tried; one that hangs is ended. */

import {type ChildProcess, fork} from 'node:child_process'
import {once} from 'node:events'
import process from 'node:process'
import type {Answer, Asked} from './asked.ts'

/** Longest that an answer may take, ms; the hit limit ends nearly all endless loops before. */
const longestMilliseconds = {'dry run': 1_200_000, mutant: 90_000}

export class MutantProcess {
  readonly #module: string
  #child: ChildProcess | undefined

  constructor(module: string) {
    this.#module = module
  }

  /** @returns the answer, or `undefined` when there was none in time or the process ended */
  async ask(asked: Asked): Promise<Answer | undefined> {
    this.#child ??= await this.#started({})
    return this.#answerOf(this.#child, asked)
  }

  /** Asks a process of its own, in which the mutant is there while the modules are loaded. */
  async askAnew(asked: Asked & {kind: 'mutant'}): Promise<Answer | undefined> {
    const child = await this.#started({__STRYKER_ACTIVE_MUTANT__: asked.mutant})
    if (child === undefined) return {kind: 'killed', by: -1, reason: 'modules do not load'}
    const answer = await this.#answerOf(child, asked)
    child.kill('SIGKILL')
    return answer
  }

  end(): void {
    this.#child?.kill('SIGKILL')
    this.#child = undefined
  }

  /** @returns the process once it listens; `undefined` where it ends before */
  async #started(environment: Readonly<Record<string, string>>): Promise<ChildProcess | undefined> {
    const child = fork(this.#module, {
      env: {...process.env, ...environment},
      stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
    })
    const first = await Promise.race([once(child, 'message'), once(child, 'exit')])
    return typeof first[0] === 'object' && first[0] !== null ? child : undefined
  }

  async #answerOf(child: ChildProcess | undefined, asked: Asked): Promise<Answer | undefined> {
    if (child === undefined) throw new Error('The tests do not load')
    const answered = new Promise<Answer | undefined>((resolve) => {
      const timer = setTimeout(() => resolve(undefined), longestMilliseconds[asked.kind])
      const settle = (answer?: Answer) => {
        clearTimeout(timer)
        child.removeAllListeners()
        resolve(answer)
      }
      child.once('message', (answer: Answer) => settle(answer))
      child.once('exit', () => settle())
    })
    child.send(asked)
    const answer = await answered
    if (answer === undefined || answer.kind === 'spoilt') {
      child.kill('SIGKILL')
      if (child === this.#child) this.#child = undefined
    }
    return answer
  }
}
