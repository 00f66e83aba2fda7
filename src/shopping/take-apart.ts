import type {Food} from '../food/food.ts'
import {batchesUsed} from '../nutrition/batches-used.ts'
import type {Computed, ComputedLine} from '../nutrition/computed.ts'

/** What one whole batch of a recipe is made from, components taken apart. */
export interface Part {
  readonly foods: readonly NeededFood[]
  /** A component stands behind those it is made from. */
  readonly components: readonly NeededComponent[]
}

export interface NeededFood {
  readonly food: Food
  /** As bought, with peel and bone. */
  readonly grams: number
  readonly isOptional?: true
}

export interface NeededComponent {
  readonly component: Computed
  readonly grams: number
  /** Share of a whole batch, 0 or more. */
  readonly batches: number
}

/** USDA SR28, NDB 14411, "Beverages, water, tap, municipal": nobody carries it home. */
const tapWaterId = 'usda/14411'

const nothing: Part = {foods: [], components: []}

/** Takes recipes apart, each one once however many others use it. */
export function takeApart(recipes: Iterable<Computed>): ReadonlyMap<Computed, Part> {
  const parts = new Map<Computed, Part>()

  function partOf(recipe: Computed): Part {
    const known = parts.get(recipe)
    if (known !== undefined) return known
    const lines = recipe.lines.map(linePart)
    const part = {
      foods: summedFoods(lines.flatMap(({foods}) => foods)),
      components: summedComponents(lines.flatMap(({components}) => components)),
    }
    parts.set(recipe, part)
    return part
  }

  function linePart(line: ComputedLine): Part {
    const {ingredient, purchasedGrams, grams} = line
    if (ingredient.kind === 'food' && ingredient.food.id === tapWaterId) return nothing
    const optional = line.role === 'optional' ? {isOptional: true as const} : {}
    if (ingredient.kind === 'food') {
      return {foods: [{food: ingredient.food, grams: purchasedGrams, ...optional}], components: []}
    }
    const component = ingredient.computed
    const batches = batchesUsed(line, component)
    const inner = partOf(component)
    return {
      foods: inner.foods.map((need) => ({...need, ...optional, grams: need.grams * batches})),
      components: [
        ...inner.components.map((need) => ({
          ...need,
          grams: need.grams * batches,
          batches: need.batches * batches,
        })),
        {component, grams: grams.value, batches},
      ],
    }
  }

  for (const recipe of recipes) partOf(recipe)
  return parts
}

/** One entry a food, what is optional apart from what is needed. */
function summedFoods(needs: readonly NeededFood[]): readonly NeededFood[] {
  const sums = {needed: new Map<Food, NeededFood>(), optional: new Map<Food, NeededFood>()}
  for (const need of needs) {
    const of = need.isOptional ? sums.optional : sums.needed
    of.set(need.food, {...need, grams: need.grams + (of.get(need.food)?.grams ?? 0)})
  }
  return [...sums.needed.values(), ...sums.optional.values()]
}

function summedComponents(needs: readonly NeededComponent[]): readonly NeededComponent[] {
  const sums = new Map<Computed, NeededComponent>()
  for (const {component, grams, batches} of needs) {
    const before = sums.get(component)
    sums.set(component, {
      component,
      grams: grams + (before?.grams ?? 0),
      batches: batches + (before?.batches ?? 0),
    })
  }
  return [...sums.values()]
}
