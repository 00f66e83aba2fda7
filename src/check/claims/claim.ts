import type {Condition} from './condition.ts'
import type {Dish} from './dish.ts'

/** What a claim is about, for the sentences that have to stand beside it. */
export type ClaimSubject =
  | 'energy'
  | 'fat'
  | 'saturated'
  | 'cholesterol'
  | 'sugars'
  | 'sodium'
  | 'fibre'
  | 'protein'
  | 'micronutrient'
  | 'several'

/** Words about nutrition that a law gives conditions to. */
export interface Claim {
  readonly name: string
  /** Words that mean the same to a reader. */
  readonly also: readonly string[]
  readonly about: ClaimSubject
  /** Document and paragraph. */
  readonly source: string
  /** Only beside the dish or food of `compared with`. */
  readonly isRelative?: true
  /** The claim holds when every condition of one way holds. */
  ways(dish: Dish): readonly (readonly Condition[])[]
}
