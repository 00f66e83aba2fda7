import type {Settings} from '../cookbook/cookbook.ts'
import type {Recipe, StatedFigure} from '../cookbook/recipe.ts'
import {isComplete} from '../food/figures.ts'
import type {PublishedNutrient} from '../food/nutrients.ts'
import type {Computed} from '../nutrition/computed.ts'
import type {MacroSpans} from '../nutrition/energy-of-macros.ts'
import {wholeGrams} from '../nutrition/whole-grams.ts'
import {type Span, spanOfRounded} from '../units/span.ts'
import {expandedUncertainty, scaled} from '../units/uncertain.ts'
import {type EnergyGap, energyGap} from './energy-gap.ts'
import {shareOfBatch} from './stated-basis.ts'
import {allowance} from './tolerance/tolerance.ts'
import {judge} from './verdict.ts'

/** Stated energy beside the energy of the stated macros. */
export interface Reconciliation extends EnergyGap {
  readonly stated: StatedFigure
  /** Whether the stated energy follows from the ingredients, whatever the macros say. */
  readonly followsFromFoods: boolean
}

/**
 * Reconciles a recipe's stated energy with its stated macros; fibre, polyols and alcohol as stated
 * or else as computed.
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
  const [energy, protein] = [find('energy'), find('protein')]
  const [fat, carbohydrate] = [find('fat'), find('carbohydrate')]
  if (!stated || !energy || !protein || !fat || !carbohydrate) return undefined
  const share = shareOfBatch(stated, computed)
  const beside = (nutrient: Beside): Span | undefined => {
    const own = find(nutrient)
    return own ? spanOf(own) : computedSpan(computed, nutrient, share)
  }
  const macros: MacroSpans = {
    protein: spanOf(protein),
    fat: spanOf(fat),
    carbohydrate: spanOf(carbohydrate),
    carbohydrateIs: settings.carbohydrate,
    ...known({fibre: beside('fibre'), polyols: beside('polyols'), alcohol: beside('alcohol')}),
  }
  const grams = wholeGrams(computed).value * share
  const {value} = energy
  const {below, above} = allowance({nutrient: 'energy', value, stated: value, grams}, settings)
  return {
    ...energyGap(spanOf(energy), macros, {slack: Math.min(below, above), grams}),
    stated: energy,
    followsFromFoods: judge(stated, computed, settings).some(
      ({stated: figure, verdict}) => figure === energy && verdict === 'agrees',
    ),
  }
}

type Beside = 'fibre' | 'polyols' | 'alcohol'

function spanOf(figure: StatedFigure): Span {
  return spanOfRounded(figure.value, figure.increment)
}

function computedSpan(computed: Computed, nutrient: Beside, share: number): Span | undefined {
  const figure = computed.batch[nutrient]
  // Tables leave polyols and alcohol blank for foods that have none; fibre is really not known.
  if (nutrient === 'fibre' && !isComplete(figure)) return undefined
  const portion = scaled(figure, share)
  return spanOfRounded(portion.value, 2 * expandedUncertainty(portion))
}

function known(spans: Readonly<Record<Beside, Span | undefined>>): Partial<Record<Beside, Span>> {
  return Object.fromEntries(Object.entries(spans).filter(([, span]) => span !== undefined))
}
