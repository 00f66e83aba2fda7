import type {CookbookRule, Rule} from './rule.ts'
import {amountListed} from './rules/amount-listed.ts'
import {amountsInMethod} from './rules/amounts-in-method.ts'
import {batchLoss} from './rules/batch-loss.ts'
import {batchWeight} from './rules/batch-weight.ts'
import {choicesFit} from './rules/choices-fit.ts'
import {comparisonHolds} from './rules/comparison-holds.ts'
import {comparisonMinimum} from './rules/comparison-minimum.ts'
import {comparisonPortions} from './rules/comparison-portions.ts'
import {componentMade} from './rules/component-made.ts'
import {componentReady} from './rules/component-ready.ts'
import {componentUsed} from './rules/component-used.ts'
import {coolingSaid} from './rules/cooling-said.ts'
import {distinctFoods} from './rules/distinct-foods.ts'
import {eggDishTemperature} from './rules/egg-dish-temperature.ts'
import {fatPouredOff} from './rules/fat-poured-off.ts'
import {figureInText} from './rules/figure-in-text.ts'
import {fishTemperature} from './rules/fish-temperature.ts'
import {foodUsed} from './rules/food-used.ts'
import {freeFrom} from './rules/free-from.ts'
import {freezerQuality} from './rules/freezer-quality.ts'
import {garlicInOil} from './rules/garlic-in-oil.ts'
import {groundMeatTemperature} from './rules/ground-meat-temperature.ts'
import {handsOnFits} from './rules/hands-on-fits.ts'
import {honeyForInfants} from './rules/honey-for-infants.ts'
import {ingredientUsed} from './rules/ingredient-used.ts'
import {keepsGuidance} from './rules/keeps-guidance.ts'
import {kidneyBeansBoiled} from './rules/kidney-beans-boiled.ts'
import {labelAge} from './rules/label-age.ts'
import {labelSanity} from './rules/label-sanity.ts'
import {labelServing} from './rules/label-serving.ts'
import {liquidCounted} from './rules/liquid-counted.ts'
import {marinadeBoiled} from './rules/marinade-boiled.ts'
import {measureWeight} from './rules/measure-weight.ts'
import {meatTemperature} from './rules/meat-temperature.ts'
import {missingStated} from './rules/missing-stated.ts'
import {nutrientClaim} from './rules/nutrient-claim.ts'
import {ovenInMethod} from './rules/oven-in-method.ts'
import {panInMethod} from './rules/pan-in-method.ts'
import {portionWeight} from './rules/portion-weight.ts'
import {poultryTemperature} from './rules/poultry-temperature.ts'
import {rawEgg} from './rules/raw-egg.ts'
import {rawFlour} from './rules/raw-flour.ts'
import {reheatingSaid} from './rules/reheating-said.ts'
import {riceHeldWarm} from './rules/rice-held-warm.ts'
import {scalesAgree} from './rules/scales-agree.ts'
import {statedEnergy} from './rules/stated-energy.ts'
import {statedMacros} from './rules/stated-macros.ts'
import {stepsFitTime} from './rules/steps-fit-time.ts'
import {suitsDiet} from './rules/suits-diet.ts'
import {temperatureTooLow} from './rules/temperature-too-low.ts'
import {timeInSummary} from './rules/time-in-summary.ts'
import {totalInMethod} from './rules/total-in-method.ts'
import {unknownFigure} from './rules/unknown-figure.ts'

/** Every rule about one recipe, in the order the rules page lists them. */
export const recipeRules: readonly Rule[] = [
  statedMacros,
  statedEnergy,
  unknownFigure,
  missingStated,
  figureInText,
  portionWeight,
  batchWeight,
  batchLoss,
  componentMade,
  fatPouredOff,
  measureWeight,
  liquidCounted,
  ingredientUsed,
  amountsInMethod,
  amountListed,
  totalInMethod,
  ovenInMethod,
  scalesAgree,
  panInMethod,
  stepsFitTime,
  timeInSummary,
  handsOnFits,
  componentReady,
  poultryTemperature,
  groundMeatTemperature,
  meatTemperature,
  fishTemperature,
  eggDishTemperature,
  temperatureTooLow,
  rawEgg,
  rawFlour,
  honeyForInfants,
  kidneyBeansBoiled,
  riceHeldWarm,
  garlicInOil,
  marinadeBoiled,
  keepsGuidance,
  freezerQuality,
  coolingSaid,
  reheatingSaid,
  nutrientClaim,
  comparisonHolds,
  comparisonPortions,
  comparisonMinimum,
  freeFrom,
  suitsDiet,
  choicesFit,
]

/** Every rule about the cookbook as a whole. */
export const cookbookRules: readonly CookbookRule[] = [
  labelSanity,
  labelServing,
  labelAge,
  distinctFoods,
  foodUsed,
  componentUsed,
]
