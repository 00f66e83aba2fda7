import type {Outcome} from '../check/claims/condition.ts'
import type {Verdict} from '../check/verdict.ts'
import type {EnergyMethod} from '../cookbook/energy-method.ts'
import type {StatedBasis} from '../cookbook/recipe.ts'
import type {LabelRules} from '../food/label-rules.ts'
import type {PublishedNutrient} from '../food/nutrients.ts'
import type {DoughPieces} from '../nutrition/baking/dough-pieces.ts'
import type {ComputedLine} from '../nutrition/computed.ts'
import type {Source} from '../units/source.ts'
import type {FigureReport, FiguresReport, Message, RecipeReport} from './report.ts'

/**
 * Where a recipe's figures come from, as every format has it: these types are the JSON of
 * `explain`, which is a recipe's report with its lines and budget.
 */
export interface Explanation extends RecipeReport {
  readonly title: string
  /** What lines, budget and comparison are per: the basis the page states its figures on. */
  readonly per: StatedBasis
  /** Energy, the macros, and whatever else is stated. */
  readonly figures: FiguresReport
  /** In writing order. */
  readonly lines: readonly LineReport[]
  /** Per nutrient, the sources of uncertainty, most first; shares add up to 1. */
  readonly budget: Readonly<Partial<Record<PublishedNutrient, readonly BudgetReport[]>>>
  readonly comparison: readonly ComparisonReport[]
  /** Stated energy beside the energy of the stated macros; absent unless all of them are stated. */
  readonly energy?: EnergyReport
  /** Carbohydrate without fibre and polyols, where the cookbook asks for it. */
  readonly netCarbohydrate?: FigureReport
  /** Claims about nutrition, by the law the cookbook follows. */
  readonly claims: ClaimsReport
  /** Where there is flour to speak of. */
  readonly baking?: BakingReport
  /** Where the recipe divides its dough. */
  readonly pieces?: DoughPieces
  /** What the checks found in the recipe's file. */
  readonly messages: readonly Message[]
}

export interface LineReport {
  readonly name: string
  readonly group?: string
  /** As written. */
  readonly amount: string
  /** Optional and uncounted lines add nothing. */
  readonly role: ComputedLine['role']
  /** Id of the food, or slug of the component. */
  readonly food?: string
  readonly recipe?: string
  /** Edible weight in the batch, and its expanded uncertainty. */
  readonly grams: number
  readonly gramsUncertainty: number
  readonly adds: FiguresReport
  /** Share of the whole figure, 0 to 1; none where the whole is 0. */
  readonly shares: Readonly<Partial<Record<PublishedNutrient, number>>>
}

export interface ClaimsReport {
  readonly rules: LabelRules
  /** As written, with what came of each. */
  readonly made: readonly {
    readonly claim: string
    readonly outcome: Outcome | 'no such claim'
  }[]
  /** Further ones that would hold, with the paragraph that says so. */
  readonly possible: readonly {readonly claim: string; readonly source: string}[]
  /** What the law wants beside those that are made. */
  readonly sentences: readonly string[]
}

export interface BudgetReport {
  readonly kind: Source['kind']
  readonly source: string
  /** Expanded uncertainty this source alone would give, in the nutrient's unit. */
  readonly uncertainty: number
  /** Share of the variance, 0 to 1. */
  readonly share: number
}

/** Baker's percentages: all flour is 100, components opened. */
export interface BakingReport {
  readonly flourGrams: number
  /** Most first. */
  readonly rows: readonly {
    readonly food: string
    readonly name: string
    readonly grams: number
    readonly percent: number
  }[]
  /** Plain water ÷ flour. */
  readonly hydrationPercent: number
  /** With the water of milk, eggs and the rest. */
  readonly effectiveHydrationPercent: number
  /** Present when the table lacks the water of one of them: it is this much or more. */
  readonly atLeast?: true
}

/** What the stated macros give, by every method that needs nothing but them; kcal. */
export interface EnergyReport {
  readonly stated: number
  readonly byMethod: readonly MethodReport[]
  /** The first method that reaches the stated energy, tolerance included; absent when none does. */
  readonly fits?: EnergyMethod
  /** Stated energy against the general factors, percent of it, 0 and up. */
  readonly gapPercent: number
  /** What would close that gap, one sentence each; none where rounding closes it. */
  readonly wouldExplain: readonly string[]
}

/** Energy of the macros by a method, and the limits that their rounding leaves. */
export interface MethodReport {
  readonly method: EnergyMethod
  readonly value: number
  readonly low: number
  readonly high: number
}

/** A stated figure beside the computed one; numbers in the nutrient's unit. */
export interface ComparisonReport {
  readonly nutrient: PublishedNutrient
  readonly stated: number
  /** As written. */
  readonly statedText: string
  readonly computed: FigureReport
  /** How the computed energy was arrived at: the method that the stated one fits best. */
  readonly method?: EnergyMethod
  readonly verdict: Verdict
  /** Stated − computed. */
  readonly difference: number
  /** Up to this distance the two agree. */
  readonly agreement: number
  /** Up to this distance it is tolerated; absent where any distance to this side is. */
  readonly allowed?: number
  /** The verdict's reason, one sentence. */
  readonly why: string
}
