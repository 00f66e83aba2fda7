import type {Span} from '../units/span.ts'
import {rectangular, scaled, sum, type Uncertain} from '../units/uncertain.ts'
import {withoutFibre} from './carbohydrate.ts'
import {type Figure, type Figures, figuresOf, isComplete, known, unknown} from './figures.ts'
import {type Label, type LabelLine, printedSpan} from './label.ts'
import {methodEnergy} from './method-energy.ts'
import {
  kilojoulesPerKilocalorie,
  type Nutrient,
  nutrientName,
  saltGramsPerSodiumMilligram,
} from './nutrients.ts'
import type {Polyol} from './polyols.ts'

/**
 * Figures per 100 g of a packaged food. Each printed figure is one source: its value stays as
 * printed, its standard uncertainty is the width of the rounding interval ÷ √12 (GUM 4.3.7; 4.3.8
 * where the value is not in the middle). What the panel does not print is unknown.
 * @param name of the food, for messages and the uncertainty budget
 */
export function labelFigures(label: Label, name: string): Figures<'100 g'> {
  const printed = (line: LabelLine): Figure => printedFigure(label, line, name)
  const fibre = printed('fibre')
  const carbohydrates = bothCarbohydrates(label, printed('carbohydrate'), fibre, name)
  const sodium = sodiumFigure(label, name)
  const polyolsByKind = kindsOfPolyols(label, name)
  const special: Partial<Record<Nutrient, Figure>> = {
    energy: energyFigure(label, name),
    ...carbohydrates,
    fibre,
    polyols: polyolsByKind.size > 0 ? known(sum(polyolsByKind.values())) : printed('polyols'),
    sodium,
    salt: isComplete(sodium) ? known(scaled(sodium, saltGramsPerSodiumMilligram)) : sodium,
  }
  const alluloseGrams = alluloseOf(label, name)
  const figure = (nutrient: Nutrient): Figure => {
    switch (nutrient) {
      case 'availableCarbohydrate':
        return carbohydrates.availableCarbohydrate
      case 'energyGeneral':
      case 'energyDigestible':
      case 'energyEu':
      case 'energyEuKilojoules':
        return methodEnergy(nutrient, {
          figure,
          polyolsByKind,
          ...(alluloseGrams && {alluloseGrams}),
        })
      default:
        return special[nutrient] ?? printed(nutrient)
    }
  }
  return figuresOf(figure)
}

function printedFigure(label: Label, line: LabelLine, name: string): Figure {
  const printed = label.printed.get(line)
  return printed
    ? known(per100g(label, printedSpan(line, printed, label.rules), subject(line, name)))
    : unknown(name)
}

function subject(line: LabelLine, name: string): string {
  return `${line === 'energyKilojoules' ? 'energy' : nutrientName[line]} on the label of ${name}`
}

function per100g({perGrams}: Label, {value, low, high}: Span, about: string): Uncertain {
  const factor = 100 / perGrams
  return rectangular(value * factor, (high - low) * factor, {kind: 'label', subject: about})
}

/** The label's own energy is kept; kcal counts where both are printed. */
function energyFigure(label: Label, name: string): Figure {
  if (label.printed.has('energy')) return printedFigure(label, 'energy', name)
  const kilojoules = printedFigure(label, 'energyKilojoules', name)
  return isComplete(kilojoules)
    ? known(scaled(kilojoules, 1 / kilojoulesPerKilocalorie))
    : kilojoules
}

/** A US panel prints carbohydrate with fibre, an EU panel without: the other is worked out. */
function bothCarbohydrates(
  {rules}: Label,
  printed: Figure,
  fibre: Figure,
  name: string,
): Record<'carbohydrate' | 'availableCarbohydrate', Figure> {
  if (rules === 'us') {
    return {carbohydrate: printed, availableCarbohydrate: withoutFibre(printed, fibre, name)}
  }
  const isTotalKnown = isComplete(printed) && isComplete(fibre)
  return {
    carbohydrate: isTotalKnown ? known(sum([printed, fibre])) : unknown(name),
    availableCarbohydrate: printed,
  }
}

/** Salt and sodium are one figure told twice; where both are printed the one of the law counts. */
function sodiumFigure(label: Label, name: string): Figure {
  const {printed, rules} = label
  const isSaltFirst = rules === 'eu' ? printed.has('salt') : !printed.has('sodium')
  if (!isSaltFirst) return printedFigure(label, 'sodium', name)
  const salt = printedFigure(label, 'salt', name)
  return isComplete(salt) ? known(scaled(salt, 1 / saltGramsPerSodiumMilligram)) : salt
}

/** Each kind is a figure of its own, and its rounding one source wherever it counts. */
function kindsOfPolyols(label: Label, name: string): ReadonlyMap<Polyol, Uncertain> {
  const kinds = [...label.printedPolyols].map(([kind, printed]) => {
    const span = printedSpan('polyols', printed, label.rules)
    return [kind, per100g(label, span, `${kind} on the label of ${name}`)] as const
  })
  return new Map(kinds)
}

function alluloseOf(label: Label, name: string): Uncertain | undefined {
  const {printedAllulose, rules} = label
  if (printedAllulose === undefined) return undefined
  const span = printedSpan('carbohydrate', printedAllulose, rules)
  return per100g(label, span, `allulose on the label of ${name}`)
}
