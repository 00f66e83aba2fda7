/** Where each page stands in the site, and how one page names another. */

import {rulesPagePath} from '../src/check/rule-url.ts'

export const indexPath = 'index.html'
export const shoppingPath = 'shopping/index.html'
export const figuresPath = 'figures/index.html'
export const foodsPath = 'foods/index.html'
/** Messages name it too. */
export const rulesPath = rulesPagePath
/** Shows what the pages are made of. */
export const stylePath = 'style/index.html'
export const cookbookPath = 'cookbook/index.html'
export const cookbookHeadsPath = 'cookbook/heads.css'
export const cardsPath = 'cards/index.html'
export const cardSheetsPath = 'cards/sheets/index.html'
export const feedPath = 'feed.xml'
export const sitemapPath = 'sitemap.xml'
export const notFoundPath = '404.html'
/** At the root: a worker keeps only what stands below it. */
export const offlinePath = 'offline.js'
export const stylesheetPath = 'assets/site.css'
export const paperStylesheetPath = 'assets/paper.css'
/** Taken by pages with a list to shop by. */
export const shoppingStylesheetPath = 'assets/shopping.css'
/** Taken by pages that list recipes, foods, figures or rules. */
export const overviewStylesheetPath = 'assets/overview.css'
/** Taken by pages that show the panel of the US, and by no other. */
export const usPanelStylesheetPath = 'assets/us-panel.css'
export const iconPath = 'assets/mark.svg'

/** Parts of the table of dishes; the first one stands on the first page. */
export const dishesPath = (part: number) => (part === 1 ? indexPath : `dishes/${part}/index.html`)
/** Parts of the table of components. */
export const componentsPath = (part: number) =>
  part === 1 ? indexPath : `components/${part}/index.html`
/** Taken by the first page when somebody searches, where its table is in parts. */
export const findingDataPath = 'dishes/finding.js'

/** Taken by the shopping list when somebody looks for a recipe, where there are many. */
export const shoppingNamesPath = 'shopping/names.js'
/** Taken by the shopping list when a recipe of the part is chosen. */
export const shoppingPartPath = (part: number) => `shopping/parts/${part}.js`

export const recipePath = (slug: string) => `recipes/${slug}/index.html`
export const cardPath = (slug: string) => `recipes/${slug}/card/index.html`
export const captionPath = (slug: string) => `recipes/${slug}/caption.txt`
export const csvPath = (slug: string) => `recipes/${slug}/recipe.csv`
export const jsonLdPath = (slug: string) => `recipes/${slug}/recipe.jsonld`
export const sharePath = (slug: string) => `recipes/${slug}/share.png`
export const planPath = (slug: string) => `plans/${slug}/index.html`
export const textPagePath = (slug: string) => `pages/${slug}/index.html`
export const scriptPath = (name: string) => `assets/${name}.js`

/** The way from one file of the site to another, so that the folder also opens from a disk. */
export function relativeHref(from: string, to: string, anchor?: string): string {
  const fragment = anchor === undefined ? '' : `#${encodeURIComponent(anchor)}`
  if (to === from && fragment !== '') return fragment
  const fromFolders = from.split('/').slice(0, -1)
  const toSteps = to.split('/')
  let shared = 0
  while (shared < fromFolders.length && fromFolders[shared] === toSteps[shared]) shared++
  const up = '../'.repeat(fromFolders.length - shared)
  return `${up}${encodedSteps(toSteps.slice(shared))}${fragment}`
}

/** The address on the web, with the folder standing for its index.html. */
export function absoluteHref(address: string, path: string): string {
  return new URL(encodedSteps(path.replace(/(^|\/)index\.html$/, '$1').split('/')), address).href
}

function encodedSteps(steps: readonly string[]): string {
  return steps.map(encodeURIComponent).join('/')
}
