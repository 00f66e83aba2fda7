import type {Verdict} from '../check/verdict.ts'
import type {Severity} from '../cookbook/problem.ts'
import type {StatedBasis} from '../cookbook/recipe.ts'
import type {NutrientUnit, PublishedNutrient} from '../food/nutrients.ts'

/**
 * What `check` reports, as every format has it: these types are the JSON. Numbers are unrounded
 * but for the noise of adding doubles (12 significant digits).
 */
export interface Report {
  /** In slug order; made one by one, so that a big cookbook is never held twice. */
  readonly recipes: Iterable<RecipeReport>
  /** In report order: by path, position, rule. */
  readonly messages: readonly Message[]
}

/** A computed figure. */
export interface FigureReport {
  readonly value: number
  /** Expanded uncertainty (GUM, k = 2), same unit. */
  readonly uncertainty: number
  readonly unit: NutrientUnit
  /** Present when a food's figure is unknown: the dish holds this much or more. */
  readonly atLeast?: true
}

export interface StatedReport {
  readonly value: number
  readonly unit: NutrientUnit
}

/** In the order of `publishedNutrients`. */
export type FiguresReport = Readonly<Partial<Record<PublishedNutrient, FigureReport>>>

export interface RecipeReport {
  readonly slug: string
  readonly file: string
  /** Absent for a component that is only used by weight. */
  readonly serves?: number
  /** Absent where the finished batch was not weighed, as is all that needs it. */
  readonly batchGrams?: number
  readonly portionGrams?: number
  readonly perServing?: FiguresReport
  readonly per100g?: FiguresReport
  /** What the stated figures are per. */
  readonly statedPer?: StatedBasis
  readonly stated?: Readonly<Partial<Record<PublishedNutrient, StatedReport>>>
  readonly verdicts: Readonly<Partial<Record<PublishedNutrient, Verdict>>>
}

/** A range of the message's file, and what goes there instead. */
export interface FixReport {
  readonly line: number
  readonly column: number
  readonly endLine: number
  readonly endColumn: number
  readonly text: string
}

/** One finding. Lines and columns count from 1; the end is behind the last character. */
export interface Message {
  /** From the folder the command runs in, as the writer types it. */
  readonly file: string
  readonly line: number
  readonly column: number
  readonly endLine: number
  readonly endColumn: number
  readonly rule: string
  readonly severity: Severity
  readonly reason: string
  readonly actual?: string
  /** What would pass; empty where no single text would. */
  readonly expected: readonly string[]
  /** How to mend it and the working; lines apart. */
  readonly note?: string
  /** Why the writer lets it stand, where they do. */
  readonly accepted?: string
  /** What `check --fix` would write. */
  readonly fix?: FixReport
  /** The rule's page: on the web where the cookbook has an address, else its path in the site. */
  readonly url: string
}
