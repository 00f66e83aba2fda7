import {type Figure, type Figures, weightedSum} from '../food/figures.ts'
import type {Nutrient} from '../food/nutrients.ts'
import {exact, type Source, standardUncertainty, type Uncertain} from '../units/uncertain.ts'
import type {Computed, ComputedLine} from './computed.ts'

/**
 * What a page needs to work a recipe's figures out again when a reader chooses: plain data, small.
 * Lines that nothing can be chosen about are summed already. What is packed keeps its own
 * uncertainty as one number; only sources that meet elsewhere in the recipe (one food in two lines,
 * a yield factor) stay apart, so that they still add up before squaring.
 */
export interface PackedRecipe {
  readonly nutrients: readonly Nutrient[]
  /** Foods that lack a figure; `missing` counts in it. */
  readonly foods: readonly string[]
  readonly serves?: number
  readonly servedRatio: PackedQuantity
  readonly batchGrams?: PackedQuantity
  /** What the lines add together that always count. */
  readonly always: PackedFigures
  /** In the recipe's order; empty but for lines about which something can be chosen. */
  readonly lines: readonly PackedLine[]
}

export interface PackedLine {
  readonly isOptional?: true
  /** What the line adds, and what each of its alternatives would; empty where there is no choice. */
  readonly adds: readonly PackedFigures[]
  /** Grams an optional line makes the finished batch heavier by. */
  readonly staysGrams?: PackedQuantity
}

export interface PackedFigures {
  /** One for each of the recipe's `nutrients`. */
  readonly figures: readonly PackedQuantity[]
  /** Places in `foods`, by place in `nutrients`. */
  readonly missing?: Readonly<Record<string, readonly number[]>>
}

/** Value, own standard uncertainty, then source and part, source and part; noughts at the end go. */
export type PackedQuantity = readonly number[]

/**
 * Packs the figures of the given nutrients.
 * @param valuesOnly further nutrients, of which nobody asks who lacks them
 */
export function packedRecipe(
  computed: Computed,
  told: readonly Nutrient[],
  valuesOnly: readonly Nutrient[] = [],
): PackedRecipe {
  const nutrients = [...told, ...valuesOnly.filter((nutrient) => !told.includes(nutrient))]
  const packing = new Packing(computed, nutrients, told.length)
  const {recipe, batchGrams, servedRatio} = computed
  const lines = computed.lines.map((line): PackedLine => {
    if (!isChosen(line)) return {adds: []}
    return {
      adds: choicesOf(line).map((figures) => packing.figures((nutrient) => figures[nutrient])),
      ...(line.role === 'optional' && {
        isOptional: true,
        staysGrams: packing.quantity(line.staysGrams),
      }),
    }
  })
  return {
    nutrients,
    ...(recipe.serves && {serves: recipe.serves.value}),
    servedRatio: packing.quantity(servedRatio),
    ...(batchGrams && {batchGrams: packing.quantity(batchGrams)}),
    always: packing.figures(alwaysAdded(computed)),
    lines,
    foods: packing.foods,
  }
}

/** An uncounted line is only ever shown. */
function isChosen({role, instead}: ComputedLine): boolean {
  return role === 'optional' || (role === 'counted' && instead.length > 0)
}

function choicesOf({adds, instead}: ComputedLine): readonly Figures<'batch'>[] {
  return [adds, ...instead.map((choice) => choice.adds)]
}

function alwaysAdded({lines}: Computed): (nutrient: Nutrient) => Figure {
  const counted = lines.filter((line) => line.role === 'counted' && !isChosen(line))
  return (nutrient) =>
    weightedSum(counted.map(({adds}) => ({figure: adds[nutrient], weight: exact(1)})))
}

/** Gives the sources that meet more than once their numbers, and the foods theirs. */
class Packing {
  readonly #nutrients: readonly Nutrient[]
  readonly #shared: ReadonlyMap<Source, number>
  readonly #foods = new Map<string, number>()
  readonly #told: number

  /** @param told how many of the nutrients also name the foods that lack them */
  constructor(computed: Computed, nutrients: readonly Nutrient[], told: number) {
    this.#told = told
    this.#nutrients = nutrients
    this.#shared = sharedSources(computed, nutrients)
  }

  get foods(): readonly string[] {
    return [...this.#foods.keys()]
  }

  figures(figureOf: (nutrient: Nutrient) => Figure): PackedFigures {
    const missing: Record<string, readonly number[]> = {}
    const figures = this.#nutrients.map((nutrient, index) => {
      const figure = figureOf(nutrient)
      if (figure.missing.size > 0 && index < this.#told) {
        missing[index] = [...figure.missing].map((food) => this.#foodPlace(food))
      }
      return this.quantity(figure)
    })
    return {figures, ...(Object.keys(missing).length > 0 && {missing})}
  }

  quantity({value, parts}: Uncertain): PackedQuantity {
    const own = new Map<Source, number>()
    const shared: number[] = []
    for (const [source, part] of parts) {
      const number = this.#shared.get(source)
      if (number === undefined) own.set(source, part)
      else if (part !== 0) shared.push(number, tidy(part, 3))
    }
    const packed = [tidy(value, 5), tidy(standardUncertainty({value, parts: own}), 3), ...shared]
    while (packed.at(-1) === 0) packed.pop()
    return packed
  }

  #foodPlace(food: string): number {
    const place = this.#foods.get(food) ?? this.#foods.size
    this.#foods.set(food, place)
    return place
  }
}

/**
 * Sources that stand in more than one of: the lines that always count, a line with its alternatives
 * (of which one counts), what an optional line weighs, the share that is served, the finished weight.
 */
function sharedSources(computed: Computed, nutrients: readonly Nutrient[]) {
  const {lines, batchGrams, servedRatio} = computed
  const places: Uncertain[][] = [
    [servedRatio],
    batchGrams ? [batchGrams] : [],
    nutrients.map(alwaysAdded(computed)),
  ]
  for (const line of lines.filter(isChosen)) {
    if (line.role === 'optional') places.push([line.staysGrams])
    places.push(choicesOf(line).flatMap((figures) => nutrients.map((name) => figures[name])))
  }
  const once = new Set<Source>()
  const shared = new Map<Source, number>()
  for (const quantities of places) {
    const here = new Set(quantities.flatMap(({parts}) => [...parts.keys()]))
    for (const source of here) {
      if (once.has(source) && !shared.has(source)) shared.set(source, shared.size)
      once.add(source)
    }
  }
  return shared
}

/** Five digits are finer than any figure is shown, three than any ±. */
function tidy(value: number, digits: number): number {
  return Number(value.toPrecision(digits))
}
