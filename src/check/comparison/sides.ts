import type {Cookbook} from '../../cookbook/cookbook.ts'
import type {Problem} from '../../cookbook/problem.ts'
import type {Comparison} from '../../cookbook/recipe.ts'
import {type Basis, type Figures, figuresOf, weightedSum} from '../../food/figures.ts'
import type {Food} from '../../food/food.ts'
import {nearestNames} from '../../food/nearest-names.ts'
import type {Computed} from '../../nutrition/computed.ts'
import {unknownFood} from '../../nutrition/resolve.ts'
import {scaled, type Uncertain} from '../../units/uncertain.ts'

/** A dish beside what it is compared with, on the same basis. */
export interface Sides {
  readonly here: Figures<Basis>
  readonly there: Figures<Basis>
  readonly basis: Comparison['basis']
  /** What it is compared with. */
  readonly name: string
  /** Absent where that is a food. */
  readonly other?: Computed
}

/** Both sides, or what keeps them from being set beside each other; neither where that is told elsewhere. */
export interface SidesResult {
  readonly sides?: Sides
  readonly problem?: Omit<Problem, 'file' | 'ruleId' | 'severity' | 'place'> &
    Required<Pick<Problem, 'place'>>
}

/** How many near names a message lists. */
const mostSuggestions = 3

/** Sets a dish beside the recipe or food it is compared with. */
export function sidesOf(
  computed: Computed,
  comparison: Comparison,
  {cookbook, all}: {readonly cookbook: Cookbook; readonly all: ReadonlyMap<string, Computed>},
): SidesResult {
  const {recipe, food} = comparison
  if (recipe) return besideRecipe(computed, {...comparison, recipe}, cookbook, all)
  return food ? besideFood(computed, {...comparison, food}, cookbook) : {}
}

type Named<K extends 'recipe' | 'food'> = Comparison & Required<Pick<Comparison, K>>

function besideRecipe(
  computed: Computed,
  {recipe, basis}: Named<'recipe'>,
  cookbook: Cookbook,
  all: ReadonlyMap<string, Computed>,
): SidesResult {
  const {value: slug, place} = recipe
  const other = all.get(slug)
  if (other === undefined) {
    // A recipe that could not be understood or computed has had its own message.
    if (cookbook.recipes.has(slug) || cookbook.refusedRecipes.has(slug)) return {}
    const expected = nearestNames(slug, otherSlugs(computed, cookbook), mostSuggestions)
    const near = expected.map((each) => `\`${each}\``).join(' or ') || 'the slug of a recipe'
    return {
      problem: {
        place,
        reason: `Compared with \`${slug}\`, which is no recipe of this cookbook, expected ${near}`,
        actual: slug,
        expected,
      },
    }
  }
  if (other.recipe.slug === computed.recipe.slug) {
    const reason = `Compared with \`${slug}\`, which is this recipe itself, expected another one`
    return {problem: {place, reason, actual: slug}}
  }
  const [here, there] = [figuresOn(basis, computed), figuresOn(basis, other)]
  if (here && there) return {sides: {here, there, basis, name: other.recipe.title.value, other}}
  const title = (here ? other : computed).recipe.title.value
  return {problem: withoutBasis(title, basis, place)}
}

function otherSlugs({recipe}: Computed, {recipes}: Cookbook): readonly string[] {
  return [...recipes.keys()].filter((slug) => slug !== recipe.slug)
}

function besideFood(
  computed: Computed,
  {food, basis}: Named<'food'>,
  cookbook: Cookbook,
): SidesResult {
  const found = cookbook.foods.lookUp(food.value)
  if (found === undefined) {
    if (cookbook.foods.isRefused(food.value)) return {}
    const {reason, actual, expected} = unknownFood(food, cookbook.foods)
    return {problem: {place: food.place, reason, ...(actual && {actual}), expected: expected ?? []}}
  }
  const {portionGrams, recipe} = computed
  const here = figuresOn(basis, computed)
  const there = basis === '100 g' ? found.per100g : portionGrams && weightOf(found, portionGrams)
  return here && there
    ? {sides: {here, there, basis, name: found.name}}
    : {problem: withoutBasis(recipe.title.value, '100 g', food.place)}
}

/** Nobody defines a serving of a food: as much of it as one serving of the dish weighs. */
function weightOf({per100g}: Food, grams: Uncertain): Figures<'serving'> {
  const weight = scaled(grams, 1 / 100)
  return figuresOf((nutrient) => weightedSum([{figure: per100g[nutrient], weight}]))
}

function figuresOn(
  basis: Comparison['basis'],
  {perServing, per100g}: Computed,
): Figures<Basis> | undefined {
  return basis === '100 g' ? per100g : perServing
}

function withoutBasis(title: string, basis: Comparison['basis'], place: Problem['place'] & object) {
  const key = basis === '100 g' ? 'yield' : 'serves'
  return {
    place,
    reason: `Compared by \`${basis}\` without \`${key}\` in \`${title}\`, expected \`${key}\` there`,
    expected: [key],
  }
}
