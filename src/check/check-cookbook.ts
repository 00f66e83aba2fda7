import type {Cookbook, Settings} from '../cookbook/cookbook.ts'
import type {Problem} from '../cookbook/problem.ts'
import type {Computed} from '../nutrition/computed.ts'
import {acceptedAsNotes, unusedAcceptances} from './acceptances.ts'
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
