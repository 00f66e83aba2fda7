import type {FoodIndex} from '../food/food-index.ts'
import type {Settings} from './cookbook.ts'
import type {Problem} from './problem.ts'
import type {RecipeRead} from './read-recipe.ts'
import type {SourceText} from './sources.ts'

/** What a cookbook says beside its recipes: how it counts, and which foods there are. */
export interface Larder {
  readonly settings: Settings
  readonly foods: FoodIndex
  readonly problems: readonly Problem[]
}

/**
 * What was understood of a cookbook before, for whoever reads it again after every save: of files
 * whose texts are the same, the very same values come out. Understanding is pure, so nothing else
 * needs to be known of them.
 */
export class UnderstoodBefore {
  #larder: {readonly texts: readonly SourceText[]; readonly understood: Larder} | undefined
  #recipes = new Map<string, {readonly text: string; readonly read: RecipeRead}>()

  /** @param texts all that the larder is understood from */
  larder(texts: readonly SourceText[], understand: () => Larder): Larder {
    if (this.#larder && areSame(this.#larder.texts, texts)) return this.#larder.understood
    const understood = understand()
    this.#larder = {texts, understood}
    // How amounts are read depends on it.
    this.#recipes.clear()
    return understood
  }

  recipe(source: SourceText, read: (source: SourceText) => RecipeRead): RecipeRead {
    const before = this.#recipes.get(source.path)
    if (before?.text === source.text) return before.read
    const now = read(source)
    this.#recipes.set(source.path, {text: source.text, read: now})
    return now
  }
}

function areSame(some: readonly SourceText[], others: readonly SourceText[]): boolean {
  return (
    some.length === others.length &&
    some.every(({path, text}, index) => {
      const other = others[index]
      return other?.path === path && other.text === text
    })
  )
}
