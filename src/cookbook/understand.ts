import {type FoodIndex, foodIndex} from '../food/food-index.ts'
import {nearestNames} from '../food/nearest-names.ts'
import {publishedFoods} from '../food/published-foods.ts'
import type {Kitchen} from '../units/parse-amount.ts'
import type {Cookbook, Plan, Settings, TextPage} from './cookbook.ts'
import {type Leads, missingFiles} from './missing-files.ts'
import {readOwnFoods} from './own-foods.ts'
import type {Problem} from './problem.ts'
import {readPlan} from './read-plan.ts'
import {type RecipeRead, readRecipe} from './read-recipe.ts'
import {readSettings} from './read-settings.ts'
import {readTable} from './read-table.ts'
import {readTextPage} from './read-text-page.ts'
import type {Method, Recipe} from './recipe.ts'
import {recipeReader} from './recipe-fields.ts'
import type {CookbookSources, SourceText} from './sources.ts'
import {type Larder, UnderstoodBefore} from './understood-before.ts'

/** Names a message lists. */
const mostSuggestions = 3

/**
 * Understands every file of a cookbook. One that cannot be understood is left out, with a problem
 * that says why; names of foods and components are not looked up yet.
 * @param before what an earlier reading of the cookbook understood
 */
export function understandCookbook(
  {texts, images}: CookbookSources,
  before = new UnderstoodBefore(),
): {
  readonly cookbook: Cookbook
  readonly problems: readonly Problem[]
} {
  const gathered = new Gathered()
  const larderTexts = texts.filter(({path}) => isOfLarder(path))
  const larder = before.larder(larderTexts, () => understandLarder(larderTexts))
  const {settings, foods} = gathered.told(larder)
  const reader = recipeReader(kitchenOf(settings, foods))
  const read = (source: SourceText) => before.recipe(source, (one) => readRecipe(one, reader))
  const recipes = understandRecipes(inFolder(texts, 'recipes'), read, gathered)
  const cookbook: Cookbook = {
    settings,
    foods,
    ...recipes,
    plans: inFolder(texts, 'plans').flatMap((source) => understandPlan(source, gathered)),
    pages: inFolder(texts, 'pages').flatMap((source) => understandPage(source, gathered)),
    images: new Set(images.map(({path}) => path)),
  }
  const paths = texts.map(({path}) => path).filter((path) => path.endsWith('.md'))
  const holdings = {images: cookbook.images, pages: new Set(paths)}
  for (const plan of cookbook.plans) gathered.problems.push(...unknownInPlan(plan, cookbook))
  for (const leads of gathered.leads) gathered.problems.push(...missingFiles(leads, holdings))
  return {cookbook, problems: gathered.problems}
}

/** What reading one file after the other brings up. */
class Gathered {
  readonly problems: Problem[] = []
  readonly leads: Leads[] = []

  /** Keeps what was told about a file, and hands the rest on. */
  told<T extends {readonly problems: readonly Problem[]}>(read: T): T {
    for (const problem of read.problems) this.problems.push(problem)
    return read
  }

  lead(file: string, {images, links}: Method, image?: Recipe['image']): void {
    this.leads.push({file, pictures: image ? [image, ...images] : images, links})
  }
}

function isOfLarder(path: string): boolean {
  return path === 'cookbook.yaml' || path === 'foods.yaml' || path.startsWith('tables/')
}

function understandLarder(texts: readonly SourceText[]): Larder {
  const gathered = new Gathered()
  const named = (name: string) => texts.find(({path}) => path === name)
  const {settings} = gathered.told(readSettings(named('cookbook.yaml')))
  const {rules, cups} = settings
  const tables = inFolder(texts, 'tables').map((source) => gathered.told(readTable(source)).table)
  const published = publishedFoods(tables, rules)
  const source = named('foods.yaml')
  const own = source
    ? gathered.told(readOwnFoods(source, {published, rules, cups}))
    : {foods: [], refused: []}
  return {settings, foods: foodIndex(own, published), problems: gathered.problems}
}

/** Amounts may be counted in any measure that a food of the cookbook's own has a weight for. */
export function kitchenOf({cups}: Settings, {own}: FoodIndex): Kitchen {
  return {cups, measures: new Set(own.flatMap(({measures}) => [...measures.keys()]))}
}

function understandRecipes(
  sources: readonly SourceText[],
  read: (source: SourceText) => RecipeRead,
  gathered: Gathered,
): Pick<Cookbook, 'recipes' | 'refusedRecipes'> {
  const recipes = new Map<string, Recipe>()
  const refusedRecipes = new Set<string>()
  for (const source of sources) {
    const {recipe} = gathered.told(read(source))
    const first = recipe && recipes.get(recipe.slug)
    if (!recipe) refusedRecipes.add(fileName(source.path))
    else if (first) gathered.problems.push(sameSlug(recipe, first))
    else {
      recipes.set(recipe.slug, recipe)
      gathered.lead(source.path, recipe.method, recipe.image)
    }
  }
  // In order of UTF-16 code units: the same on every machine and in every locale.
  const inOrder = [...recipes].toSorted(([left], [right]) => (left < right ? -1 : 1))
  return {recipes: new Map(inOrder), refusedRecipes}
}

function understandPlan(source: SourceText, gathered: Gathered): readonly Plan[] {
  const {plan, written} = gathered.told(readPlan(source))
  if (written) gathered.lead(source.path, written)
  return plan ? [plan] : []
}

function understandPage(source: SourceText, gathered: Gathered): readonly TextPage[] {
  const {page, written} = gathered.told(readTextPage(source))
  if (written) gathered.lead(source.path, written)
  return page ? [page] : []
}

function inFolder(texts: readonly SourceText[], folder: string): readonly SourceText[] {
  return texts.filter(({path}) => path.startsWith(`${folder}/`))
}

/** `recipes/barley-pot.md` is `barley-pot`, by which others would name it. */
function fileName(path: string): string {
  return path.slice(path.lastIndexOf('/') + 1).replace(/\.md$/, '')
}

function sameSlug({slug, path}: Recipe, first: Recipe): Problem {
  return {
    ruleId: 'one-file-a-slug',
    severity: 'error',
    file: path,
    reason: `Slug \`${slug}\` belongs to \`${first.path}\` already, expected one file a slug`,
    actual: slug,
  }
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
