import type {Plan} from './cookbook.ts'
import type {Problem} from './problem.ts'
import {readText} from './read-text.ts'
import type {Method} from './recipe.ts'
import type {SourceText} from './sources.ts'
import {mapping, openMapping, optional, required} from './yaml/collection-readers.ts'
import {number, text} from './yaml/text-readers.ts'

/** The front matter of a plan; its schema describes every key for an editor. */
export const planReader = mapping('the keys of a plan', {
  title: required(text, 'Name of the plan', 'what is the plan called?'),
  summary: optional(text, 'The plan in a sentence'),
  servings: required(
    openMapping('servings by recipe such as `{ barley-pot: 8 }`', number({above: 0})),
    'How many servings of which recipes, by slug',
    'how many servings of which recipes, such as `servings: { barley-pot: 8 }`?',
  ),
})

/** Reads a plan; one that cannot be understood is left out. */
export function readPlan(source: SourceText): {
  readonly plan?: Plan
  readonly written?: Method
  readonly problems: readonly Problem[]
} {
  const {text: read, problems} = readText(source, 'plans', planReader)
  if (!read) return {problems}
  const {slug, written, values} = read
  const plan: Plan = {
    slug,
    path: source.path,
    title: values.title,
    ...(values.summary && {summary: values.summary}),
    servings: values.servings.value.map(({key, value}) => ({recipe: key, servings: value.value})),
    body: written.body,
  }
  return {plan, written, problems}
}
