import {checkCookbook} from '../../src/check/check-cookbook.ts'
import type {Cookbook} from '../../src/cookbook/cookbook.ts'
import type {Problem} from '../../src/cookbook/problem.ts'
import {understandCookbook} from '../../src/cookbook/understand.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import type {Computed} from '../../src/nutrition/computed.ts'

/** A dish in two parts, as a test writes it. */
export interface DishText {
  /** YAML lines of `ingredients`, without their indentation. */
  readonly ingredients: readonly string[]
  /** Further lines of front matter. */
  readonly front?: readonly string[]
  readonly method: string
  /** Further lines of cookbook.yaml. */
  readonly settings?: readonly string[]
  /** foods.yaml, where the cookbook has one. */
  readonly foods?: string
  /** Other recipes of the cookbook, whole files by slug. */
  readonly others?: Readonly<Record<string, string>>
}

/** The Markdown file of a dish. */
export function dishFile({ingredients, front = [], method}: DishText): string {
  const lines = ingredients.map((line) => `  ${line}`)
  const serves = front.some((line) => /^(?:serves|yield):/.test(line)) ? [] : ['serves: 4']
  const title = front.some((line) => line.startsWith('title:')) ? [] : ['title: Dish']
  return [
    '---',
    ...title,
    ...serves,
    ...front,
    'ingredients:',
    ...lines,
    '---',
    '',
    method,
    '',
  ].join('\n')
}

/** A dish from its text to its figures, with the cookbook around it. */
export function computedIn(dish: DishText): {
  readonly cookbook: Cookbook
  readonly computed: ReadonlyMap<string, Computed>
} {
  const texts = Object.entries({dish: dishFile(dish), ...dish.others}).map(([slug, text]) => ({
    path: `recipes/${slug}.md`,
    text,
  }))
  const {cookbook, problems} = understandCookbook({
    texts: [
      {path: 'cookbook.yaml', text: ['title: Test', ...(dish.settings ?? []), ''].join('\n')},
      ...(dish.foods === undefined ? [] : [{path: 'foods.yaml', text: dish.foods}]),
      ...texts,
    ],
    images: [],
  })
  const {computed, problems: unresolved} = computeCookbook(cookbook)
  const faults = [...problems, ...unresolved]
  if (faults.length > 0) throw new Error(faults.map(({reason}) => reason).join('\n'))
  return {cookbook, computed}
}

/** What a dish alone in its cookbook, and without stated figures, is told. */
const beside: ReadonlySet<string> = new Set(['missing-stated', 'component-used'])

/** What all rules but those about stated figures find in a dish. */
export function findingsIn(dish: DishText): readonly Problem[] {
  const {cookbook, computed} = computedIn(dish)
  return checkCookbook(cookbook, computed).filter(
    ({ruleId, file}) => !beside.has(ruleId) && file === 'recipes/dish.md',
  )
}

/** Rule ids, in the order found. */
export function ruleIdsIn(dish: DishText): readonly string[] {
  return findingsIn(dish).map(({ruleId}) => ruleId)
}

/** The text that a finding points at. */
export function pointedAt(dish: DishText, {place}: Problem): string {
  return dishFile(dish).slice(place?.start.offset, place?.end.offset)
}
