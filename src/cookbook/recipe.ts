import type {Root as HastRoot} from 'hast'
import type {CookingMethod} from '../food/cooking-methods.ts'
import type {PublishedNutrient} from '../food/nutrients.ts'
import type {Amount, WeightAmount} from '../units/amount.ts'
import type {EnergyMethod} from './energy-method.ts'
import type {Located} from './problem.ts'

/** What stands for the line when the homemade part is swapped: shown, never counted. */
export interface Alternative {
  readonly name: Located<string>
  readonly amount: Located<Amount>
  /** A qualified food id, where the name is the writer's own words. */
  readonly food?: Located<string>
  /** A component's slug. */
  readonly recipe?: Located<string>
}

/** One ingredient line of the front matter. */
export interface IngredientLine extends Alternative {
  /** Anchor of the line: `pearl-barley` for `pearl barley`; unique in the recipe. */
  readonly anchor: string
  /** The amount is as purchased: refuse comes off. */
  readonly isBought: boolean
  /** Counted only when the reader adds it. */
  readonly isOptional: boolean
  /** Present when the line is left uncounted on purpose. */
  readonly uncounted?: {readonly because: Located<string>}
  /** The share that ends up in the dish (frying oil, marinade): weighed. */
  readonly eaten?: {readonly amount: Located<WeightAmount>; readonly because?: Located<string>}
  /** Rendered fat or drained liquid that left the dish. */
  readonly pouredOff?: PouredOff
  /** Cut away before cooking and thrown away, out of the amount listed: weighed. */
  readonly trimmed?: Located<WeightAmount>
  /** How the ingredient is cooked, where that takes alcohol or minerals away. */
  readonly cooked?: Located<CookingMethod>
  /** Minutes the liquid simmered or baked in the dish: alcohol retention. */
  readonly simmeredMinutes?: Located<number>
  readonly instead: readonly Alternative[]
}

/** What left the dish: weighed, or told by the table's cooked food that the line turns into. */
export type PouredOff = {readonly because?: Located<string>} & (
  | {
      readonly kind: 'weighed'
      readonly amount: Located<WeightAmount>
      readonly what: 'fat' | 'liquid'
    }
  | {readonly kind: 'like'; readonly cooked: Located<string>}
)

/** A heading of the list ("For the dough"); the ungrouped lines have no title. */
export interface IngredientGroup {
  readonly title?: Located<string>
  readonly lines: readonly IngredientLine[]
}

export type StatedBasis = 'serving' | '100 g' | 'batch'

/** A figure the page publishes. */
export interface StatedFigure {
  readonly nutrient: PublishedNutrient
  /** In the nutrient's own unit (kcal, g, mg, µg), whatever unit was written. */
  readonly value: number
  /** Unit of the last written digit, same unit as `value`. */
  readonly increment: number
  /** As written: `455 kcal`. */
  readonly text: string
  readonly place: Located<unknown>['place']
}

export interface Stated {
  readonly basis: StatedBasis
  readonly figures: readonly StatedFigure[]
  readonly place: Located<unknown>['place']
}

/** Finished weight ÷ weight of the ingredients: a number, or what a cooked food of the table shows. */
export type YieldFactor =
  | {readonly kind: 'ratio'; readonly ratio: number; readonly increment: number}
  | {readonly kind: 'like'; readonly cooked: string}

/** A tin: millimetres inside. */
export interface Pan {
  readonly shape: 'round' | 'square' | 'rectangle' | 'ring'
  /** Diameter, side, or length. */
  readonly acrossMillimetres: number
  /** The second side of a rectangle, or the tube of a ring. */
  readonly secondMillimetres?: number
  readonly depthMillimetres?: number
  readonly text: string
}

/** What a dough is divided into: a number of equal pieces, or as many of a weight as it gives. */
export type Pieces =
  | {readonly kind: 'count'; readonly count: number}
  | {readonly kind: 'weight'; readonly gramsEach: number}

/** `{ fridge: 3 days, freezer: 3 months }`, in days. */
export interface Keeps {
  readonly fridgeDays?: KeepingTime
  readonly freezerDays?: KeepingTime
  readonly roomDays?: KeepingTime
}

/** Days, and the text they were written as: `3 months`. */
export interface KeepingTime extends Located<number> {
  readonly text: string
}

/** Findings of a rule that a writer accepts: all of them, or one. */
export interface Acceptance {
  readonly ruleId: Located<string>
  /** The ingredient it is about, or the text it quotes as wrong; absent for every finding. */
  readonly only?: Located<string>
  readonly because: Located<string>
}

