import type {CookbookRule, Rule} from './rule.ts'
import {batchWeight} from './rules/batch-weight.ts'
import {componentMade} from './rules/component-made.ts'
import {fatPouredOff} from './rules/fat-poured-off.ts'
import {measureWeight} from './rules/measure-weight.ts'
import {missingStated} from './rules/missing-stated.ts'
import {portionWeight} from './rules/portion-weight.ts'
import {statedEnergy} from './rules/stated-energy.ts'
import {statedMacros} from './rules/stated-macros.ts'
import {unknownFigure} from './rules/unknown-figure.ts'

/** Every rule about one recipe, in the order the rules page lists them. */
export const recipeRules: readonly Rule[] = [
  statedMacros,
  statedEnergy,
  unknownFigure,
  missingStated,
  portionWeight,
  batchWeight,
  componentMade,
  fatPouredOff,
  measureWeight,
]

/** Every rule about the cookbook as a whole. */
export const cookbookRules: readonly CookbookRule[] = []
