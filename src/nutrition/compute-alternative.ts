import type {Figures} from '../food/figures.ts'
import {product, quotient} from '../units/uncertain.ts'
import {afterLosses, figuresOfPart} from './compute-line.ts'
import type {ComputedAlternative, ComputedLine, Ingredient} from './computed.ts'
import {cookingLosses} from './line-losses.ts'
import type {MeasuredOut} from './measure-out.ts'

/**
 * What another food in the place of a line adds to the batch. It is eaten to the same share, and
 * what simmering or cooking takes of the line it takes of that food too, unless its figures are
 * those of a cooked one. What was weighed when poured off or cut off says nothing about another
 * food: the alternative is counted whole, and says so.
 */
export function alternativeAdds(
  {line, grams, usedGrams}: Pick<ComputedLine, 'line' | 'grams' | 'usedGrams'>,
  ingredient: Ingredient,
  measured: MeasuredOut,
): Pick<ComputedAlternative, 'adds' | 'isCountedWhole'> {
  const used = line.eaten ? product(measured.grams, quotient(usedGrams, grams)) : measured.grams
  const whole: Figures<'batch'> = figuresOfPart(measured, used)
  const losses = cookingLosses(line, ingredient, whole)
  return {
    adds: losses.length === 0 ? whole : afterLosses(whole, losses),
    ...((line.pouredOff ?? line.trimmed) && {isCountedWhole: true}),
  }
}
