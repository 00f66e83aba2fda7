/** Where each page stands in the site, and how one page names another. */

export const indexPath = 'index.html'
export const shoppingPath = 'shopping/index.html'
export const figuresPath = 'figures/index.html'
export const foodsPath = 'foods/index.html'
export const rulesPath = 'rules/index.html'
export const feedPath = 'feed.xml'
export const notFoundPath = '404.html'
export const stylesheetPath = 'assets/site.css'
export const iconPath = 'assets/mark.svg'

export const recipePath = (slug: string) => `recipes/${slug}/index.html`
export const cardPath = (slug: string) => `recipes/${slug}/card/index.html`
export const captionPath = (slug: string) => `recipes/${slug}/caption.txt`
export const planPath = (slug: string) => `plans/${slug}/index.html`
export const textPagePath = (slug: string) => `pages/${slug}/index.html`
export const scriptPath = (name: string) => `assets/${name}.js`

/**
 * The way from one file of the site to another, so that the folder also opens from a disk.
 * @param to a path in the site, with or without `#anchor`
 */
export function relativeHref(from: string, to: string): string {
  const [path = '', anchor] = to.split('#')
  const fragment = anchor === undefined ? '' : `#${anchor}`
  if (path === from && fragment !== '') return fragment
  const fromFolders = from.split('/').slice(0, -1)
  const toSteps = path.split('/')
  let shared = 0
  while (shared < fromFolders.length && fromFolders[shared] === toSteps[shared]) shared++
  const up = '../'.repeat(fromFolders.length - shared)
  return `${up}${toSteps.slice(shared).map(encodeURIComponent).join('/')}${fragment}`
}

/** The address on the web, with the folder standing for its index.html. */
export function absoluteHref(address: string, path: string): string {
  return new URL(path.replace(/(^|\/)index\.html$/, '$1'), address).href
}
