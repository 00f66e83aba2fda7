/** What is said between the process that tries mutants and the one that says which. */

export type Asked =
  | {readonly kind: 'dry run'}
  | {
      readonly kind: 'mutant'
      readonly mutant: string
      /** Places of tests in their list, in the order to run them. */
      readonly tests: readonly number[]
      /** How often mutated code may be met before it counts as running without end. */
      readonly hitLimit: number
    }

export interface DryRun {
  readonly kind: 'dry run'
  readonly names: readonly string[]
  /** Processor time of each test, ms. */
  readonly milliseconds: readonly number[]
  /** Tests that fail without any mutant. */
  readonly failed: readonly {readonly name: string; readonly reason: string}[]
  /** Mutants met while the modules were loaded. */
  readonly onLoad: readonly string[]
  /** By the place of a test: how often it meets each mutant. */
  readonly hits: Readonly<Record<string, Readonly<Record<string, number>>>>
}

export type Answer =
  | {readonly kind: 'ready'}
  | DryRun
  | {readonly kind: 'survived'}
  /** `spoilt`: the test still failed without the mutant. */
  | {readonly kind: 'killed' | 'spoilt'; readonly by: number; readonly reason: string}
