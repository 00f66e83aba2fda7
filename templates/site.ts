import type {Root} from 'hast'
import type {RuleText} from '../src/check/rule-texts.ts'
import type {Cookbook} from '../src/cookbook/cookbook.ts'
import type {Problem} from '../src/cookbook/problem.ts'
import type {Computed} from '../src/nutrition/computed.ts'
import type {ShoppingData} from '../src/shopping/shopping-data.ts'
import type {Words} from './words/en.ts'

/** What every template sees. */
export interface Site {
  readonly cookbook: Cookbook
  /** By slug, in the order of the titles. */
  readonly computed: ReadonlyMap<string, Computed>
  /** The recipes that use a component, by its slug. */
  readonly users: ReadonlyMap<string, readonly Computed[]>
  readonly shopping: ShoppingData
  /** What the checks let pass, in report order. */
  readonly problems: readonly Problem[]
  readonly rules: readonly RuleText[]
  readonly words: Words
}

/** One page, before it becomes text. */
export interface Page {
  /** Relative to the site folder. */
  readonly path: string
  readonly tree: Root
}

/** A page that is made when it is wanted: the trees of all would fill the memory. */
export interface PageToMake {
  readonly path: string
  readonly page: () => Page
}
