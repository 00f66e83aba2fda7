import type {Settings} from '../cookbook/cookbook.ts'
import type {Recipe, StatedFigure} from '../cookbook/recipe.ts'
import {isComplete} from '../food/figures.ts'
import type {PublishedNutrient} from '../food/nutrients.ts'
import type {Computed} from '../nutrition/computed.ts'
import {
  type EnergyMethod,
  energyByMethod,
  type MacroSpans,
  type MethodEnergy,
} from '../nutrition/energy-methods.ts'
import {type Span, spanGap, spanOfRounded} from '../units/span.ts'
import {expandedUncertainty, scaled} from '../units/uncertain.ts'
import {shareOfBatch} from './stated-basis.ts'
import {allowance} from './tolerance/tolerance.ts'
import {judge} from './verdict.ts'

/** Stated energy beside the energy of the stated macros. */
export interface Reconciliation {
  readonly stated: StatedFigure
  readonly byMethod: readonly [MethodEnergy, ...MethodEnergy[]]
  /** The method that fits; `foods` when only the foods' own factors do; `none` when nothing does. */
  readonly explanation: EnergyMethod | 'foods' | 'none'
  /** Distance from the general factors, as a share of the stated energy, 0–100 and beyond. */
  readonly gapPercent: number
  /** What would close the gap, one sentence each. */
  readonly wouldExplain: readonly string[]
}

/**
 * Multiplies the stated macros out by every recognised method, each figure within the limits of
 * its rounding.
 * @returns undefined unless energy, protein, fat and carbohydrate are all stated
 */
export function reconcile(
  recipe: Recipe,
  computed: Computed,
  settings: Settings,
): Reconciliation | undefined {
  const {stated} = recipe
  const find = (nutrient: PublishedNutrient) =>
    stated?.figures.find((figure) => figure.nutrient === nutrient)
  const energy = find('energy')
  const [protein, fat, carbohydrate] = [find('protein'), find('fat'), find('carbohydrate')]
  if (!stated || !energy || !protein || !fat || !carbohydrate) return undefined
  const share = shareOfBatch(stated, computed)
  const beside = (nutrient: 'fibre' | 'polyols' | 'alcohol'): Span | undefined => {
    const own = find(nutrient)
    if (own) return spanOf(own)
    const figure = computed.batch[nutrient]
    return isComplete(figure) ? spanOfComputed(scaled(figure, share)) : undefined
  }
  const macros: MacroSpans = {
    protein: spanOf(protein),
    fat: spanOf(fat),
    carbohydrate: spanOf(carbohydrate),
    carbohydrateIs: settings.carbohydrate,
    ...optionalSpans({
      fibre: beside('fibre'),
      polyols: beside('polyols'),
      alcohol: beside('alcohol'),
    }),
  }
  const byMethod = energyByMethod(macros)
  const energySpan = spanOf(energy)
  const wholeGrams = (computed.batchGrams ?? computed.mixedGrams).value
  const {below, above} = allowance(
    {nutrient: 'energy', value: energy.value, grams: wholeGrams * share},
    settings,
  )
  const slack = Math.min(below, above)
  const fitting = byMethod.find(({kcal}) => spanGap(kcal, energySpan) <= slack)
  const followsFromFoods = judge(stated, computed, settings).some(
    ({stated: figure, verdict}) => figure === energy && verdict === 'agrees',
  )
  const gap = energy.value - byMethod[0].kcal.value
  return {
    stated: energy,
    byMethod,
    explanation: fitting?.method ?? (followsFromFoods ? 'foods' : 'none'),
    gapPercent: (100 * Math.abs(gap)) / energy.value,
    wouldExplain: wouldExplain(gap),
  }
}

function spanOf(figure: StatedFigure): Span {
  return spanOfRounded(figure.value, figure.increment)
}

function spanOfComputed(figure: ReturnType<typeof scaled>): Span {
  return spanOfRounded(figure.value, 2 * expandedUncertainty(figure))
}

function optionalSpans(
  spans: Readonly<Record<'fibre' | 'polyols' | 'alcohol', Span | undefined>>,
): Partial<Record<'fibre' | 'polyols' | 'alcohol', Span>> {
  return Object.fromEntries(Object.entries(spans).filter(([, span]) => span !== undefined))
}

/**
 * Grams of one component that would close the gap alone. What a gram is worth against the 4 kcal
 * of general carbohydrate: fibre and polyols less, alcohol (which the macros leave out) 7 more.
 */
function wouldExplain(gapKcal: number): readonly string[] {
  const grams = (kcalEach: number): string => `${(Math.abs(gapKcal) / kcalEach).toFixed(1)} g`
  return gapKcal < 0
    ? [
        `The stated energy is lower: ${grams(4)} of insoluble fibre (0 kcal/g), ${grams(2)} of other fibre (2 kcal/g) or ${grams(1.6)} of polyols (2.4 kcal/g) within the carbohydrate would explain it.`,
      ]
    : [`The stated energy is higher: ${grams(7)} of alcohol (7 kcal/g) would explain it.`]
}
