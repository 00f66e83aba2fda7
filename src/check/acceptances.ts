import type {Problem} from '../cookbook/problem.ts'
import type {Acceptance, IngredientLine, Recipe} from '../cookbook/recipe.ts'

/** A finding the writer accepts stays in the report, as a note that carries the reason. */
export function acceptedAsNotes(found: readonly Problem[], recipe: Recipe): readonly Problem[] {
  if (recipe.accepted.length === 0) return found
  return found.map((problem): Problem => {
    if (problem.file !== recipe.path) return problem
    const because = recipe.accepted.find((one) => accepts(one, problem, recipe))?.because.value
    return because === undefined
      ? problem
      : {...problem, severity: 'note', note: `Accepted: ${because}`, accepted: because}
  })
}

/** Acceptances that nothing was found for. */
export function unusedAcceptances(
  found: readonly Problem[],
  accepted: readonly Acceptance[],
  recipe: Recipe,
): readonly Problem[] {
  return accepted
    .filter((one) => !found.some((problem) => accepts(one, problem, recipe)))
    .map(({ruleId, only}) => ({
      ruleId: 'unused-acceptance',
      severity: 'warning',
      file: recipe.path,
      place: (only ?? ruleId).place,
      reason: `Accepted finding \`${ruleId.value}\`${only ? ` of \`${only.value}\`` : ''} does not occur, expected no line for it`,
      actual: (only ?? ruleId).value,
      note: 'Take the line out, so that the rule speaks again when it has something to say.',
    }))
}

function accepts({ruleId, only}: Acceptance, problem: Problem, {groups}: Recipe): boolean {
  if (ruleId.value !== problem.ruleId) return false
  if (only === undefined || only.value === problem.actual) return true
  return groups.some(({lines}) =>
    lines.some((line) => line.name.value === only.value && isAt(line, problem)),
  )
}

/** Whether a finding stands at the name or the amount of an ingredient. */
function isAt({name, amount}: IngredientLine, {place}: Problem): boolean {
  const [from, to] = [name.place.start.offset, amount.place.end.offset]
  const at = place?.start.offset
  return from !== undefined && to !== undefined && at !== undefined && from <= at && at < to
}
