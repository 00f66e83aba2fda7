import type {Food} from './food.ts'

/** Every food a cookbook can name. */
export interface FoodIndex {
  /**
   * The food a writer's name means: their own foods first, then the core table's names and other
   * names, then a qualified id. Never a guess; case and spacing do not matter.
   */
  lookUp(name: string): Food | undefined
  /** The nearest names, best first, for a message that lists them. */
  nearest(name: string, most: number): readonly string[]
  /** The writer's own foods, in name order. */
  readonly own: readonly Food[]
}
