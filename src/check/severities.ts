import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Problem} from '../cookbook/problem.ts'
import {nearest} from '../units/nearest.ts'
import {type RuleText, ruleTexts} from './rule-texts.ts'
import {cookbookRules, recipeRules} from './rules.ts'

const checking: ReadonlySet<string> = new Set([...recipeRules, ...cookbookRules].map(({id}) => id))

/**
 * Whether the writer may change how strict a rule is. What keeps a file from being understood or a
 * figure from being computed cannot be waived: there would be nothing to publish.
 */
export function isChangeable({id, severity}: Pick<RuleText, 'id' | 'severity'>): boolean {
  return checking.has(id) || severity !== 'error'
}

const changeable: ReadonlyMap<string, RuleText> = new Map(
  ruleTexts.filter(isChangeable).map((rule) => [rule.id, rule]),
)

/** Problems of reading and computing, at the severities that cookbook.yaml asks for. */
export function withSeverities(
  problems: readonly Problem[],
  {settings: {severities}}: Pick<Cookbook, 'settings'>,
): readonly Problem[] {
  if (severities.size === 0) return problems
  return problems.flatMap((problem) => {
    const severity = changeable.has(problem.ruleId) ? severities.get(problem.ruleId) : undefined
    if (severity === 'off') return []
    return [severity === undefined ? problem : {...problem, severity}]
  })
}

/** Rule ids in cookbook.yaml that change nothing. */
export function idleSeverities({
  settings: {checks},
}: Pick<Cookbook, 'settings'>): readonly Problem[] {
  return checks
    .filter(({value}) => !changeable.has(value))
    .map(({value, place}) => {
      const isRule = ruleTexts.some(({id}) => id === value)
      const meant = isRule ? undefined : nearest(value, changeable.keys())
      return {
        ruleId: 'known-rule',
        severity: 'error',
        file: 'cookbook.yaml',
        place,
        reason: isRule
          ? `Rule \`${value}\` cannot be changed, expected one that checks what was understood`
          : `Rule \`${value}\` does not exist, expected ${meant === undefined ? 'the id of a rule' : `\`${meant}\``}`,
        actual: value,
        ...(meant !== undefined && {expected: [meant]}),
      }
    })
}
