import {folderRules} from '../cookbook/folder-rules.ts'
import {readingRules} from '../cookbook/problems.ts'
import {computingRules} from './computing-rules.ts'
import type {Rule} from './rule.ts'
import {cookbookRules, recipeRules} from './rules.ts'

/** A rule as its page tells it. */
export type RuleText = Pick<Rule, 'id' | 'severity' | 'summary' | 'why' | 'source'>

/** Every rule a message can name: what checks, computing, and reading find, in that order. */
export const ruleTexts: readonly RuleText[] = [
  ...recipeRules,
  ...cookbookRules,
  ...texts(computingRules),
  ...texts(readingRules),
  ...texts(folderRules),
]

function texts(
  rules: Readonly<Record<string, Pick<Rule, 'summary' | 'why'> & Partial<Rule>>>,
): RuleText[] {
  return Object.entries(rules).map(([id, rule]) => ({severity: 'error', ...rule, id}))
}
