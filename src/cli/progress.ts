import process from 'node:process'
import type {Stage} from '../build.ts'
import {tell} from './output.ts'

const stageText: Readonly<Record<Stage, string>> = {
  understanding: 'reading the recipes',
  computing: 'computing figures',
  checking: 'checking figures',
  rendering: 'making pages',
}

/** Work that takes longer than this is worth a word. */
const longMilliseconds = 500

/** About how long one recipe takes from text to page, for telling beforehand what takes long. */
const recipeMilliseconds = 3

/** One line on the terminal that says what is being done; nothing where nobody watches. */
export class Progress {
  readonly #began = performance.now()
  readonly #isWatched: boolean
  #expectsLong = false
  #isShown = false

  /** @param options.quiet nobody wants to know */
  constructor({quiet}: {readonly quiet: boolean}) {
    this.#isWatched = !quiet && Boolean(process.stderr.isTTY) && !process.env.CI
  }

  /** Says beforehand how much there is to do. */
  expect(recipes: number): void {
    this.#expectsLong = recipes * recipeMilliseconds > longMilliseconds
  }

  begin(what: string): void {
    const isLong = this.#expectsLong || performance.now() - this.#began > longMilliseconds
    if (!this.#isWatched || !isLong) return
    tell(`\r\u001B[2K${what} …`)
    this.#isShown = true
  }

  beginStage(stage: Stage): void {
    this.begin(stageText[stage])
  }

  /** Clears the line. */
  end(): void {
    if (this.#isShown) tell('\r\u001B[2K')
    this.#isShown = false
  }

  /** Seconds since the work began. */
  get seconds(): number {
    return (performance.now() - this.#began) / 1000
  }
}
