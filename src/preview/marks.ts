import type {Element, Root} from 'hast'
import {h} from 'hastscript'
import {SKIP, visit} from 'unist-util-visit'
import type {PagePart} from './finding-place.ts'
import type {Finding} from './page-findings.ts'

/** Puts each finding's words beside what it is about, on a page that is changed in place. */
export function markFindings(tree: Root, findings: readonly Finding[]): void {
  const page = partsOf(tree)
  for (const {problem, id, part} of findings) {
    const element = elementOf(part, page) ?? page.title
    if (element === undefined) continue
    addClass(element, `found-${problem.severity}`)
    const words = `${problem.severity}: ${problem.reason}`
    const holder = element.tagName === 'tr' ? element.children.findLast(isElement) : element
    holder?.children.push(h('a.finding', {id, href: '#findings'}, words))
  }
}

/** What of a page can bear a mark. */
interface PageParts {
  readonly title: Element | undefined
  readonly byId: ReadonlyMap<string, Element>
  readonly statedRows: readonly Element[]
  /** Headings, paragraphs and items of the method, as a recipe counts its passages. */
  readonly passages: readonly Element[]
}

function elementOf(part: PagePart, page: PageParts): Element | undefined {
  switch (part.kind) {
    case 'ingredient':
      return page.byId.get(part.anchor)
    case 'stated':
      return page.statedRows[part.row]
    case 'passage':
      return page.passages[part.index] ?? page.byId.get('part-method')
    case 'title':
      return page.title
  }
}

function partsOf(tree: Root): PageParts {
  const byId = new Map<string, Element>()
  const statedRows: Element[] = []
  const passages: Element[] = []
  const titles: Element[] = []
  visit(tree, 'element', (node) => {
    const {id} = node.properties
    if (typeof id === 'string') byId.set(id, node)
    if (node.tagName === 'h1') titles.push(node)
    if (hasClass(node, 'stated')) statedRows.push(...rowsOf(node))
    if (hasClass(node, 'method')) passages.push(...passagesOf(node))
  })
  return {title: titles[0], byId, statedRows, passages}
}

function rowsOf(table: Element): readonly Element[] {
  const body = table.children.filter(isElement).find(({tagName}) => tagName === 'tbody')
  return (body?.children ?? []).filter(isElement)
}

const blocks = ['h1', 'h2', 'h3', 'h4', 'h5', 'h6', 'p', 'li', 'pre', 'th', 'td']

/** The innermost blocks of text; the heading "Method" is the page's own. */
function passagesOf(section: Element): readonly Element[] {
  const found: Element[] = []
  visit(section, 'element', (node) => {
    if (node.properties.id === 'part-method') return SKIP
    const holdsBlocks = node.children.some((child) => isElement(child) && isOuter(child))
    if (!blocks.includes(node.tagName)) return undefined
    const isLoose = node.tagName === 'li' && node.children.filter(isElement)[0]?.tagName === 'p'
    if (!isLoose) found.push(node)
    return holdsBlocks ? undefined : SKIP
  })
  return found
}

function isOuter({tagName}: Element): boolean {
  return blocks.includes(tagName) || ['ul', 'ol', 'blockquote', 'table'].includes(tagName)
}

function isElement(node: Root['children'][number]): node is Element {
  return node.type === 'element'
}

function hasClass({properties}: Element, name: string): boolean {
  return Array.isArray(properties.className) && properties.className.includes(name)
}

function addClass({properties}: Element, name: string): void {
  const names = Array.isArray(properties.className) ? properties.className : []
  properties.className = [...names.filter((other) => other !== name), name]
}
