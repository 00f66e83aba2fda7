import {planPath, recipePath, textPagePath} from '../../templates/addresses.ts'
import type {Examined} from '../build.ts'
import type {Problem} from '../cookbook/problem.ts'
import {type PagePart, pagePart} from './finding-place.ts'

/** A finding as a preview shows it. */
export interface Finding {
  readonly problem: Problem
  /** Id of its mark: `finding-3`, numbered through the whole cookbook. */
  readonly id: string
  /** Path of the page that shows the file; undefined where no page could be made of it. */
  readonly page: string | undefined
  /** Where on that page. */
  readonly part: PagePart
}

/** Every finding with its place in the site, in report order. */
export function pageFindings({problems, cookbook, computed}: Examined): readonly Finding[] {
  const pages = new Map([
    ...[...computed.values()].map(({recipe}) => [recipe.path, recipePath(recipe.slug)] as const),
    ...cookbook.plans.map(({path, slug}) => [path, planPath(slug)] as const),
    ...cookbook.pages.map(({path, slug}) => [path, textPagePath(slug)] as const),
  ])
  const recipes = new Map([...computed.values()].map((one) => [one.recipe.path, one]))
  return problems.map((problem, index) => {
    const recipe = recipes.get(problem.file)
    return {
      problem,
      id: `finding-${index + 1}`,
      page: pages.get(problem.file),
      part: recipe ? pagePart(problem.place, recipe, cookbook.settings) : {kind: 'title'},
    }
  })
}
