import {rectangular, scaled} from '../units/uncertain.ts'
import {withoutFibre} from './carbohydrate.ts'
import {type Figure, type Figures, figuresOf, isComplete, known, unknown} from './figures.ts'
import {methodEnergy} from './method-energy.ts'
import {type Nutrient, nutrientName, saltGramsPerSodiumMilligram} from './nutrients.ts'

/** A figure as a table prints it, per 100 g, in the nutrient's own unit. */
export interface TableFigure {
  readonly value: number
  /** The step it was rounded to. */
  readonly increment: number
  /** How wide what it may be is, where the table converted it from a label's serving. */
  readonly width?: number
}

/**
 * Figures of one row of a published table; what it leaves blank is unknown. Salt follows from
 * sodium, carbohydrate without fibre from the two it is made of, with the same sources.
 * @param printed the row's figure, undefined where it is blank
 */
export function tableFigures(
  printed: (nutrient: Nutrient) => TableFigure | undefined,
  foodName: string,
): Figures<'100 g'> {
  const read = new Map<Nutrient, Figure>()
  const figure = (nutrient: Nutrient): Figure => {
    const earlier = read.get(nutrient)
    if (earlier) return earlier
    const figure = rounded(printed(nutrient), nutrient, foodName)
    read.set(nutrient, figure)
    return figure
  }
  const derived = (nutrient: Nutrient): Figure => {
    switch (nutrient) {
      case 'energyGeneral':
      case 'energyDigestible':
      case 'energyEu':
      case 'energyEuKilojoules':
        return methodEnergy(nutrient, {figure: derived})
      case 'salt': {
        const sodium = figure('sodium')
        return isComplete(sodium) ? known(scaled(sodium, saltGramsPerSodiumMilligram)) : sodium
      }
      case 'availableCarbohydrate':
        return withoutFibre(figure('carbohydrate'), figure('fibre'), foodName)
      default:
        return figure(nutrient)
    }
  }
  return figuresOf(derived)
}

/** A printed figure may be anywhere within half a step; a printed 0 is not below 0. */
function rounded(printed: TableFigure | undefined, nutrient: Nutrient, foodName: string): Figure {
  if (!printed) return unknown(foodName)
  const {value, increment} = printed
  const width = printed.width ?? (value === 0 ? increment / 2 : increment)
  const subject = `${nutrientName[nutrient]} of ${foodName} in the food table`
  return known(rectangular(value, width, {kind: 'table', subject}))
}
