import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {FoodIndex} from '../food/food-index.ts'
import {nameKey} from '../food/name-key.ts'
import type {Computed, ComputedLine, Ingredient} from '../nutrition/computed.ts'
import {foodsInDish} from '../nutrition/foods-in-dish.ts'
import type {Use} from '../nutrition/swap-food.ts'
import {nearest} from '../units/nearest.ts'

/**
 * The lines of a recipe that a name means: those of a food or component, or one as the recipe calls
 * it. Several that count go together; optional ones are taken where no other line has it.
 */
export function usedLines(name: string, computed: Computed, foods: FoodIndex): Use {
  const named = linesNamed(name, computed, foods)
  const [first] = named
  if (first === undefined) return missed(name, computed, foods)
  const other = named.find(({ingredient}) => identity(ingredient) !== identity(first.ingredient))
  if (other !== undefined) {
    throw new EnvironmentFailure(
      `${name} is two things in ${computed.recipe.slug}`,
      `Ask for ${called(first.ingredient)} or for ${called(other.ingredient)}`,
    )
  }
  for (const wanted of ['counted', 'optional'] as const) {
    const lines = named.filter(({role}) => role === wanted)
    if (lines.length === 0) continue
    return {computed, lines, aside: named.filter(({role}) => role !== wanted)}
  }
  throw new EnvironmentFailure(
    `${name} is left uncounted in ${computed.recipe.slug}`,
    'Whatever stood in its place would change no figure; without --in it is compared per 100 g',
  )
}

function linesNamed(name: string, {lines}: Computed, foods: FoodIndex): readonly ComputedLine[] {
  const key = nameKey(name)
  const food = foods.lookUp(name)
  const means = (ingredient: Ingredient): boolean =>
    ingredient.kind === 'food'
      ? ingredient.food.id === food?.id
      : [ingredient.recipe.slug, nameKey(ingredient.recipe.title.value)].includes(key)
  const byIngredient = lines.filter(({ingredient}) => means(ingredient))
  if (byIngredient.length > 0) return byIngredient
  return lines.filter(({line}) => nameKey(line.name.value) === key || line.anchor === key)
}

function identity(ingredient: Ingredient): string {
  return ingredient.kind === 'food' ? ingredient.food.id : `recipe ${ingredient.recipe.slug}`
}

/** The name that means it and nothing else. */
function called(ingredient: Ingredient): string {
  return ingredient.kind === 'food' ? ingredient.food.id : ingredient.recipe.slug
}

function missed(name: string, computed: Computed, foods: FoodIndex): never {
  const {slug} = computed.recipe
  throw new EnvironmentFailure(
    `${slug} has no ${name} among its ingredients`,
    elsewhere(name, computed, foods) ?? meant(name, computed),
  )
}

/** Where a food is that the recipe does not list itself. */
function elsewhere(name: string, computed: Computed, foods: FoodIndex): string | undefined {
  const id = foods.lookUp(name)?.id
  const within = foodsInDish(computed).filter(({food}) => food.id === id)
  const component = within.flatMap(({through}) => through.slice(-1))[0]
  if (component) {
    const {title, slug} = component.recipe
    return `It comes through ${title.value}: ask with --in ${slug}`
  }
  const [choice] = within
  return choice && `It may stand there instead of ${choice.line.line.name.value}: ask for that`
}

function meant(name: string, {lines}: Computed): string {
  const names = lines.map(({line}) => line.name.value)
  const near = nearest(name, names)
  return near === undefined ? `It has ${names.join('; ')}` : `Did you mean ${near}?`
}
