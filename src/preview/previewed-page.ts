import type {Element, Root} from 'hast'
import {h} from 'hastscript'
import {visit} from 'unist-util-visit'
import {relativeHref} from '../../templates/addresses.ts'
import type {Page} from '../../templates/site.ts'
import {eventsPath, previewScriptPath, previewStylesheetPath} from './addresses.ts'
import {findingStrip} from './finding-strip.tsx'
import {markFindings} from './marks.ts'
import type {Finding} from './page-findings.ts'

/** A page as a preview serves it: with its findings, and a script that reloads it. */
export function previewedPage(
  {path, tree}: Page,
  findings: readonly Finding[],
  generation: string,
): Page {
  const copy = structuredClone(tree)
  markFindings(
    copy,
    findings.filter(({page}) => page === path),
  )
  visit(copy, 'element', (node) => {
    if (node.tagName === 'meta') allowEvents(node)
    if (node.tagName === 'head') {
      node.children.push(...headParts((to) => relativeHref(path, to), generation))
    }
    if (node.tagName === 'body') node.children.unshift(h('div', findingStrip(path, findings)))
  })
  return {path, tree: copy}
}

/** What stands where the site has no page, or has none yet because its file is at fault. */
export function missingPage(findings: readonly Finding[], generation: string): Root {
  return {
    type: 'root',
    children: [
      {type: 'doctype'},
      h('html', {lang: 'en'}, [
        h('head', [
          h('meta', {charSet: 'utf-8'}),
          h('title', 'No such page'),
          h('link', {rel: 'stylesheet', href: '/assets/site.css'}),
          ...headParts((to) => `/${to}`, generation),
        ]),
        h('body', [
          h('div', findingStrip('', findings)),
          h('main', [
            h('h1', 'No such page'),
            h('p', 'The site has no file here. If its recipe is at fault, it comes back mended.'),
            h('p', h('a', {href: '/'}, 'To the first page')),
          ]),
        ]),
      ]),
    ],
  }
}

/** @param href the address of a file of the site, as the page has to write it */
function headParts(href: (path: string) => string, generation: string): readonly Element[] {
  return [
    h('link', {rel: 'stylesheet', href: href(previewStylesheetPath)}),
    h('script', {
      src: href(previewScriptPath),
      defer: true,
      dataEvents: href(eventsPath),
      dataGeneration: generation,
    }),
  ]
}

/** A page's policy forbids every connection; a preview's script hears of rebuilds by one. */
function allowEvents({properties}: Element): void {
  const isPolicy = String(properties.httpEquiv) === 'Content-Security-Policy'
  if (isPolicy) properties.content = `${properties.content}; connect-src 'self'`
}
