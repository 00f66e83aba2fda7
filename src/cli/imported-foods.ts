import type {EnvironmentFailure} from '../cookbook/environment-failure.ts'

/** Where a large table is written. */
export interface LargeOut {
  /** Descriptor of its file, empty. */
  readonly file: number
  /** An empty folder for what has to be sorted; the caller removes it. */
  readonly work: string
  /** Tells what is being done. */
  readonly begin: (what: string) => void
}

/** What an import gave. */
export interface ImportedFoods {
  readonly count: number
  /** Foods of the download that cannot be used, and what is wrong with the first. */
  readonly leftOut?: {readonly count: number; readonly first: string}
}

/**
 * Of so many foods one may be unusable. Makers report branded foods themselves, and some have no
 * figures or more fat than there can be; a download that is cut off or mislabelled has many. The
 * share is ours, no source.
 */
const foodsForOneLeftOut = 20

/** Counts the foods of a download that cannot be used. */
export class LeftOut {
  #count = 0
  #first: EnvironmentFailure | undefined

  leave(reason: EnvironmentFailure): void {
    this.#count++
    this.#first ??= reason
  }

  /** Throws the first reason where too many were left. @param kept foods that can be used */
  imported(kept: number): ImportedFoods {
    const first = this.#first
    if (!first) return {count: kept}
    if (this.#count * foodsForOneLeftOut > this.#count + kept) throw first
    return {count: kept, leftOut: {count: this.#count, first: first.message}}
  }
}
