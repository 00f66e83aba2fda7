import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Located, Problem} from '../cookbook/problem.ts'
import type {Alternative, Recipe} from '../cookbook/recipe.ts'
import type {FoodIndex} from '../food/food-index.ts'
import {nearestNames} from '../food/nearest-names.ts'
import type {Computed, Ingredient} from './computed.ts'

/** How many near names a message lists. */
const mostSuggestions = 3

/** What a line's name means, or the problem to tell; neither when the cause is told elsewhere. */
export interface Resolution {
  readonly ingredient?: Ingredient
  readonly problem?: Problem
}

/** Looks a line or an alternative up: a component by slug, else a food by id or name. */
export function resolveIngredient(
  choice: Alternative,
  recipe: Recipe,
  cookbook: Cookbook,
  computed: ReadonlyMap<string, Computed>,
): Resolution {
  return choice.recipe === undefined
    ? resolveFood(choice.food ?? choice.name, recipe, cookbook)
    : resolveComponent(choice.recipe, recipe, cookbook, computed)
}

function resolveComponent(
  slug: Located<string>,
  recipe: Recipe,
  cookbook: Cookbook,
  computed: ReadonlyMap<string, Computed>,
): Resolution {
  const component = computed.get(slug.value)
  if (component !== undefined) {
    return {ingredient: {kind: 'component', recipe: component.recipe, computed: component}}
  }
  // A component that is there but could not be understood or computed has had its own message.
  if (cookbook.recipes.has(slug.value) || cookbook.refusedRecipes.has(slug.value)) return {}
  const near = nearestNames(slug.value, cookbook.recipes.keys(), mostSuggestions)
  return {
    problem: {
      ruleId: 'unknown-component',
      severity: 'error',
      file: recipe.path,
      place: slug.place,
      reason: `Component \`${slug.value}\` is no recipe of this cookbook, expected ${listed(near, 'the slug of a recipe')}`,
      actual: slug.value,
      expected: near,
      note: 'A component is named by its file name without `.md`.',
    },
  }
}

function resolveFood(name: Located<string>, recipe: Recipe, cookbook: Cookbook): Resolution {
  const food = cookbook.foods.lookUp(name.value)
  if (food !== undefined) return {ingredient: {kind: 'food', food}}
  // A food of foods.yaml that could not be understood has had its own message.
  if (cookbook.foods.isRefused(name.value)) return {}
  const component = [...cookbook.recipes.values()].find(
    ({title, slug}) =>
      title.value.toLowerCase() === name.value.toLowerCase() || slug === name.value,
  )
  const problem = {...unknownFood(name, cookbook.foods), file: recipe.path}
  return component
    ? {
        problem: {
          ...problem,
          note: `There is a recipe of that name: write \`{ amount: …, recipe: ${component.slug} }\`.`,
        },
      }
    : {problem}
}

/** A name that no food has, with the nearest that do. */
export function unknownFood(name: Located<string>, foods: FoodIndex): Omit<Problem, 'file'> {
  const near = foods.nearest(name.value, mostSuggestions)
  return {
    ruleId: 'unknown-food',
    severity: 'error',
    place: name.place,
    reason: `Food \`${name.value}\` is unknown, expected ${listed(near, 'a name from foods.yaml or the food table')}`,
    actual: name.value,
    expected: near,
    note: 'Take one of these names, add `food:` with a qualified id, or describe the packet in foods.yaml.',
  }
}

function listed(names: readonly string[], otherwise: string): string {
  return names.length === 0 ? otherwise : names.map((name) => `\`${name}\``).join(' or ')
}
