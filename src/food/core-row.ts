import {
  type Allergen,
  allergens,
  type EnergyFactors,
  type FoodState,
  foodStates,
  type Origin,
  origins,
  type Trait,
  traits,
} from './food.ts'

/** One food of the core table. */
export interface CoreRow {
  /** Nutrient Database number in USDA SR28. */
  readonly ndb: string
  readonly name: string
  readonly also: readonly string[]
  readonly from: readonly Origin[]
  readonly state: FoodState
  readonly traits: readonly Trait[]
  readonly contains: readonly Allergen[]
  /** Grams, edible portion, of one measure. */
  readonly measures: ReadonlyMap<string, number>
  /** Share of the purchased weight thrown away, 0–100. */
  readonly refusePercent: number
  /** Specific energy factors; undefined where the release has none at all. */
  readonly factors?: EnergyFactors
  /** Per 100 g edible portion, in the order of `coreColumns`; null is unknown. */
  readonly figures: readonly (number | null)[]
  /** The release's own words for the food. */
  readonly description: string
}

/**
 * What the numbers of `figures` are, with the unit step the release prints them to. It has no
 * figures for added sugars and polyols.
 */
export const coreColumns = [
  {nutrient: 'water', increment: 0.01},
  {nutrient: 'energy', increment: 1},
  {nutrient: 'protein', increment: 0.01},
  {nutrient: 'fat', increment: 0.01},
  {nutrient: 'saturated', increment: 0.001},
  {nutrient: 'trans', increment: 0.001},
  {nutrient: 'cholesterol', increment: 1},
  {nutrient: 'carbohydrate', increment: 0.01},
  {nutrient: 'fibre', increment: 0.1},
  {nutrient: 'sugars', increment: 0.01},
  {nutrient: 'alcohol', increment: 0.1},
  {nutrient: 'ash', increment: 0.01},
  {nutrient: 'sodium', increment: 1},
  {nutrient: 'potassium', increment: 1},
  {nutrient: 'calcium', increment: 1},
  {nutrient: 'iron', increment: 0.01},
  {nutrient: 'vitaminD', increment: 0.1},
] as const

/** The lines of an aisle file, which begins and ends with a line end. */
export function coreLines(text: string): readonly string[] {
  return text.trim().split('\n')
}

/** What stands between the cells of a line, and between several of a kind in one cell. */
const cellGap = ' | '
const listGap = '; '

/** Number, name and other names of a line: all that the index needs, and the line is not cut up. */
export function coreNames(line: string): Pick<CoreRow, 'ndb' | 'name' | 'also'> {
  const afterNumber = line.indexOf(cellGap)
  const afterName = line.indexOf(cellGap, afterNumber + cellGap.length)
  const afterAlso = line.indexOf(cellGap, afterName + cellGap.length)
  return {
    ndb: line.slice(0, afterNumber),
    name: line.slice(afterNumber + cellGap.length, afterName),
    also: listed(line.slice(afterName + cellGap.length, afterAlso)),
  }
}

/**
 * One line of an aisle file: NDB number, name, other names, made from, state, traits, allergens,
 * measures (`cup 125; tbsp 7.8`, grams), refuse in percent, energy factors of protein, fat and
 * carbohydrate (kcal/g), figures in the order of `coreColumns`, and the release's description, with
 * ` | ` between them. Several of a kind are parted by `; `, figures by blanks; `-` is unknown.
 * @throws where a line is malformed: the table is part of the program
 */
export function coreRow(line: string): CoreRow {
  const cells = line.split(cellGap)
  const [, , , from = '', state = '', kitchen = '', allergen = '', measures = ''] = cells
  const [refuse = '', factors = '', figures = '', description = ''] = cells.slice(8)
  if (cells.length !== 12) throw new Error(`12 columns expected: ${line}`)
  const row = {
    ...coreNames(line),
    from: listed(from).map((word) => oneOf(origins, word, line)),
    state: oneOf(foodStates, state, line),
    traits: listed(kitchen).map((word) => oneOf(traits, word, line)),
    contains: listed(allergen).map((word) => oneOf(allergens, word, line)),
    measures: new Map(listed(measures).map((measure) => gramsOf(measure, line))),
    refusePercent: refuse === '' ? 0 : numberOf(refuse, line),
    figures: figures.split(' ').map((figure) => figureOf(figure, line)),
    description,
  }
  if (row.figures.length !== coreColumns.length) throw new Error(`Figures missing: ${line}`)
  return factors === '' ? row : {...row, factors: factorsOf(factors, line)}
}

function listed(cell: string): readonly string[] {
  return cell === '' ? [] : cell.split(listGap)
}

function oneOf<T extends string>(words: readonly T[], written: string, line: string): T {
  const word = words.find((each) => each === written)
  if (word === undefined) throw new Error(`Unknown word ${written}: ${line}`)
  return word
}

function gramsOf(measure: string, line: string): readonly [string, number] {
  const blank = measure.lastIndexOf(' ')
  return [measure.slice(0, blank), numberOf(measure.slice(blank + 1), line)]
}

function factorsOf(cell: string, line: string): EnergyFactors {
  const [protein = null, fat = null, carbohydrate = null] = cell
    .split(' ')
    .map((factor) => figureOf(factor, line))
  return {protein, fat, carbohydrate}
}

function figureOf(written: string, line: string): number | null {
  return written === '-' ? null : numberOf(written, line)
}

function numberOf(written: string, line: string): number {
  if (!/^\d+(?:\.\d+)?$/.test(written)) throw new Error(`No number ${written}: ${line}`)
  return Number(written)
}
