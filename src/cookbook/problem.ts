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
  /** What mends it, where there is one right answer. */
  readonly fix?: Fix
}

/** A change of a file that mends a problem and leaves every other byte as it is. */
export interface Fix {
  /** What to replace; empty where something goes in. */
  readonly place: Position
  /** In its stead; quotes around a value stay as they are. `\n` ends a line as the file does. */
  readonly text: string
}

/** A value with the range in its file that holds it. */
export interface Located<T> {
  readonly value: T
  readonly place: Position
}
