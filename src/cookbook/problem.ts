import type {Position} from 'unist'

/** `error` stops a build, `warning` and `note` are printed and let it pass. */
export type Severity = 'error' | 'warning' | 'note'

/**
 * Something to tell the writer, as data. Readers and rules return problems; only the runner puts
 * them on a file.
 */
export interface Problem {
  readonly ruleId: string
  readonly severity: Severity
  /** Path of the file to change, relative to the cookbook folder, with `/`. */
  readonly file: string
  /** The smallest range the writer must change; absent when it is the file as a whole. */
  readonly place?: Position
  /** *Subject* `actual`, expected `expected`; one line, no final stop, stands alone. */
  readonly reason: string
  /** As written. */
  readonly actual?: string
  /** What would pass. */
  readonly expected?: readonly string[]
  /** How to mend it, then the working. */
  readonly note?: string
  /** Why the writer lets it stand, where they do. */
  readonly accepted?: string
}

/** A value with the range in its file that holds it. */
export interface Located<T> {
  readonly value: T
  readonly place: Position
}
