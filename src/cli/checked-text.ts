import {countText} from '../report/count-text.ts'
import {summary} from '../report/summary.ts'
import {findingsText, statedCount, verdictsText} from '../report/summary-text.ts'
import type {ExaminedFolder} from './examined-folder.ts'

/** Whether a file, by the path messages give, is one that the report is about. */
export type IsWanted = (file: string) => boolean

/** What a check looked at and found, in one line: `2 errors, 0 warnings, 0 notes in 1 recipe; …`. */
export function checkedText(folder: ExaminedFolder, isWanted: IsWanted): string {
  const {examined, filePath} = folder
  const computed = [...examined.computed].filter(([, one]) => isWanted(filePath(one.recipe.path)))
  const problems = examined.problems.filter(({file}) => isWanted(filePath(file)))
  const counts = summary({...examined, computed: new Map(computed), problems})
  const stated = `${countText(statedCount(counts), 'stated figure')}: ${verdictsText(counts)}`
  return `${findingsText(counts)} in ${filesText(folder, isWanted)}; ${stated}`
}

/** The recipes looked at, else the files; those that were not understood have no figures. */
function filesText({read, examined, filePath}: ExaminedFolder, isWanted: IsWanted): string {
  const files = read.sources.texts.filter(({path}) => isWanted(filePath(path)))
  const recipes = files.filter(({path}) => path.startsWith('recipes/'))
  if (recipes.length === 0) return countText(files.length, 'file')
  const understood = new Set([...examined.cookbook.recipes.values()].map(({path}) => path))
  const others = recipes.filter(({path}) => !understood.has(path)).length
  const found = countText(recipes.length, 'recipe')
  return others === 0 ? found : `${found}, ${others} of them not understood`
}
