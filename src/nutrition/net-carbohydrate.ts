import {type Basis, type Figure, type Figures, known, weightedSum} from '../food/figures.ts'
import {exact} from '../units/uncertain.ts'

/**
 * Net carbohydrate, g: carbohydrate without fibre and without polyols. A convention of readers that
 * no law defines (common practice, no source). Polyols that nobody gives a figure for count as
 * none: tables leave them blank for foods that have none.
 */
export function netCarbohydrate({availableCarbohydrate, polyols}: Figures<Basis>): Figure {
  return weightedSum([
    {figure: availableCarbohydrate, weight: exact(1)},
    {figure: known(polyols), weight: exact(-1)},
  ])
}
