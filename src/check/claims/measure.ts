import {figureQuotient} from '../../food/figure-quotient.ts'
import type {Figure} from '../../food/figures.ts'
import {weightedSum} from '../../food/figures.ts'
import {methodFactors} from '../../food/method-factors.ts'
import {type Nutrient, nutrientName, nutrientUnit} from '../../food/nutrients.ts'
import {formatUncertain, roundedText} from '../../units/format-figure.ts'
import {exact, expandedUncertainty, type Uncertain} from '../../units/uncertain.ts'
import type {Dish} from './dish.ts'
import {proteinOfQuality} from './protein-quality.ts'

/** A figure that a claim sets a limit to, on a basis of its own. */
export interface Measure {
  /** `fibre per 100 g`. */
  readonly name: string
  /** The recipe's key without which it cannot be told. */
  readonly needs: 'yield' | 'serves'
  readonly unit: (typeof nutrientUnit)[Nutrient] | '%'
  /** Undefined where the recipe lacks what is needed. */
  figure(dish: Dish): Figure | undefined
}

export function perServing(nutrient: Nutrient): Measure {
  return {
    name: `${nutrientName[nutrient]} per serving`,
    needs: 'serves',
    unit: nutrientUnit[nutrient],
    figure: ({computed}) => computed.perServing?.[nutrient],
  }
}

/** Protein of a serving, corrected for its quality: see `proteinOfQuality`. */
export const correctedProtein: Measure = {
  name: 'protein per serving, corrected for its quality,',
  needs: 'serves',
  unit: 'g',
  figure: ({computed}) => {
    const serves = computed.recipe.serves?.value
    return serves === undefined
      ? undefined
      : weightedSum([{figure: proteinOfQuality(computed), weight: exact(1 / serves)}])
  },
}

export function per100g(nutrient: Nutrient): Measure {
  return {
    name: `${nutrientName[nutrient]} per 100 g`,
    needs: 'yield',
    unit: nutrientUnit[nutrient],
    figure: (dish) => dish.computed.per100g?.[nutrient === 'energy' ? energyOf(dish) : nutrient],
  }
}

/** Of 50 g: what US law adds where a serving is as small as a spoonful. */
export function per50g(nutrient: Nutrient): Measure {
  return {
    ...per100g(nutrient),
    name: `${nutrientName[nutrient]} per 50 g`,
    figure: ({computed}) =>
      computed.per100g && weightedSum([{figure: computed.per100g[nutrient], weight: exact(1 / 2)}]),
  }
}

/** Saturated and trans fat together, as the EU limits them. */
export const saturatedAndTransPer100g: Measure = {
  name: 'saturated and trans fat per 100 g',
  needs: 'yield',
  unit: 'g',
  figure: ({computed}) =>
    computed.per100g &&
    weightedSum([
      {figure: computed.per100g.saturated, weight: exact(1)},
      {figure: computed.per100g.trans, weight: exact(1)},
    ]),
}

export function per100kcal(nutrient: Nutrient): Measure {
  return {
    name: `${nutrientName[nutrient]} per 100 kcal`,
    needs: 'yield',
    unit: nutrientUnit[nutrient],
    figure: (dish) => ofEnergy([[nutrient, 100]], dish),
  }
}

/**
 * Share of the energy that nutrients bring, by the general factors: 21 CFR 101.9(c)(1)(i)(B) and
 * Regulation (EU) 1169/2011 Annex XIV, protein 4 and fat 9 kcal/g in both.
 */
export function shareOfEnergy(
  name: string,
  nutrients: readonly ('protein' | 'fat' | 'saturated' | 'trans')[],
): Measure {
  const {protein, fat} = methodFactors.energyGeneral
  const percents = nutrients.map(
    (nutrient) => [nutrient, 100 * (nutrient === 'protein' ? protein : fat)] as const,
  )
  return {
    name: `share of ${name} in the energy`,
    needs: 'yield',
    unit: '%',
    figure: (dish) => ofEnergy(percents, dish),
  }
}

/** Weighted nutrients ÷ energy of the batch: the same for a serving and for 100 g. */
function ofEnergy(
  weights: readonly (readonly [Nutrient, number])[],
  dish: Dish,
): Figure | undefined {
  const {batch} = dish.computed
  const energy = batch[energyOf(dish)]
  if (energy.value <= 0) return undefined
  const above = weightedSum(
    weights.map(([nutrient, weight]) => ({figure: batch[nutrient], weight: exact(weight)})),
  )
  return figureQuotient(above, energy)
}

/**
 * The energy that limits are set to and shares are taken of: in the EU the one by its own factors; where a food's fibre
 * is unknown that cannot be worked out, and the foods' own energy stands in.
 */
export function energyOf({rules, computed}: Dish): Nutrient {
  const isWorkedOut = rules === 'eu' && computed.batch.energyEu.missing.size === 0
  return isWorkedOut ? 'energyEu' : 'energy'
}

/** `5.2 ± 0.1 g`, `18.3 ± 0.4 %`. */
export function measuredText(quantity: Uncertain, unit: Measure['unit']): string {
  if (unit !== '%') return formatUncertain(quantity, unit, unit === 'g' ? 2 : 1)
  const uncertainty = expandedUncertainty(quantity)
  // What rounds to ± 0.0 is known, not exact.
  const decimals = uncertainty < 0.05 ? 2 : 1
  return `${roundedText(quantity.value, decimals)} ± ${roundedText(uncertainty, decimals)} %`
}
