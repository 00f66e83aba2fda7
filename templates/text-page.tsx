import type {TextPage} from '../src/cookbook/cookbook.ts'
import {textPagePath} from './addresses.ts'
import {authored} from './parts/authored.ts'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'

/** A page of the writer's own text. */
export function textPage(site: Site, page: TextPage): Page {
  const path = textPagePath(page.slug)
  return shell(site, {
    path,
    title: page.title.value,
    main: (
      <>
        <h1>{page.title.value}</h1>
        {authored(page.body, page.path, path)}
      </>
    ),
  })
}
