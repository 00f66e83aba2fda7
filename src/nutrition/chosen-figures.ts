import {type Figure, type Figures, figuresOf} from '../food/figures.ts'
import type {Nutrient} from '../food/nutrients.ts'
import {exact, type Source, scaled, sum, type Uncertain} from '../units/uncertain.ts'
import type {Computed} from './computed.ts'
import type {PackedFigures, PackedQuantity, PackedRecipe} from './packed-recipe.ts'
import {servedFigures, sharedOut} from './share-out.ts'

/** For each line, which of its choices counts: 0 as written, 1 its first alternative; -1 none to choose. */
export type Choices = readonly number[]

/** What a chosen recipe gives: as a build computes it. */
export type ChosenFigures = Pick<
  Computed,
  'batch' | 'batchGrams' | 'portionGrams' | 'perServing' | 'per100g'
>

/** The recipe as it is written. */
export function writtenChoices({lines}: PackedRecipe): Choices {
  return lines.map(({isOptional, adds}) => (isOptional || adds.length === 0 ? -1 : 0))
}

/**
 * The figures of a recipe whose reader has chosen. An alternative leaves the finished weight as it
 * was weighed; an optional line makes it heavier.
 * @param batches how many times the recipe is made, above 0
 */
export function chosenFigures(
  packed: PackedRecipe,
  choices: Choices,
  batches: number,
): ChosenFigures {
  const sources: Source[] = []
  const read = (quantity: PackedQuantity) => unpacked(quantity, sources)
  const chosen = packed.lines.flatMap(({adds}, index) => adds[choices[index] ?? -1] ?? [])
  const adds = [packed.always, ...chosen].map((figures) => figuresFrom(figures, packed, read))
  const added = packed.lines.flatMap(({staysGrams}, index) =>
    staysGrams && (choices[index] ?? -1) >= 0 ? [read(staysGrams)] : [],
  )
  const batchGrams = packed.batchGrams && sum([read(packed.batchGrams), ...added])
  const batch = servedFigures(adds, {
    // Only water asks for it, and water is not packed.
    mixedGrams: exact(0),
    servedRatio: read(packed.servedRatio),
    ...(batchGrams && {batchGrams}),
  })
  return {
    ...sharedOut(batch, packed.serves, batchGrams),
    batch: figuresOf((nutrient) => {
      const figure = batch[nutrient]
      return {...scaled(figure, batches), missing: figure.missing}
    }),
    ...(batchGrams && {batchGrams: scaled(batchGrams, batches)}),
  }
}

function figuresFrom(
  {figures, missing}: PackedFigures,
  {nutrients, foods}: PackedRecipe,
  read: (quantity: PackedQuantity) => Uncertain,
): Figures<'batch'> {
  return figuresOf((nutrient: Nutrient): Figure => {
    const place = nutrients.indexOf(nutrient)
    const quantity = figures[place]
    if (quantity === undefined) throw new Error(`${nutrient} was not packed`)
    const lacking = missing?.[place] ?? []
    return {...read(quantity), missing: new Set(lacking.map((food) => foods[food] ?? ''))}
  })
}

/** @param sources those that quantities share, by number; made when first met */
function unpacked(packed: PackedQuantity, sources: Source[]): Uncertain {
  const [value = 0, own = 0, ...shared] = packed
  const parts = new Map<Source, number>()
  if (own > 0) parts.set(namelessSource(), own)
  for (let at = 0; at + 1 < shared.length; at += 2) {
    const number = shared[at] ?? 0
    sources[number] ??= namelessSource()
    parts.set(sources[number], shared[at + 1] ?? 0)
  }
  return {value, parts}
}

function namelessSource(): Source {
  return {kind: 'weighing', subject: ''}
}
