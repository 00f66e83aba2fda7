import type {Cookbook, Settings} from '../cookbook/cookbook.ts'
import type {Problem, Severity} from '../cookbook/problem.ts'
import type {Recipe} from '../cookbook/recipe.ts'
import type {Computed} from '../nutrition/computed.ts'
import type {CookbookRule, Finding, Rule} from './rule.ts'
import {cookbookRules, recipeRules} from './rules.ts'

/**
 * Runs every rule over every recipe that could be computed, and stamps what they find.
 * @param today the day of the check, `2026-11-25`; without it no label is too old
 */
export function checkCookbook(
  cookbook: Cookbook,
  all: ReadonlyMap<string, Computed>,
  today?: string,
): readonly Problem[] {
  const ofCookbook = cookbookRules.flatMap((rule) =>
    stamped(rule, cookbook.settings, rule.check({cookbook, all, today}), ''),
  )
  const computedFiles = new Set([...all.values()].map(({recipe}) => recipe.path))
  const ofRecipes = [...all.values()].flatMap((computed) => {
    const {recipe} = computed
    const own = ofCookbook.filter(({file}) => file === recipe.path)
    const found = [...findingsIn(computed, cookbook, all), ...own]
    return [...acceptedAsNotes(found, recipe), ...unusedAcceptances(found, recipe.accepted, recipe)]
  })
  return [...ofRecipes, ...ofCookbook.filter(({file}) => !computedFiles.has(file))]
}

/** Runs the rules about recipes over one recipe. */
export function checkRecipe(
  computed: Computed,
  cookbook: Cookbook,
  all: ReadonlyMap<string, Computed>,
): readonly Problem[] {
  const {recipe} = computed
  const found = findingsIn(computed, cookbook, all)
  // What rules about the whole cookbook find is not known here.
  const ofCookbook = new Set(cookbookRules.map(({id}) => id))
  const accepted = recipe.accepted.filter(({ruleId}) => !ofCookbook.has(ruleId.value))
  return [...acceptedAsNotes(found, recipe), ...unusedAcceptances(found, accepted, recipe)]
}

function findingsIn(
  computed: Computed,
  cookbook: Cookbook,
  all: ReadonlyMap<string, Computed>,
): readonly Problem[] {
  const {recipe} = computed
  return recipeRules.flatMap((rule) =>
    stamped(rule, cookbook.settings, rule.check({recipe, computed, cookbook, all}), recipe.path),
  )
}

function stamped(
  rule: Rule | CookbookRule,
  settings: Settings,
  findings: Iterable<Finding>,
  file: string,
): readonly Problem[] {
  const severity = settings.severities.get(rule.id) ?? rule.severity
  if (severity === 'off') return []
  return Array.from(findings, (finding) => ({file, ...finding, ruleId: rule.id, severity}))
}

/** A finding the writer accepts stays in the report, as a note that carries the reason. */
function acceptedAsNotes(found: readonly Problem[], recipe: Recipe): readonly Problem[] {
  if (recipe.accepted.length === 0) return found
  const reasons = new Map(
    recipe.accepted.map(({ruleId, because}) => [ruleId.value, because.value] as const),
  )
  return found.map((problem): Problem => {
    const because = reasons.get(problem.ruleId)
    return because === undefined || problem.file !== recipe.path
      ? problem
      : {...problem, severity: 'note', note: `Accepted: ${because}`, accepted: because}
  })
}

const unusedSeverity: Severity = 'warning'

function unusedAcceptances(
  found: readonly Problem[],
  accepted: Recipe['accepted'],
  recipe: Recipe,
): readonly Problem[] {
  const ids = new Set(found.map(({ruleId}) => ruleId))
  return accepted
    .filter(({ruleId}) => !ids.has(ruleId.value))
    .map(({ruleId}) => ({
      ruleId: 'unused-acceptance',
      severity: unusedSeverity,
      file: recipe.path,
      place: ruleId.place,
      reason: `Accepted finding \`${ruleId.value}\` does not occur, expected no line for it`,
      actual: ruleId.value,
      note: 'Take the line out, so that the rule speaks again when it has something to say.',
    }))
}
