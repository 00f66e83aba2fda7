import type {Element, ElementContent, Root, RootContent} from 'hast'
import {linkTarget} from '../../src/cookbook/link-target.ts'
import {planPath, recipePath, relativeHref, textPagePath} from '../addresses.ts'
import {withElements} from './with-elements.ts'

/**
 * The writer's own text, placed on a page: links between the Markdown files of the cookbook become
 * links between pages. A link with a scheme that runs something is left without an address, and a
 * picture from elsewhere is left as its words; the reader of the cookbook has said both already.
 * @param source path of the Markdown file in the cookbook folder
 * @param page path of the page in the site
 */
export function authored(body: Root, source: string, page: string): ElementContent[] {
  return withElements(body.children.filter(isContent), (element) => {
    if (element.tagName === 'a') return readdressed(element, source, page)
    return element.tagName === 'img' ? picture(element, source, page) : element
  })
}

function isContent(node: RootContent): node is ElementContent {
  return node.type !== 'doctype'
}

function readdressed(node: Element, source: string, page: string): Element {
  const {href, ...others} = node.properties
  if (typeof href !== 'string') return node
  const to = pageHref(href, source, page)
  return {...node, properties: to === undefined ? others : {...node.properties, href: to}}
}

function picture(node: Element, source: string, page: string): ElementContent {
  const {src, alt} = node.properties
  const to = typeof src === 'string' ? imageHref(src, source, page) : undefined
  if (to === undefined) return {type: 'text', value: typeof alt === 'string' ? alt : ''}
  return {...node, properties: {...node.properties, src: to, loading: 'lazy'}}
}

/** Where a link of the writer's leads from a page; undefined where it must lead nowhere. */
export function pageHref(written: string, source: string, page: string): string | undefined {
  const target = linkTarget(written, source)
  switch (target.kind) {
    case 'anchor':
      return written
    case 'address':
      return target.href
    case 'file':
      return relativeHref(page, pageOf(target.path), target.anchor)
    case 'refused':
      return undefined
  }
}

/** Where a picture of the cookbook stands for a page; undefined when it is no picture of its own. */
export function imageHref(written: string, source: string, page: string): string | undefined {
  const path = imagePath(written, source)
  return path === undefined ? undefined : relativeHref(page, path)
}

/** Path of a picture in the site, which is its path in the cookbook folder. */
export function imagePath(written: string, source: string): string | undefined {
  const target = linkTarget(written, source)
  return target.kind === 'file' && target.path.startsWith('images/') ? target.path : undefined
}

/** The page a Markdown file of the cookbook becomes; anything else keeps its path. */
function pageOf(path: string): string {
  const [, kind = '', slug = ''] = /^(recipes|plans|pages)\/([^/]+)\.md$/.exec(path) ?? []
  switch (kind) {
    case 'recipes':
      return recipePath(slug)
    case 'plans':
      return planPath(slug)
    case 'pages':
      return textPagePath(slug)
    default:
      return path
  }
}
