import type {Plan} from './cookbook.ts'
import {readMarkdownFile} from './markdown-file.ts'
import {safeBody} from './method.ts'
import type {Problem} from './problem.ts'
import {reportInto} from './problems.ts'
import {slugOf} from './slug.ts'
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
    'how many servings of which recipes?',
  ),
})

/** Reads a plan; one that cannot be understood is left out. */
export function readPlan(source: SourceText): {
  readonly plan?: Plan
  readonly problems: readonly Problem[]
} {
  const problems: Problem[] = []
  const report = reportInto(problems, source.path)
  const slug = slugOf(source.path, 'plans', report)
  const file = readMarkdownFile(source, planReader, report)
  if (!file || slug === undefined) return {problems}
  const {title, summary, servings} = file.values
  const body = safeBody(file.root, {source: {path: source.path, text: file.text}, report})
  const plan: Plan = {
    slug,
    path: source.path,
    title,
    ...(summary && {summary}),
    servings: servings.value.map(({key, value}) => ({recipe: key, servings: value.value})),
    body: body.body,
  }
  return {plan, problems}
}
