import type {Cookbook} from '../../cookbook/cookbook.ts'
import type {Recipe} from '../../cookbook/recipe.ts'
import type {Food} from '../../food/food.ts'
import type {Computed} from '../../nutrition/computed.ts'
import type {CookbookRule} from '../rule.ts'

export const foodUsed: CookbookRule = {
  id: 'food-used',
  severity: 'note',
  summary: 'Some recipe uses each food of foods.yaml.',
  why: 'What nobody cooks with still wants its label read again, and hides a name that was misspelt in a recipe.',
  *check({cookbook, all}) {
    // A recipe that was not computed may use any food.
    if (cookbook.refusedRecipes.size > 0 || all.size < cookbook.recipes.size) return
    const used = new Set([...all.values()].flatMap((computed) => foodsOf(computed, cookbook)))
    for (const food of cookbook.foods.own) {
      if (!food.named || used.has(food)) continue
      yield {
        ...food.named,
        reason: `No recipe uses \`${food.name}\`, expected one that does`,
        actual: food.name,
        note: 'Take the entry out, or keep it and silence the rule: `checks: { food-used: off }` in cookbook.yaml.',
      }
    }
  },
}

/** Every food a recipe names: in its lines, their alternatives, its losses and its comparison. */
export function foodsOf({recipe, lines}: Computed, {foods}: Cookbook): readonly Food[] {
  const ingredients = lines.flatMap((line) => [line, ...line.instead])
  const inLines = ingredients.flatMap(({ingredient}) =>
    ingredient.kind === 'food' ? [ingredient.food] : [],
  )
  const named = otherNames(recipe).flatMap((name) => foods.lookUp(name) ?? [])
  return [...inLines, ...named]
}

function otherNames({groups, yieldFactor, comparison}: Recipe): readonly string[] {
  const pouredOff = groups.flatMap(({lines}) =>
    lines.flatMap((line) => (line.pouredOff?.kind === 'like' ? [line.pouredOff.cooked.value] : [])),
  )
  const factor = yieldFactor?.value
  return [
    ...pouredOff,
    ...(factor?.kind === 'like' ? [factor.cooked] : []),
    ...(comparison?.food ? [comparison.food.value] : []),
  ]
}
