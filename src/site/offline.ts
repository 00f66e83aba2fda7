import {indexPath, offlinePath, shoppingPath} from '../../templates/addresses.ts'
import {fingerprint} from './fingerprint.ts'
import type {SiteFile} from './site-file.ts'

/** Where the compiled worker is among the assets; it is served from the root, whose pages it keeps. */
export const workerAssetPath = 'assets/offline.js'

/**
 * The worker with the list of what it keeps from the start. Its own bytes change with any of them,
 * so that browsers fetch them anew.
 * @param kept those files of the site, in any order
 */
export function offlineWorker(kept: readonly SiteFile[], code: string): SiteFile {
  const inOrder = kept.toSorted((left, right) => (left.path < right.path ? -1 : 1))
  const offlineFiles = {
    version: fingerprint(inOrder.map(({content}) => content)),
    paths: inOrder.map(({path}) => path),
  }
  const list = JSON.stringify(offlineFiles)
  return {path: offlinePath, content: `const offlineFiles=${list};\n${code}`}
}

/** The first page, the shopping list, and what these load. */
export function isKeptOffline({path}: SiteFile): boolean {
  return path === indexPath || path === shoppingPath || isLoaded(path)
}

function isLoaded(path: string): boolean {
  return [
    'site.css',
    'shopping.css',
    'mark.svg',
    'recipe.js',
    'recipe-table.js',
    'shopping-list.js',
  ].some((name) => path === `assets/${name}`)
}
