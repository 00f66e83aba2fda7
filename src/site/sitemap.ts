import {absoluteHref, notFoundPath, sitemapPath} from '../../templates/addresses.ts'
import type {SiteFile} from './site-file.ts'
import {xml, xmlText} from './xml.ts'

/** The pages a search engine may list (sitemaps.org protocol 0.9). */
export function sitemap(address: string, paths: readonly string[]): SiteFile {
  const urls = paths
    .filter((path) => path !== notFoundPath)
    .map((path) => xml('url', [xml('loc', [absoluteHref(address, path)])]))
  return {
    path: sitemapPath,
    content: xmlText(xml('urlset', urls, {xmlns: 'http://www.sitemaps.org/schemas/sitemap/0.9'})),
  }
}
