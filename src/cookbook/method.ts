import type {Root as HastRoot} from 'hast'
import type {Root} from 'mdast'
import {toHast} from 'mdast-util-to-hast'
import {settleAnchorLinks} from './method/anchor-links.ts'
import {bodyHandlers} from './method/body-handlers.ts'
import {type BodyContext, BodyReading} from './method/body-reading.ts'
import {settleHeadings} from './method/headings.ts'
import type {Method} from './recipe.ts'

/**
 * The method of a recipe: the Markdown below its front matter, in one walk. Links to ingredients
 * print their amounts; nothing an author writes reaches the tree but as text or as one of
 * Markdown's own elements, with checked addresses.
 * @param root the tree of the whole file; it is not changed and not kept
 */
export function readMethod(
  root: Root,
  {source, lines, report}: Pick<BodyContext, 'source' | 'lines' | 'report'>,
): Method {
  // On a recipe's page a heading of the page, "Method", stands above those of the text.
  return readBody(root, {
    source,
    lines,
    report,
    highestHeading: 3,
    anchorRule: 'unknown-ingredient-link',
  })
}

/** The text of a plan or a page, as safe as a recipe's method. */
export function safeBody(
  root: Root,
  {source, report}: Pick<BodyContext, 'source' | 'report'>,
): Method {
  return readBody(root, {
    source,
    lines: [],
    report,
    highestHeading: 2,
    anchorRule: 'unknown-heading-link',
  })
}

function readBody(root: Root, context: BodyContext): Method {
  const reading = new BodyReading(context)
  const body = toHast(root, {handlers: bodyHandlers(reading)})
  settleHeadings(reading)
  settleAnchorLinks(reading)
  const {passages, ingredientLinks, images, links} = reading
  return {body: asRoot(body), passages, ingredientLinks, images, links}
}

/** The handler of a root gives a root, which the library's type does not tell. */
function asRoot(tree: ReturnType<typeof toHast>): HastRoot {
  return tree.type === 'root' ? tree : {type: 'root', children: []}
}
