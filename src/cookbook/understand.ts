import {foodIndex} from '../food/food-index.ts'
import {nearestNames} from '../food/nearest-names.ts'
import {publishedFoods} from '../food/published-foods.ts'
import type {Kitchen} from '../units/parse-amount.ts'
import type {Cookbook, Plan, Settings, TextPage} from './cookbook.ts'
import {readOwnFoods} from './own-foods.ts'
import type {Problem} from './problem.ts'
import {readPlan} from './read-plan.ts'
import {readRecipe} from './read-recipe.ts'
import {readSettings} from './read-settings.ts'
import {readTable} from './read-table.ts'
import {readTextPage} from './read-text-page.ts'
import type {Recipe} from './recipe.ts'
import {recipeReader} from './recipe-fields.ts'
import type {CookbookSources, SourceText} from './sources.ts'

/** Names a message lists. */
const mostSuggestions = 3

/**
 * Understands every file of a cookbook. One that cannot be understood is left out, with a problem
 * that says why; nothing is looked up yet.
 */
export function understandCookbook({texts, images}: CookbookSources): {
  readonly cookbook: Cookbook
  readonly problems: readonly Problem[]
} {
  const problems: Problem[] = []
  const told = <T extends {readonly problems: readonly Problem[]}>(read: T): T => {
    for (const problem of read.problems) problems.push(problem)
    return read
  }
  const {settings} = told(readSettings(texts.find(({path}) => path === 'cookbook.yaml')))
  const foods = understandFoods(texts, settings, told)
  const reader = recipeReader(kitchenOf(settings, foods.own))
  const recipes = new Map<string, Recipe>()
  const refusedRecipes = new Set<string>()
  for (const source of inFolder(texts, 'recipes')) {
    const {recipe} = told(readRecipe(source, reader))
    if (recipe && isFirst(recipe, recipes, problems)) recipes.set(recipe.slug, recipe)
    if (!recipe) refusedRecipes.add(fileName(source.path))
  }
  const plans = inFolder(texts, 'plans').flatMap((source): readonly Plan[] => {
    const {plan} = told(readPlan(source))
    return plan ? [plan] : []
  })
  const pages = inFolder(texts, 'pages').flatMap((source): readonly TextPage[] => {
    const {page} = told(readTextPage(source))
    return page ? [page] : []
  })
  const cookbook: Cookbook = {
    settings,
    foods,
    recipes: inSlugOrder(recipes),
    refusedRecipes,
    plans,
    pages,
    images: new Set(images.map(({path}) => path)),
  }
  for (const plan of plans) problems.push(...unknownInPlan(plan, cookbook))
  return {cookbook, problems}
}

type Told = <T extends {readonly problems: readonly Problem[]}>(read: T) => T

function understandFoods(texts: readonly SourceText[], {rules}: Settings, told: Told) {
  const tables = inFolder(texts, 'tables').map((source) => told(readTable(source)).table)
  const published = publishedFoods(tables, rules)
  const source = texts.find(({path}) => path === 'foods.yaml')
  const own = source ? told(readOwnFoods(source, {published, rules})) : {foods: [], refused: []}
  return foodIndex(own, published)
}

/** Amounts may be counted in any measure that a food of the cookbook's own has a weight for. */
function kitchenOf({cups}: Settings, own: Cookbook['foods']['own']): Kitchen {
  return {cups, measures: new Set(own.flatMap(({measures}) => [...measures.keys()]))}
}

function inFolder(texts: readonly SourceText[], folder: string): readonly SourceText[] {
  return texts.filter(({path}) => path.startsWith(`${folder}/`))
}

/** `recipes/barley-pot.md` is `barley-pot`, by which others would name it. */
function fileName(path: string): string {
  return path.slice(path.lastIndexOf('/') + 1).replace(/\.md$/, '')
}

function isFirst(
  {slug, path}: Recipe,
  recipes: ReadonlyMap<string, Recipe>,
  problems: Problem[],
): boolean {
  const first = recipes.get(slug)
  if (!first) return true
  problems.push({
    ruleId: 'one-file-a-slug',
    severity: 'error',
    file: path,
    reason: `Slug \`${slug}\` belongs to \`${first.path}\` already, expected one file a slug`,
    actual: slug,
  })
  return false
}

/** In order of UTF-16 code units: the same on every machine and in every locale. */
function inSlugOrder(recipes: ReadonlyMap<string, Recipe>): ReadonlyMap<string, Recipe> {
  return new Map([...recipes].toSorted(([left], [right]) => (left < right ? -1 : 1)))
}

function unknownInPlan(
  {path, servings}: Plan,
  {recipes, refusedRecipes}: Cookbook,
): readonly Problem[] {
  return servings.flatMap(({recipe}) => {
    if (recipes.has(recipe.value) || refusedRecipes.has(recipe.value)) return []
    const near = nearestNames(recipe.value, recipes.keys(), mostSuggestions)
    const expected = near.map((slug) => `\`${slug}\``).join(' or ') || 'the slug of a recipe'
    return [
      {
        ruleId: 'unknown-component',
        severity: 'error',
        file: path,
        place: recipe.place,
        reason: `Plan names \`${recipe.value}\`, expected ${expected}`,
        actual: recipe.value,
        expected: near,
        note: 'A recipe is named by its file name without `.md`.',
      },
    ]
  })
}
