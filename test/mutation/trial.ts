import type {Answer, Asked, DryRun} from './asked.ts'
import type {MutantProcess} from './mutant-process.ts'
import type {Mutant} from './mutants.ts'

/** How a mutant ended. */
export interface Tried extends Mutant {
  /** `unmet`: no test runs the place. */
  readonly ended: 'killed' | 'survived' | 'endless' | 'unmet'
  /** Whether it is met while modules are loaded. */
  readonly isOnLoad: boolean
  /** Name of the test that noticed. */
  readonly by?: string
  readonly reason?: string
}

/** Processor time of the tests that one mutant may be tried with, ms; the longest are left out. */
const mostMilliseconds = 4_000

/** Endless loops meet their mutant a hundred times as often as sound code does. */
const hitsOfEndless = 100

/** Tries mutants, the tests likeliest to notice first. */
export class Trial {
  readonly #child: MutantProcess
  readonly #dry: DryRun
  readonly #onLoad: ReadonlySet<string>
  /** Tests by duration, the shortest first. */
  readonly #byTime: readonly number[]
  /** By mutant: the tests that meet it, and how often they do. */
  readonly #tests = new Map<string, number[]>()
  readonly #hits = new Map<string, number>()
  /** By file: tests that noticed another of its mutants. */
  readonly #killers = new Map<string, Set<number>>()

  constructor(child: MutantProcess, dry: DryRun) {
    this.#child = child
    this.#dry = dry
    this.#onLoad = new Set(dry.onLoad)
    const failed = new Set(dry.failed.map(({name}) => name))
    this.#byTime = dry.names
      .flatMap((name, index) => (failed.has(name) ? [] : [index]))
      .toSorted((left, right) => this.#milliseconds(left) - this.#milliseconds(right))
    for (const index of this.#byTime) {
      for (const [id, hits] of Object.entries(dry.hits[index] ?? {})) {
        this.#tests.set(id, [...(this.#tests.get(id) ?? []), index])
        this.#hits.set(id, (this.#hits.get(id) ?? 0) + hits)
      }
    }
  }

  get testCount(): number {
    return this.#byTime.length
  }

  async of(mutant: Mutant): Promise<Tried> {
    const isOnLoad = this.#onLoad.has(mutant.id)
    const met = this.#tests.get(mutant.id) ?? []
    if (!isOnLoad && met.length === 0) return {...mutant, isOnLoad, ended: 'unmet'}
    const killers = this.#killers.get(mutant.file) ?? new Set()
    const order = this.#affordable(isOnLoad ? this.#byTime : met)
    const asked = {
      kind: 'mutant',
      mutant: mutant.id,
      tests: [
        ...order.filter((test) => killers.has(test)),
        ...order.filter((test) => !killers.has(test)),
      ],
      hitLimit: 1_000 + hitsOfEndless * (this.#hits.get(mutant.id) ?? 0),
    } as const
    const answer = await this.#answer(asked, isOnLoad)
    if (answer?.kind !== 'killed') {
      return {...mutant, isOnLoad, ended: answer === undefined ? 'endless' : 'survived'}
    }
    this.#killers.set(mutant.file, killers.add(answer.by))
    const isEndless = answer.reason.includes('Hit count limit reached')
    return {
      ...mutant,
      isOnLoad,
      ended: isEndless ? 'endless' : 'killed',
      by: this.#dry.names[answer.by] ?? 'loading the modules',
      reason: answer.reason.slice(0, 300),
    }
  }

  #milliseconds(test: number): number {
    return this.#dry.milliseconds[test] ?? 0
  }

  /** The first tests, as many as there is time for; one in any case. */
  #affordable(tests: readonly number[]): readonly number[] {
    let left = mostMilliseconds
    return tests.filter((test, index) => {
      left -= this.#milliseconds(test)
      return left > 0 || index === 0
    })
  }

  async #answer(asked: Asked & {kind: 'mutant'}, isOnLoad: boolean): Promise<Answer | undefined> {
    if (isOnLoad) return this.#child.askAnew(asked)
    const answer = await this.#child.ask(asked)
    // Whatever a mutant left behind is gone in a new process, and what fails there is its doing.
    if (answer?.kind !== 'spoilt') return answer
    const again = await this.#child.ask(asked)
    return again?.kind === 'spoilt' ? {...again, kind: 'killed'} : again
  }
}
