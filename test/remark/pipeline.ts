import type {Root as HastRoot} from 'hast'
import type {Root as MdastRoot} from 'mdast'
import {toHast} from 'mdast-util-to-hast'
import rehypeStringify from 'rehype-stringify'
import remarkFrontmatter from 'remark-frontmatter'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import {VFile} from 'vfile'
import type {Cookbook} from '../../src/cookbook/cookbook.ts'
import {understandCookbook} from '../../src/cookbook/understand.ts'
import {remarkChecks, remarkFigures, remarkNutrition, remarkRecipe} from '../../src/index.ts'

/** What remark-rehype does, in the little that matters here. */
function remarkToRehype() {
  return (tree: MdastRoot): HastRoot => {
    const html = toHast(tree)
    return html.type === 'root' ? html : {type: 'root', children: []}
  }
}

/** Somebody else's pipeline with our plugins in it. */
export function foreignPipeline(cookbook: Cookbook) {
  return unified()
    .use(remarkParse)
    .use(remarkFrontmatter)
    .use(remarkRecipe, {cookbook})
    .use(remarkNutrition, {cookbook})
    .use(remarkChecks, {cookbook})
    .use(remarkFigures, {cookbook})
    .use(remarkToRehype)
    .use(rehypeStringify)
    .freeze()
}

/** Runs one file through it. */
export function run(cookbook: Cookbook, value: string, path = 'notes/barley-pot.md'): VFile {
  return foreignPipeline(cookbook).processSync(new VFile({path, value}))
}

/** A cookbook of texts by path. */
export function cookbookOf(files: Readonly<Record<string, string>>): Cookbook {
  const texts = Object.entries(files)
    .map(([path, text]) => ({path, text}))
    .toSorted((left, right) => (left.path < right.path ? -1 : 1))
  return understandCookbook({texts, images: []}).cookbook
}
