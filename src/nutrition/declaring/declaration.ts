import type {Settings} from '../../cookbook/cookbook.ts'
import type {EnergyMethod} from '../../cookbook/energy-method.ts'
import {dailyValue} from '../../food/daily-values.ts'
import {type Basis, type Figure, type Figures, isComplete} from '../../food/figures.ts'
import type {LabelRules} from '../../food/label-rules.ts'
import {euDeclarations} from '../../food/rounding/eu.ts'
import {percentOfDay} from '../../food/rounding/percent-of-day.ts'
import type {Declared} from '../../food/rounding/scheme.ts'
import {usDeclarations} from '../../food/rounding/us.ts'
import type {Computed} from '../computed.ts'
import {energyNutrient, kilojoules} from '../energy-nutrient.ts'
import {askedEnergyMethod} from '../published.ts'
import {
  type DeclaredNutrient,
  declaredRows,
  type RowPlan,
  significantRatio,
} from './declared-rows.ts'

/**
 * The figures of a dish as a law has them declared. Made from the computed figures for pages alone:
 * nothing is ever summed from what was rounded here.
 */
export interface Declaration {
  readonly rules: LabelRules
  readonly energyMethod: EnergyMethod
  readonly kilocalories: DeclaredRow
  /** EU alone: a US panel has kcal. */
  readonly kilojoules?: DeclaredRow
  /** In the order of the law. */
  readonly rows: readonly DeclaredRow[]
  /** What a figure is missing for, as the law names it; a declaration without it is not whole. */
  readonly missing: readonly DeclaredNutrient[]
}

export interface DeclaredRow extends Pick<RowPlan, 'nutrient' | 'depth'> {
  /** Absent where the finished batch was not weighed. */
  readonly per100g?: DeclaredFigure
  /** Absent where nobody is served. */
  readonly perServing?: DeclaredFigure
}

/** `unknown` where a food lacks the figure: a lower bound cannot be declared. */
export type DeclaredFigure = 'unknown' | KnownFigure

export interface KnownFigure extends Declared {
  /** Share of an adult's day; absent where the law has no reference value. */
  readonly percent?: number
}

type Choice = Pick<Settings, 'energyMethod'>

/** Declares the figures of a dish by a law, each basis rounded for itself. */
export function declaration(computed: Computed, rules: LabelRules, choice: Choice): Declaration {
  const {recipe} = computed
  const energyMethod = askedEnergyMethod(choice, recipe) ?? lawfulMethod[rules]
  const energy = energyNutrient[energyMethod]
  const row = (plan: RowPlan, figure: FigureOf) => declaredRow(plan, {computed, rules, figure})
  const kilocalories = row({nutrient: 'energy', depth: 0}, (figures) => figures[energy])
  const rows = declaredRows[rules]
    .filter((plan) => !plan.isWhenPresent || isPresent(plan.nutrient, computed, rules))
    .map((plan) => row(plan, (figures) => figures[plan.nutrient]))
  return {
    rules,
    energyMethod,
    kilocalories,
    ...(rules === 'eu' && {
      kilojoules: row({nutrient: 'energyEuKilojoules', depth: 0}, (figures) =>
        kilojoules(figures, energy),
      ),
    }),
    rows,
    missing: [kilocalories, ...rows].filter(isMissing).map(({nutrient}) => nutrient),
  }
}

/**
 * How energy is declared where neither recipe nor cookbook says: Regulation (EU) 1169/2011 Article
 * 31 asks for the factors of its Annex XIV; 21 CFR 101.9(c)(1)(i)(A) allows the specific factors
 * that tables use.
 */
const lawfulMethod: Readonly<Record<LabelRules, EnergyMethod>> = {eu: 'eu', us: 'foods'}

type FigureOf = (figures: Figures<Basis>) => Figure

interface Declaring {
  readonly computed: Computed
  readonly rules: LabelRules
  readonly figure: FigureOf
}

function declaredRow(
  {nutrient, depth}: RowPlan,
  {computed: {per100g, perServing}, rules, figure}: Declaring,
): DeclaredRow {
  const of = (figures: Figures<Basis>) => declaredFigure(nutrient, figure(figures), rules)
  return {
    nutrient,
    depth,
    ...(per100g && {per100g: of(per100g)}),
    ...(perServing && {perServing: of(perServing)}),
  }
}

function declaredFigure(
  nutrient: DeclaredNutrient,
  figure: Figure,
  rules: LabelRules,
): DeclaredFigure {
  if (!isComplete(figure)) return 'unknown'
  // A difference of rounded figures may end below nothing.
  const unrounded = Math.max(0, figure.value)
  const [declared] = allowed(nutrient, unrounded, rules)
  if (declared === undefined) return 'unknown'
  const amount = declared.kind === 'amount' ? declared.value : unrounded
  const percent = percentOfDay(rules, nutrient, amount)
  return {...declared, ...(percent !== undefined && {percent})}
}

function allowed(
  nutrient: DeclaredNutrient,
  unrounded: number,
  rules: LabelRules,
): readonly Declared[] {
  if (rules === 'us') return usDeclarations(nutrient, unrounded)
  return euDeclarations(nutrient === 'energyEuKilojoules' ? 'energy' : nutrient, unrounded)
}

/** Whether a line that may be left out has something to tell: enough of it in 100 g, or any at all. */
function isPresent(
  nutrient: DeclaredNutrient,
  {batch, per100g}: Computed,
  rules: LabelRules,
): boolean {
  if (nutrient === 'polyols') return batch.polyols.value > 0
  const reference = dailyValue[rules][nutrient]
  if (per100g === undefined || reference === undefined) return false
  return isComplete(per100g[nutrient]) && per100g[nutrient].value >= significantRatio * reference
}

function isMissing({per100g, perServing}: DeclaredRow): boolean {
  return (perServing ?? per100g) === 'unknown'
}