/** `compared with: { recipe: classic-barley-pot, energy: 40 % less }`. */
export interface Comparison {
  readonly recipe?: Located<string>
  readonly food?: Located<string>
  readonly basis: 'serving' | '100 g'
  /** The words as written, per nutrient. */
  readonly statements: readonly {
    readonly nutrient: PublishedNutrient
    readonly text: Located<string>
  }[]
}

/** A link in the method that prints an ingredient's amount: `[barley](#pearl-barley)`. */
export interface IngredientLink {
  readonly anchor: string
  readonly place: Located<unknown>['place']
}

/** A link to another file of the cookbook: a page once it is built. */
export interface FileLink {
  /** Relative to the cookbook folder: `recipes/barley-pot.md`. */
  readonly path: string
  /** Without `#`. */
  readonly anchor?: string
  readonly place: Located<unknown>['place']
}

/** A picture of the cookbook, in a text or for a recipe. */
export interface Picture {
  /** Below images/: `rack/barley-pot.jpg`. */
  readonly path: string
  /** Words that stand in for it; may be empty where the writer gave none. */
  readonly alt: string
}

/** The Markdown body, understood. */
export interface Method {
  /**
   * Safe HTML tree of the body, ingredient amounts in place. Links to files of the cookbook and
   * pictures stand relative to the Markdown file, for a page to put in their place.
   */
  readonly body: HastRoot
  readonly ingredientLinks: readonly IngredientLink[]
  /** Plain text of each paragraph, list item or heading with its place: what prose checks read. */
  readonly passages: readonly Passage[]
  readonly images: readonly Located<Picture>[]
  readonly links: readonly FileLink[]
}

/** One heading, paragraph, list item or block of code; a `step` stands in a list. */
export interface Passage {
  readonly kind: 'heading' | 'step' | 'text'
  readonly text: string
  readonly place: Located<unknown>['place']
  /** Where `text` stands in the file: see `placeInPassage`. In order, the first from index 0. */
  readonly stretches: readonly Stretch[]
  /** Offsets in the file at which the lines begin that the passage stands on. */
  readonly lineStarts: readonly number[]
}

/**
 * Characters of a passage, up to the next stretch, that stand in one piece in the file. As many
 * characters there as here, or something that stands for them as a whole (`&deg;`).
 */
export interface Stretch {
  /** Index in the text of the passage. */
  readonly index: number
  /** Offsets from the start of the file. */
  readonly start: number
  readonly end: number
}

/** One Markdown file, understood: names are not looked up yet. */
export interface Recipe {
  readonly slug: string
  /** Relative to the cookbook folder: `recipes/barley-pot.md`. */
  readonly path: string
  readonly title: Located<string>
  readonly summary?: Located<string>
  /** Absent for a component that is only ever used by weight. */
  readonly serves?: Located<number>
  /** Weight of the finished batch, weighed. */
  readonly batch?: Located<WeightAmount>
  /** What the finished batch weighs, where it was not weighed. */
  readonly yieldFactor?: Located<YieldFactor>
  /** Stays in the pot and bowl, weighed: its share of every figure is not served. */
  readonly leftBehind?: Located<WeightAmount>
  /** Weight of one serving where the page states it. */
  readonly portion?: Located<WeightAmount>
  readonly handsOnMinutes?: Located<number>
  readonly totalMinutes?: Located<number>
  readonly oven?: Located<string>
  readonly pan?: Located<Pan>
  readonly pieces?: Located<Pieces>
  readonly keeps?: Keeps
  readonly tags: readonly Located<string>[]
  readonly image?: Located<Picture>
  readonly groups: readonly IngredientGroup[]
  readonly stated?: Stated
  /** How the stated energy was arrived at, where it is not as the cookbook says. */
  readonly energyMethod?: Located<EnergyMethod>
  readonly claims: readonly Located<string>[]
  readonly freeFrom: readonly Located<string>[]
  readonly suits: readonly Located<string>[]
  readonly comparison?: Comparison
  /** Findings the writer accepts, with the reason that the report prints. */
  readonly accepted: readonly Acceptance[]
  /** Where something absent from the front matter would go: its first key. */
  readonly frontMatter: Located<unknown>['place']
  /** Where a line can be added to the front matter: empty, before the line that closes it. */
  readonly frontMatterEnd: Located<unknown>['place']
  readonly method: Method
}
