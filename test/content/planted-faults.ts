/** Slips of the pen in a sound cookbook: each leaves every word as it was and touches one figure. */

import type {Position} from 'unist'
import type {Examined} from '../../src/build.ts'
import type {IngredientLine} from '../../src/cookbook/recipe.ts'
import type {ReadCookbook, SourceText} from '../../src/cookbook/sources.ts'
import {coreTable} from '../../src/food/core-table.ts'
import type {Food} from '../../src/food/food.ts'
import type {Computed} from '../../src/nutrition/computed.ts'

export const faultKinds = [
  'amount off by 10 %',
  'swapped food',
  'dropped line',
  'mistyped unit',
  'stale component yield',
  'wrong serves',
] as const

export type FaultKind = (typeof faultKinds)[number]

export interface Fault {
  readonly kind: FaultKind
  /** The recipe it stands in. */
  readonly slug: string
  /** What was written and what stands there now, for a message. */
  readonly what: string
  /** The file with the slip in it. */
  readonly source: SourceText
}

/** The cookbook that slips are planted in, and where chance comes from. */
export interface Bed {
  readonly read: ReadCookbook
  readonly sound: Examined
  /** From 0 up to 1. */
  readonly random: () => number
}

/** Plants one slip of a kind, anywhere in the cookbook with the same chance. */
export function plant(kind: FaultKind, bed: Bed): Fault {
  const planted = planters[kind](bed)
  const before = sourceOf(planted.slug, bed)
  if (planted.source.text === before.text)
    throw new Error(`${kind} changed nothing in ${planted.slug}`)
  return {kind, ...planted}
}

type Planted = Omit<Fault, 'kind'>

const planters: Readonly<Record<FaultKind, (bed: Bed) => Planted>> = {
  'amount off by 10 %': amountOff,
  'swapped food': swappedFood,
  'dropped line': droppedLine,
  'mistyped unit': mistypedUnit,
  'stale component yield': staleYield,
  'wrong serves': wrongServes,
}

function amountOff(bed: Bed): Planted {
  const {computed, line} = anyLine(bed)
  const factor = pick([0.9, 1.1], bed)
  const amount = line.amount.value.text.replace(/^[\d.]+/, (digits) =>
    String(Number((Number(digits) * factor).toPrecision(6))),
  )
  return replaced(bed, computed, {place: line.amount.place, by: amount})
}

const units = ['kg', 'mg', 'ml', 'cl', 'l', 'oz', 'lb', 'tsp', 'tbsp', 'gr', 'h', 'gg']

function mistypedUnit(bed: Bed): Planted {
  const {computed, line} = anyLine(bed)
  const amount = line.amount.value.text.replace(/(?<=^[\d.]+ )\p{L}+/u, pick(units, bed))
  return replaced(bed, computed, {place: line.amount.place, by: amount})
}

/** Another food from the same shelf stands behind the writer's words. */
function swappedFood(bed: Bed): Planted {
  const drawn = anyLine(bed, ({ingredient}) => ingredient.kind === 'food')
  const {computed, line, food} = drawn
  if (food === undefined) throw new Error('drew a component')
  const others = shelves.filter((other) => other.aisle === food.aisle && other.id !== food.id)
  const other = JSON.stringify(pick(others, bed).name)
  const {text} = sourceOf(computed.recipe.slug, bed)
  if (line.food) return replaced(bed, computed, {place: line.food.place, by: other})
  const isPlain = text.slice(end(line.name.place), start(line.amount.place)) === ': '
  const amount = text.slice(start(line.amount.place), end(line.amount.place))
  const by = isPlain ? `{ amount: ${amount}, food: ${other} }` : `${amount}, food: ${other}`
  return replaced(bed, computed, {place: line.amount.place, by})
}

const shelves: readonly Food[] = coreTable('eu').foods()

/** The line is gone, and the method names the ingredient without a link. */
function droppedLine(bed: Bed): Planted {
  const {computed, line} = anyLine(bed)
  const {path, text} = sourceOf(computed.recipe.slug, bed)
  const row = line.name.place.start.line
  const rows = text.split('\n')
  const kept = rows.filter((_, index) => index + 1 !== row).join('\n')
  const unlinked = kept.replaceAll(new RegExp(`\\[([^\\]]*)\\]\\(#${line.anchor}\\)`, 'g'), '$1')
  const what = `${rows[row - 1]?.trim()} → nothing`
  return {slug: computed.recipe.slug, what, source: {path, text: unlinked}}
}

/** The batch was weighed anew, to 5 g; the recipe says another weight than the pot. */
function staleYield(bed: Bed): Planted {
  const used = new Set(
    allLines(bed).flatMap(({ingredient}) =>
      ingredient.kind === 'component' ? [ingredient.recipe.slug] : [],
    ),
  )
  const components = [...bed.sound.computed.values()].filter(
    ({recipe}) => used.has(recipe.slug) && recipe.batch,
  )
  const component = pick(components, bed)
  const {batch} = component.recipe
  if (batch === undefined) throw new Error('drew a component without a yield')
  const factor = pick([0.7, 0.8, 0.9, 1.1, 1.2, 1.3], bed)
  const grams = Math.round((batch.value.grams.value * factor) / 5) * 5
  return replaced(bed, component, {place: batch.place, by: `${grams} g`})
}

function wrongServes(bed: Bed): Planted {
  const computed = pick(
    [...bed.sound.computed.values()].filter(({recipe}) => recipe.serves),
    bed,
  )
  const {serves} = computed.recipe
  if (serves === undefined) throw new Error('drew a recipe without servings')
  const wrong = [-2, -1, 1, 2].map((more) => serves.value + more).filter((count) => count > 0)
  return replaced(bed, computed, {place: serves.place, by: String(pick(wrong, bed))})
}

interface DrawnLine {
  readonly computed: Computed
  readonly line: IngredientLine
  readonly ingredient: Computed['lines'][number]['ingredient']
  readonly food: Food | undefined
}

function allLines({sound}: Bed): readonly DrawnLine[] {
  return [...sound.computed.values()].flatMap((computed) =>
    computed.lines.map(({line, ingredient}) => ({
      computed,
      line,
      ingredient,
      food: ingredient.kind === 'food' ? ingredient.food : undefined,
    })),
  )
}

function anyLine(bed: Bed, isMeant: (line: DrawnLine) => boolean = () => true): DrawnLine {
  return pick(allLines(bed).filter(isMeant), bed)
}

function replaced(
  bed: Bed,
  {recipe}: Computed,
  {place, by}: {readonly place: Position; readonly by: string},
): Planted {
  const {path, text} = sourceOf(recipe.slug, bed)
  const before = text.slice(start(place), end(place))
  return {
    slug: recipe.slug,
    what: `${text.split('\n')[place.start.line - 1]?.trim()}: ${before} → ${by}`,
    source: {path, text: text.slice(0, start(place)) + by + text.slice(end(place))},
  }
}

function sourceOf(slug: string, {read}: Bed): SourceText {
  const source = read.sources.texts.find(({path}) => path === `recipes/${slug}.md`)
  if (source === undefined) throw new Error(`no recipe ${slug}`)
  return source
}

const start = (place: Position): number => place.start.offset ?? Number.NaN
const end = (place: Position): number => place.end.offset ?? Number.NaN

function pick<T>(from: readonly T[], {random}: Pick<Bed, 'random'>): T {
  const picked = from[Math.floor(random() * from.length)]
  if (picked === undefined) throw new Error('nothing to pick from')
  return picked
}
