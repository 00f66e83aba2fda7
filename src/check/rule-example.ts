/** A slip that a rule finds, and the same files without it, as the rule's page shows them. */
export interface RuleExample {
  /** What differs, file by file: the lines and a few around them. */
  readonly files: readonly {
    readonly path: string
    /** Empty where the file is not there. */
    readonly fails: string
    readonly passes: string
  }[]
  /** The reason that is told. */
  readonly reason: string
}
