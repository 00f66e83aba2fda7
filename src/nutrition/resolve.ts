import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Located, Problem} from '../cookbook/problem.ts'
import type {Alternative, Recipe} from '../cookbook/recipe.ts'
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
  // A component that is there but could not be computed has had its own message.
  if (cookbook.recipes.has(slug.value)) return {}
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
  const near = cookbook.foods.nearest(name.value, mostSuggestions)
  const component = [...cookbook.recipes.values()].find(
    ({title, slug}) =>
      title.value.toLowerCase() === name.value.toLowerCase() || slug === name.value,
  )
  return {
    problem: {
      ruleId: 'unknown-food',
      severity: 'error',
      file: recipe.path,
      place: name.place,
      reason: `Food \`${name.value}\` is unknown, expected ${listed(near, 'a name from foods.yaml or the food table')}`,
      actual: name.value,
      expected: near,
      note: component
        ? `There is a recipe of that name: write \`{ amount: …, recipe: ${component.slug} }\`.`
        : 'Take one of these names, add `food:` with a qualified id, or describe the packet in foods.yaml.',
    },
  }
}

function listed(names: readonly string[], otherwise: string): string {
  return names.length === 0 ? otherwise : names.map((name) => `\`${name}\``).join(' or ')
}
