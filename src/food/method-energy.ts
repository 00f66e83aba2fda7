import type {Span} from '../units/span.ts'
import {difference, exact, rectangular, type Source, type Uncertain} from '../units/uncertain.ts'
import {type Figure, isComplete, known, type Term, weightedSum} from './figures.ts'
import {alluloseKcalPerGram, methodFactors} from './method-factors.ts'
import type {MethodEnergy, Nutrient} from './nutrients.ts'
import {type Polyol, polyolKcalPerGram} from './polyols.ts'

/** What a food's energy is worked out from. */
export interface EnergyParts {
  figure(nutrient: Nutrient): Figure
  /** Grams per 100 g by kind, where the kinds are known; of the same sources as the polyols. */
  readonly polyolsByKind?: ReadonlyMap<Polyol, Uncertain>
  /** Grams per 100 g, where a packet says; within the carbohydrate. */
  readonly alluloseGrams?: Uncertain
}

// One source each, not one a food: what is unknown about fibre or polyols is the same everywhere.
const fibreSource: Source = {kind: 'table', subject: 'soluble share of fibre'}
const polyolSource: Source = {kind: 'table', subject: 'kind of polyol'}

/**
 * Energy per 100 g worked out from a food's macros by a method. Alcohol and polyols that nobody
 * gives a figure for count as none: tables leave them blank for foods that have none. Unknown
 * protein, fat, carbohydrate or fibre leaves the energy unknown.
 */
export function methodEnergy(method: MethodEnergy, parts: EnergyParts): Figure {
  const {figure} = parts
  const {protein, fat, carbohydrate, fibre, ethanol} = methodFactors[method]
  return weightedSum([
    {figure: figure('protein'), weight: exact(protein)},
    {figure: figure('fat'), weight: exact(fat)},
    {
      figure: figure(fibre ? 'availableCarbohydrate' : 'carbohydrate'),
      weight: exact(carbohydrate),
    },
    ...(fibre ? [{figure: figure('fibre'), weight: within(fibre, fibreSource)}] : []),
    ...polyolTerms(method, parts),
    ...alluloseTerms(method, parts),
    ...whereKnown(figure('alcohol'), exact(ethanol)),
  ])
}

/** Polyols are within the carbohydrate: their own factor takes the place of that one. */
function polyolTerms(
  method: MethodEnergy,
  {figure, polyolsByKind = new Map()}: EnergyParts,
): readonly Term[] {
  const {carbohydrate, polyols} = methodFactors[method]
  if (polyols === undefined) return []
  if (polyolsByKind.size === 0) {
    return whereKnown(
      figure('polyols'),
      difference(within(polyols, polyolSource), exact(carbohydrate)),
    )
  }
  const rules = method === 'energyDigestible' ? 'us' : 'eu'
  // The kinds are given in kcal/g; a method in kJ has the same share of its own factor.
  const perKcal = method === 'energyEuKilojoules' ? polyols.value / euPolyolKcal : 1
  return Array.from(polyolsByKind, ([kind, grams]) => ({
    figure: known(grams),
    weight: exact(polyolKcalPerGram[kind][rules] * perKcal - carbohydrate),
  }))
}

/** Allulose is within the carbohydrate, as polyols are. */
function alluloseTerms(method: MethodEnergy, {alluloseGrams}: EnergyParts): readonly Term[] {
  if (method !== 'energyDigestible' || alluloseGrams === undefined) return []
  const {carbohydrate} = methodFactors[method]
  return [{figure: known(alluloseGrams), weight: exact(alluloseKcalPerGram - carbohydrate)}]
}

const euPolyolKcal = methodFactors.energyEu.polyols?.value ?? 0

function whereKnown(figure: Figure, weight: Uncertain): readonly Term[] {
  return isComplete(figure) ? [{figure, weight}] : []
}

function within({value, low, high}: Span, source: Source): Uncertain {
  return rectangular(value, high - low, source)
}
