import type {Position} from 'unist'
import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Fix, Severity} from '../cookbook/problem.ts'
import type {Recipe} from '../cookbook/recipe.ts'
import type {Computed} from '../nutrition/computed.ts'

/** What a rule found, before the runner stamps rule, severity and file on it. */
export interface Finding {
  /** The smallest range the writer must change. */
  readonly place: Position
  /** File of `place`, relative to the cookbook folder; the recipe's own when absent. */
  readonly file?: string
  readonly reason: string
  readonly actual?: string
  readonly expected?: readonly string[]
  readonly note?: string
  /** What mends it, where there is one right answer. */
  readonly fix?: Fix
}

/** What a rule looks at: one recipe, with the whole cookbook at hand. */
export interface Subject {
  readonly recipe: Recipe
  readonly computed: Computed
  readonly cookbook: Cookbook
  /** Every recipe that could be computed, by slug. */
  readonly all: ReadonlyMap<string, Computed>
}

/** One rule a file, named after its id; pure, and never prints. */
export interface Rule {
  readonly id: string
  readonly severity: Severity
  /** The state that must hold, one sentence. */
  readonly summary: string
  /** Why readers or writers need it. */
  readonly why: string
  /** Where its figures come from, when it has any. */
  readonly source?: string
  check(subject: Subject): Iterable<Finding>
}

/** What a rule about the cookbook as a whole looks at. */
export interface CookbookSubject extends Omit<Subject, 'recipe' | 'computed'> {
  /** The day of the check, `2026-11-25`; undefined where nobody said. */
  readonly today?: string | undefined
}

/** A rule about the cookbook as a whole, run once. */
export interface CookbookRule extends Omit<Rule, 'check'> {
  check(subject: CookbookSubject): Iterable<Finding & {readonly file: string}>
}
