import {nearestNames} from '../food/nearest-names.ts'
import type {Located, Problem} from './problem.ts'
import {reportInto} from './problems.ts'
import type {FileLink, Picture} from './recipe.ts'

/** What one text shows and links to. */
export interface Leads {
  /** The file of the text. */
  readonly file: string
  readonly pictures: readonly Located<Picture>[]
  readonly links: readonly FileLink[]
}

/** What there is to show and to link to. */
export interface Holdings {
  /** Paths below images/. */
  readonly images: ReadonlySet<string>
  /** Paths of the Markdown files. */
  readonly pages: ReadonlySet<string>
}

/** Pictures and pages that a text names and the cookbook does not hold. */
export function missingFiles(
  {file, pictures, links}: Leads,
  {images, pages}: Holdings,
): readonly Problem[] {
  const problems: Problem[] = []
  const report = reportInto(problems, file)
  const shown = pictures.map(({value, place}) => ({path: value.path, place}))
  const linked = links.filter(({path}) => path.startsWith(folder))
  for (const {path, place} of [...shown, ...linked.map(belowImages)]) {
    if (images.has(path)) continue
    report({
      ruleId: 'picture-present',
      place,
      actual: path,
      reason: `Picture \`${path}\` is not in images/, expected ${oneLike(path, images, 'a file of that name')}`,
      note: 'Capitals count: `Pot.jpg` and `pot.jpg` are two files on the web.',
    })
  }
  for (const {path, place} of links) {
    // Other paths may be pages that only the site has, such as the shopping list.
    if (!path.endsWith('.md') || pages.has(path)) continue
    const others = [...pages].filter((page) => page !== file)
    report({
      ruleId: 'page-present',
      place,
      actual: path,
      reason: `Link to \`${path}\` leads to no file of the cookbook, expected ${oneLike(path, others, 'a recipe, plan or page')}`,
    })
  }
  return problems
}

const folder = 'images/'

function belowImages({path, place}: FileLink): Pick<FileLink, 'path' | 'place'> {
  return {path: path.slice(folder.length), place}
}

function oneLike(path: string, known: Iterable<string>, otherwise: string): string {
  const [like] = nearestNames(path, known, 1)
  return like === undefined ? otherwise : `\`${like}\``
}
