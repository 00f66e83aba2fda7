import {indexPath, shoppingPath} from '../../templates/addresses.ts'
import {fingerprint} from './fingerprint.ts'
import type {FileToMake} from './site-file.ts'

/** Where the compiled worker is among the assets; it is served from the root, whose pages it keeps. */
export const workerAssetPath = 'assets/offline.js'

/**
 * The worker with the list of what it keeps from the start. Its own bytes change with any of them,
 * so that browsers fetch them anew.
 * @param kept those files of the site, in any order
 */
export function offlineWorker(kept: readonly FileToMake[], code: string): string {
  const inOrder = kept.toSorted((left, right) => (left.path < right.path ? -1 : 1))
  const offlineFiles = {
    version: fingerprint(inOrder.map(({make}) => make())),
    paths: inOrder.map(({path}) => path),
  }
  const list = JSON.stringify(offlineFiles)
  return `const offlineFiles=${list};\n${code}`
}

/** The first page, the shopping list, and what these load. */
export function isKeptOffline(path: string): boolean {
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
