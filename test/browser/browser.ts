import {mkdir, mkdtemp, rm, writeFile} from 'node:fs/promises'
import {createServer} from 'node:http'
import {tmpdir} from 'node:os'
import {dirname, extname, join} from 'node:path'
import {pathToFileURL} from 'node:url'
import packaged from '@sparticuz/chromium'
import {type Browser, chromium, type Page} from 'playwright-core'
import type {SiteFile} from '../../src/site/site-file.ts'

/** The Chromium of the registry package. One process for all is its default, and dies with a tab. */
export async function openBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: await packaged.executablePath(),
    args: packaged.args.filter((argument) => argument !== '--single-process'),
  })
}

/** The address that stands in the window; the browser's driver learns of a new one only later. */
export function addressOf(page: Page): Promise<string> {
  return page.evaluate(() => location.href)
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

/**
 * A site as a web server hands it out, for what a browser only does there.
 * @param files looked through at every request, so that a test can publish anew
 */
export async function siteOnWeb(files: Iterable<SiteFile>): Promise<SiteOnDisk> {
  const server = createServer((request, response) => {
    const asked = decodeURIComponent(new URL(request.url ?? '/', 'http://site').pathname).slice(1)
    const path = asked === '' || asked.endsWith('/') ? `${asked}index.html` : asked
    const content = [...files].find((file) => file.path === path)?.content
    const type = mediaTypes[extname(path)] ?? 'application/octet-stream'
    response.writeHead(content === undefined ? 404 : 200, {'content-type': type})
    response.end(content)
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const address = server.address()
  const port = typeof address === 'object' && address ? address.port : 0
  return {
    url: (path) => `http://127.0.0.1:${port}/${path}`,
    remove: async () => {
      server.closeAllConnections()
      await new Promise((resolve) => server.close(resolve))
    },
  }
}

const mediaTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
}
