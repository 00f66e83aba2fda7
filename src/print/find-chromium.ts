/** I/O: the Chromium to print with, as it is found on this machine. */

import {accessSync, constants} from 'node:fs'
import {createRequire} from 'node:module'
import path from 'node:path'
import {pathToFileURL} from 'node:url'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {fieldOf} from '../site/json-file.ts'

export interface Search {
  /** As the writer named it. */
  readonly named?: string | undefined
  readonly env: Readonly<Record<string, string | undefined>>
  /** Folder of the call: a package installed beside the cookbook is found from here. */
  readonly folder: string
}

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome']

/** Where installers of each system put it. */
const usualPlaces = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  '/snap/bin/chromium',
  '/usr/lib/chromium/chromium',
]

/** A Chromium for x64 Linux that comes as a package of the npm registry. */
const packageName = '@sparticuz/chromium'

/**
 * The program to print with: the one named, the one CHROMIUM_PATH names, one on the PATH, one in a
 * usual place, one installed as a package.
 */
export async function findChromium({named, env, folder}: Search): Promise<string> {
  const [told, by] = named ? [named, '--browser'] : [env.CHROMIUM_PATH, 'CHROMIUM_PATH']
  if (told) {
    if (isProgram(told)) return told
    throw new EnvironmentFailure(`There is no program at ${told}, which ${by} names`)
  }
  const onPath = (env.PATH ?? '')
    .split(path.delimiter)
    .filter((one) => path.isAbsolute(one))
    .flatMap((one) => names.map((name) => path.join(one, name)))
  const found = [...onPath, ...usualPlaces].find(isProgram)
  if (found !== undefined) return found
  const packaged = await packagedChromium([path.join(folder, 'package.json'), import.meta.url])
  if (packaged !== undefined) return packaged
  throw new EnvironmentFailure(
    'No Chromium was found to print with',
    `Install one, name one with \`--browser PATH\`, or run \`npm install --save-dev ${packageName}\`; any browser also prints the page itself`,
  )
}

function isProgram(file: string): boolean {
  try {
    accessSync(file, constants.X_OK)
    return true
  } catch {
    return false
  }
}

/** The package is looked for when it is needed: who never prints need not have it. */
async function packagedChromium(from: readonly string[]): Promise<string | undefined> {
  for (const place of from) {
    const entry = resolved(place)
    if (entry === undefined) continue
    const loaded: unknown = await import(pathToFileURL(entry).href)
    const launcher = fieldOf(loaded, 'default')
    if (typeof launcher !== 'function') continue
    const unpack: unknown = Reflect.get(launcher, 'executablePath')
    const file: unknown = typeof unpack === 'function' ? await unpack.call(launcher) : undefined
    if (typeof file === 'string') return file
  }
  return undefined
}

function resolved(from: string): string | undefined {
  try {
    return createRequire(from).resolve(packageName)
  } catch {
    return undefined
  }
}
