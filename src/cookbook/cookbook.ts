import type {Root as HastRoot} from 'hast'
import type {FoodIndex} from '../food/food-index.ts'
import type {LabelRules} from '../food/label-rules.ts'
import type {PublishedNutrient} from '../food/nutrients.ts'
import type {CupSystem} from '../units/units.ts'
import type {EnergyMethod} from './energy-method.ts'
import type {Located, Severity} from './problem.ts'
import type {Recipe} from './recipe.ts'

export const toleranceNames = ['household', 'us', 'us both ways', 'eu', 'strict'] as const

export type ToleranceName = (typeof toleranceNames)[number]

/** cookbook.yaml, with the defaults filled in. */
export interface Settings {
  readonly title: string
  readonly description: string
  /** BCP 47. */
  readonly language: string
  /** Absolute address the site is published at, ending in `/`; absent until the writer knows it. */
  readonly address?: string
  /** ISO 4217. */
  readonly currency: string
  /** Resolution of the kitchen scale, grams. */
  readonly scaleGrams: number
  /** Whose law and wording the cookbook follows. */
  readonly rules: LabelRules
  /** Which carbohydrate is published: `total` with fibre, `available` without. */
  readonly carbohydrate: 'total' | 'available'
  /** How stated energy is arrived at; absent: by any recognised method. */
  readonly energyMethod?: EnergyMethod
  /** By whose rules pages also declare the figures, rounded; absent: only as computed. */
  readonly declare?: LabelRules
  /** Present when pages show net carbohydrate, which no law knows. */
  readonly netCarbohydrate?: true
  readonly tolerance: ToleranceName
  /** Overrides per nutrient: a share of the computed figure (0–1) or an amount in its unit. */
  readonly tolerances: ReadonlyMap<PublishedNutrient, NutrientTolerance>
  readonly cups: CupSystem
  /** Severities the writer changed, by rule id; `off` silences a rule. */
  readonly severities: ReadonlyMap<string, Severity | 'off'>
  /** The rule ids among them, where they stand. */
  readonly checks: readonly Located<string>[]
  /** Days after which a label wants reading again; absent: labels do not age. */
  readonly labelDays?: number
  readonly print: {
    readonly paper: 'A4' | 'Letter' | 'A5'
    readonly cards: 'A6' | '6x4' | '5x3'
    /** Tags that make the sections of the printed cookbook, in their order. */
    readonly sections?: readonly string[]
  }
}

export type NutrientTolerance =
  | {readonly kind: 'ratio'; readonly ratio: number}
  | {readonly kind: 'amount'; readonly amount: number}

/** content/plans/*.md: which recipes, how many servings. */
export interface Plan {
  readonly slug: string
  readonly path: string
  readonly title: Located<string>
  readonly summary?: Located<string>
  readonly servings: readonly {readonly recipe: Located<string>; readonly servings: number}[]
  readonly body: HastRoot
}

/** content/pages/*.md. */
export interface TextPage {
  readonly slug: string
  readonly path: string
  readonly title: Located<string>
  readonly body: HastRoot
}

/** A folder of Markdown, understood: every name still as the writer wrote it. */
export interface Cookbook {
  readonly settings: Settings
  readonly foods: FoodIndex
  /** By slug, in slug order. */
  readonly recipes: ReadonlyMap<string, Recipe>
  /** Slugs of recipes that could not be understood and have had their message. */
  readonly refusedRecipes: ReadonlySet<string>
  readonly plans: readonly Plan[]
  readonly pages: readonly TextPage[]
  /** Paths below images/, for the check that what is shown is there. */
  readonly images: ReadonlySet<string>
}
