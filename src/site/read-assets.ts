/** I/O: the compiled stylesheet and scripts of this package. */

import {readFile} from 'node:fs/promises'
import {createRequire} from 'node:module'
import type {SiteFile} from './site-file.ts'

/** What `npm run compile:assets` makes and pages load. */
const assetNames = [
  'site.css',
  'paper.css',
  'us-panel.css',
  'shopping.css',
  'overview.css',
  'offline.js',
  'recipe.js',
  'tin.js',
  'recipe-table.js',
  'shopping-list.js',
] as const

/** Reads the compiled stylesheet and scripts that pages load. */
export async function readAssets(): Promise<readonly SiteFile[]> {
  return Promise.all(
    assetNames.map(async (name) => ({path: `assets/${name}`, content: await readAsset(name)})),
  )
}

/** Reads one compiled file of this package by its name: `site.css`. */
export async function readAsset(name: string): Promise<string> {
  return readFile(createRequire(import.meta.url).resolve(`#assets/${name}`), 'utf8')
}
