import {allergenName} from '../../food/allergens.ts'
import type {Allergen, Food} from '../../food/food.ts'
import type {Absence} from './absence.ts'
import type {Objection} from './objection.ts'

/**
 * Why a food does not allow a dish to be called free from something: it contains it, its packet
 * warns of traces, or nobody has stated what it contains.
 */
export function againstFreeFrom(absence: Absence, food: Food): Objection | undefined {
  const held = among(food.contains, absence)
  if (held.length > 0) return {kind: 'no', why: `contains ${named(held)}`}
  const traces = among(food.mayContain, absence)
  if (traces.length > 0) return {kind: 'no', why: `may contain ${named(traces)}`}
  return food.allergensKnown
    ? undefined
    : {kind: 'unknown', key: 'contains', why: 'does not say which allergens it contains'}
}

function among(allergens: ReadonlySet<Allergen>, absence: Absence): readonly Allergen[] {
  return absence.allergens.filter((allergen) => allergens.has(allergen))
}

function named(allergens: readonly Allergen[]): string {
  return allergens.map(allergenName).join(', ')
}
