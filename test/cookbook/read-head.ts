import {readMarkdownFile} from '../../src/cookbook/markdown-file.ts'
import type {Problem} from '../../src/cookbook/problem.ts'
import {reportInto} from '../../src/cookbook/problems.ts'
import type {IngredientLine} from '../../src/cookbook/recipe.ts'
import {recipeReader} from '../../src/cookbook/recipe-fields.ts'
import {recipeHead} from '../../src/cookbook/recipe-values.ts'

const reader = recipeReader({cups: 'us', measures: new Set(['scoop'])})

/** Reads front matter given without its fences. */
export function readHead(frontMatter: string) {
  const text = `---\n${frontMatter}\n---\n\nStir.\n`
  const problems: Problem[] = []
  const report = reportInto(problems, 'recipes/pot.md')
  const file = readMarkdownFile({path: 'recipes/pot.md', text}, reader, report)
  const head = file && recipeHead(file, report)
  const pointedAt = ({place}: Problem) =>
    text.slice(place?.start.offset ?? 0, place?.end.offset ?? 0)
  return {
    head,
    text,
    problems,
    reasons: problems.map(({reason}) => reason),
    places: problems.map(pointedAt),
  }
}

/** Lines of a recipe whose ingredients are `yaml`, indented by the caller by two blanks. */
export function readLines(yaml: string) {
  const read = readHead(`title: Pot\nserves: 4\ningredients:\n${yaml}`)
  const lines: readonly IngredientLine[] = read.head?.groups.flatMap((group) => group.lines) ?? []
  return {...read, lines}
}
