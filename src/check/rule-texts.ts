import {folderRules} from '../cookbook/folder-rules.ts'
import {readingRules} from '../cookbook/problems.ts'
import {computingRules} from './computing-rules.ts'
import type {Rule} from './rule.ts'
import type {RuleExample} from './rule-example.ts'
import {ruleExamples} from './rule-examples.ts'
import {cookbookRules, recipeRules} from './rules.ts'

/** A rule as its page tells it. */
export type RuleText = Pick<Rule, 'id' | 'severity' | 'summary' | 'why' | 'source'> & {
  readonly example?: RuleExample
}

/** Every rule a message can name: what checks, computing, and reading find, in that order. */
export const ruleTexts: readonly RuleText[] = [
  ...recipeRules,
  ...cookbookRules,
  ...texts(computingRules),
  ...texts(readingRules),
  ...texts(folderRules),
].map(({id, severity, summary, why, source}) => {
  const example = ruleExamples[id]
  return {id, severity, summary, why, ...(source && {source}), ...(example && {example})}
})

function texts(
  rules: Readonly<Record<string, Pick<Rule, 'summary' | 'why'> & Partial<Rule>>>,
): Omit<Rule, 'check'>[] {
  return Object.entries(rules).map(([id, rule]) => ({severity: 'error', ...rule, id}))
}
