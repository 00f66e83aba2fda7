import type {Examined} from '../build.ts'
import {judge, type Verdict} from '../check/verdict.ts'
import type {Severity} from '../cookbook/problem.ts'

/** How many of what a cookbook holds and a check found. */
export interface Summary {
  readonly recipes: number
  /** Recipes that another recipe uses. */
  readonly components: number
  /** Foods that some recipe uses, by where their figures come from. */
  readonly labels: number
  readonly tableFoods: number
  readonly verdicts: Readonly<Record<Verdict, number>>
  readonly findings: Readonly<Record<Severity, number>>
}

export function summary({cookbook, computed, problems}: Examined): Summary {
  const foods = new Map<string, 'label' | 'table'>()
  const components = new Set<string>()
  const verdicts: Record<Verdict, number> = {agrees: 0, tolerated: 0, drift: 0, unknown: 0}
  const findings: Record<Severity, number> = {error: 0, warning: 0, note: 0}
  for (const one of computed.values()) {
    for (const {ingredient} of one.lines) {
      if (ingredient.kind === 'component') components.add(ingredient.recipe.slug)
      else {
        const {id, provenance} = ingredient.food
        foods.set(id, provenance.kind === 'label' ? 'label' : 'table')
      }
    }
    const {stated} = one.recipe
    for (const {verdict} of stated ? judge(stated, one, cookbook.settings) : []) verdicts[verdict]++
  }
  for (const {severity} of problems) findings[severity]++
  const labels = [...foods.values()].filter((kind) => kind === 'label').length
  return {
    recipes: cookbook.recipes.size,
    components: components.size,
    labels,
    tableFoods: foods.size - labels,
    verdicts,
    findings,
  }
}
