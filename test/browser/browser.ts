import {mkdir, mkdtemp, rm, writeFile} from 'node:fs/promises'
import {tmpdir} from 'node:os'
import {dirname, join} from 'node:path'
import {pathToFileURL} from 'node:url'
import packaged from '@sparticuz/chromium'
import {type Browser, chromium} from 'playwright-core'
import type {SiteFile} from '../../src/site/site-file.ts'

/** The Chromium of the registry package. One process for all is its default, and dies with a tab. */
export async function openBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: await packaged.executablePath(),
    args: packaged.args.filter((argument) => argument !== '--single-process'),
  })
}

/** A site on disk, for a browser to open as a reader would who got it on a stick. */
export interface SiteOnDisk {
  readonly url: (path: string) => string
  readonly remove: () => Promise<void>
}

export async function siteOnDisk(files: readonly SiteFile[]): Promise<SiteOnDisk> {
  const folder = await mkdtemp(join(tmpdir(), 'scalepan-site-'))
  for (const {path, content} of files) {
    const file = join(folder, path)
    await mkdir(dirname(file), {recursive: true})
    await writeFile(file, content)
  }
  return {
    url: (path) => pathToFileURL(join(folder, path)).href,
    remove: () => rm(folder, {recursive: true, force: true}),
  }
}
