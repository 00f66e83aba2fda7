import {promises as disk, existsSync} from 'node:fs'
import path from 'node:path'
import {diskReason, EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {isBranded} from './import-fdc-json.ts'

/** What a download is: of FoodData Central, or a text that a mapping explains. */
export type KindOfDownload = 'folder' | 'branded folder' | 'json' | 'branded json' | 'text'

export async function kindOfDownload(file: string): Promise<KindOfDownload> {
  if (await isFolder(file)) {
    return existsSync(path.join(file, 'branded_food.csv')) ? 'branded folder' : 'folder'
  }
  if (!/\.json$/i.test(file)) return 'text'
  return (await isBranded(file)) ? 'branded json' : 'json'
}

async function isFolder(file: string): Promise<boolean> {
  try {
    return (await disk.stat(file)).isDirectory()
  } catch (error) {
    throw new EnvironmentFailure(`Cannot read ${file}: ${diskReason(error)}`)
  }
}
