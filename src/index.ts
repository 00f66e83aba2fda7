/**
 * The library's face; what is not named here is internal. docs/library.md says what each is for,
 * with examples that the tests run.
 */

export {type Built, build, type Circumstances, type Examined, examine} from './build.ts'
export type {Rule} from './check/rule.ts'
export type {Judged, Verdict} from './check/verdict.ts'
export type {Cookbook, Plan, Settings, TextPage} from './cookbook/cookbook.ts'
export {EnvironmentFailure} from './cookbook/environment-failure.ts'
export {placeInPassage} from './cookbook/passage-place.ts'
export type {Located, Problem, Severity} from './cookbook/problem.ts'
export {readCookbook} from './cookbook/read-folder.ts'
export type {
  IngredientGroup,
  IngredientLine,
  Method,
  Passage,
  Recipe,
  Stated,
  StatedFigure,
} from './cookbook/recipe.ts'
export type {
  CookbookSources,
  ReadCookbook,
  SourceImage,
  SourceText,
} from './cookbook/sources.ts'
export {understandCookbook} from './cookbook/understand.ts'
export type {Figure, Figures} from './food/figures.ts'
export type {Food} from './food/food.ts'
export {type Nutrient, nutrientUnit, type PublishedNutrient} from './food/nutrients.ts'
export type {Computed, ComputedLine} from './nutrition/computed.ts'
export {type Publishing, publishedBy, publishedFigure} from './nutrition/published.ts'
export {remarkChecks} from './remark/remark-checks.ts'
export {remarkFigures} from './remark/remark-figures.ts'
export {remarkNutrition} from './remark/remark-nutrition.ts'
export {type CookbookOptions, remarkRecipe} from './remark/remark-recipe.ts'
export {readAssets} from './site/read-assets.ts'
export type {SiteFile} from './site/site-file.ts'
export {type SiteWritten, writeSite} from './site/write-site.ts'
export {expandedUncertainty, type Uncertain} from './units/uncertain.ts'
