import {absoluteHref, indexPath, notFoundPath, relativeHref} from './addresses.ts'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'

/**
 * The page for an address that leads nowhere. A host serves it at any depth, so that its links
 * name the whole address where the cookbook has one.
 */
export function notFoundPage(site: Site): Page {
  const {words, cookbook} = site
  const {address} = cookbook.settings
  const home = address ? absoluteHref(address, indexPath) : relativeHref(notFoundPath, indexPath)
  return shell(site, {
    path: notFoundPath,
    title: words.notFound.title,
    main: (
      <>
        <h1>{words.notFound.title}</h1>
        <p>{words.notFound.text}</p>
        <p>
          <a href={home}>{words.notFound.link}</a>
        </p>
      </>
    ),
  })
}
