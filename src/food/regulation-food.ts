import {exact, rectangular, scaled} from '../units/uncertain.ts'
import type {RegulationRow} from './core/regulation.ts'
import {type Figure, figuresOf, known} from './figures.ts'
import type {Food} from './food.ts'
import type {LabelRules} from './label-rules.ts'
import {methodFactors} from './method-factors.ts'
import type {Nutrient} from './nutrients.ts'

/** Laws print these factors to 0.1 kcal/g: the step of the energy of 100 g. A 0 is exact. */
const energyStepKcal = 10

/** The food a law describes: 100 g of one substance and nothing else. */
export function regulationFood(row: RegulationRow, rules: LabelRules): Food {
  const {name, also = [], aisle, substance} = row
  return {
    id: `core/${name}`,
    name,
    also,
    aisle,
    from: ['plant'],
    state: 'dry',
    traits: new Set(substance === 'fibre' ? [] : ['sweetener']),
    contains: new Set(),
    mayContain: new Set(),
    allergensKnown: true,
    refuseRatio: 0,
    measures: new Map(),
    per100g: figuresOf((nutrient) => {
      switch (nutrient) {
        case 'energy':
          return energyFigure(row, rules)
        case 'energyGeneral':
          return known(exact(100 * methodFactors.energyGeneral.carbohydrate))
        case 'energyDigestible':
          return energyFigure(row, 'us')
        case 'energyEu':
          return energyFigure(row, 'eu')
        case 'energyEuKilojoules':
          return kilojoules(row)
        default:
          return known(exact(gramsOf(nutrient, row)))
      }
    }),
    ashGrams: 0,
    provenance: {kind: 'regulation', document: row.document[rules]},
  }
}

function energyFigure({name, kcalPerGram}: RegulationRow, rules: LabelRules): Figure {
  const energyKcal = 100 * kcalPerGram[rules]
  const width = energyKcal === 0 ? 0 : energyStepKcal
  return known(
    rectangular(energyKcal, width, {kind: 'table', subject: `energy of ${name} by regulation`}),
  )
}

/** The kJ column of Regulation (EU) 1169/2011 Annex XIV, which is no fixed multiple of the kcal column. */
function kilojoules(row: RegulationRow): Figure {
  const [perGram, kcalPerGram] = [kilojoulesPerGram(row), row.kcalPerGram.eu]
  return kcalPerGram === 0
    ? known(exact(0))
    : known(scaled(energyFigure(row, 'eu'), perGram / kcalPerGram))
}

function kilojoulesPerGram({substance}: RegulationRow): number {
  const {carbohydrate, fibre, polyols} = methodFactors.energyEuKilojoules
  if (substance === 'sweet carbohydrate') return carbohydrate
  return (substance === 'fibre' ? fibre?.value : polyols?.value) ?? carbohydrate
}

/** Grams in 100 g. Both laws keep polyols, and the US allulose too, out of sugars. */
function gramsOf(nutrient: Nutrient, {substance}: RegulationRow): number {
  switch (nutrient) {
    case 'carbohydrate':
      return 100
    case 'availableCarbohydrate':
      return substance === 'fibre' ? 0 : 100
    case 'fibre':
      return substance === 'fibre' ? 100 : 0
    case 'polyols':
      return substance === 'fibre' || substance === 'sweet carbohydrate' ? 0 : 100
    default:
      return 0
  }
}
