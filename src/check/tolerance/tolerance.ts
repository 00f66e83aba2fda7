import type {NutrientTolerance, Settings, ToleranceName} from '../../cookbook/cookbook.ts'
import {type Allowance, both, type Compared} from './allowance.ts'
import {euAllowance} from './eu.ts'
import {householdAllowance} from './household.ts'
import {usAllowance, usAllowanceBothWays} from './us.ts'

/** A named policy: published, with its source in its own file. */
export type Policy = (compared: Compared) => Allowance

const policies: Readonly<Record<ToleranceName, Policy>> = {
  household: householdAllowance,
  us: usAllowance,
  'us both ways': usAllowanceBothWays,
  eu: euAllowance,
  strict: () => ({below: 0, above: 0}),
}

/** What the cookbook allows: its own number for the nutrient where it gives one, else its policy. */
export function allowance(
  compared: Compared,
  settings: Pick<Settings, 'tolerance' | 'tolerances'>,
): Allowance {
  const own = settings.tolerances.get(compared.nutrient)
  return own ? both(ownAllowance(own, compared.value)) : policies[settings.tolerance](compared)
}

function ownAllowance(own: NutrientTolerance, value: number): number {
  return own.kind === 'ratio' ? own.ratio * value : own.amount
}
