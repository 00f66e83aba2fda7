import {indexPath, offlinePath, shoppingPath} from '../../templates/addresses.ts'
import {fingerprint} from './fingerprint.ts'
import type {SiteFile} from './site-file.ts'

/** Where the compiled worker is among the assets; it is served from the root, whose pages it keeps. */
export const workerAssetPath = 'assets/offline.js'

/**
 * The worker with the list of what it keeps from the start: the first page, the shopping list, and
 * what these load. Its own bytes change with any of them, so that browsers fetch them anew.
 * @param files of the whole site
 */
export function offlineWorker(files: readonly SiteFile[], code: string): SiteFile {
  const kept = files.filter(
    ({path}) => path === indexPath || path === shoppingPath || isLoaded(path),
  )
  const offlineFiles = {
    version: fingerprint(kept.map(({content}) => content)),
    paths: kept.map(({path}) => path),
  }
  const list = JSON.stringify(offlineFiles)
  return {path: offlinePath, content: `const offlineFiles=${list};\n${code}`}
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
