import {absoluteHref, feedPath, indexPath, recipePath} from '../../templates/addresses.ts'
import {publishedFigures, publishedText} from '../../templates/parts/published-figures.ts'
import type {Site} from '../../templates/site.ts'
import type {SiteFile} from './site-file.ts'
import {xml, xmlText} from './xml.ts'

/**
 * A feed of the recipes (RSS 2.0, which asks for no dates: a build knows none, so that the same
 * cookbook gives the same bytes).
 * @param address of the site, ending in `/`
 */
export function feed(site: Site, address: string): SiteFile {
  const {settings} = site.cookbook
  const entries = [...site.computed.values()].map((computed) => {
    const {recipe} = computed
    const link = absoluteHref(address, recipePath(recipe.slug))
    const figures = publishedFigures(computed, settings).figures.map(
      (figure) =>
        `${site.words.nutrientName[figure.nutrient]} ${publishedText(figure, site.words)}`,
    )
    return xml('item', [
      xml('title', [recipe.title.value]),
      xml('link', [link]),
      xml('guid', [link]),
      xml('description', [[recipe.summary?.value ?? '', figures.join(', ')].join(' ').trim()]),
    ])
  })
  const channel = xml('channel', [
    xml('title', [settings.title]),
    xml('link', [absoluteHref(address, indexPath)]),
    xml('description', [settings.description]),
    xml('language', [settings.language]),
    xml('atom:link', [], {
      href: absoluteHref(address, feedPath),
      rel: 'self',
      type: 'application/rss+xml',
    }),
    ...entries,
  ])
  return {
    path: feedPath,
    content: xmlText(
      xml('rss', [channel], {version: '2.0', 'xmlns:atom': 'http://www.w3.org/2005/Atom'}),
    ),
  }
}
