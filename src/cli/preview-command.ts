import {createHash} from 'node:crypto'
import {isIP} from 'node:net'
import {networkInterfaces} from 'node:os'
import process from 'node:process'
import {EnvironmentFailure, errorCode} from '../cookbook/environment-failure.ts'
import {readCookbook} from '../cookbook/read-folder.ts'
import type {ReadCookbook} from '../cookbook/sources.ts'
import {UnderstoodBefore} from '../cookbook/understood-before.ts'
import {previewScriptPath, previewStylesheetPath} from '../preview/addresses.ts'
import {type Listening, type PreviewServer, startPreview} from '../preview/preview-server.ts'
import {type PreviewAssets, type PreviewSite, previewSite} from '../preview/preview-site.ts'
import {watchFolder} from '../preview/watch-folder.ts'
import {countText} from '../report/count-text.ts'
import {filePathBelow} from '../report/file-path.ts'
import {message} from '../report/message.ts'
import {printable} from '../report/printable.ts'
import {textMessages} from '../report/text-report.ts'
import {readAsset, readAssets} from '../site/read-assets.ts'
import {paintFor} from './colour.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print, remark, tell} from './output.ts'
import type {SharedOptions} from './shared-options.ts'
import {today} from './today.ts'

export interface PreviewOptions extends SharedOptions {
  readonly content: string
  readonly port?: number
  readonly host?: string
}

/** Serves the cookbook until the writer ends it, and again after every save. */
export async function previewCommand(options: PreviewOptions): Promise<ExitCode> {
  const {content, host} = options
  const assets = await previewAssets()
  const before = new UnderstoodBefore()
  const siteOf = (read: ReadCookbook): PreviewSite =>
    previewSite(read, assets, {generation: generationOf(read), today: today(), before})
  let site = siteOf(await readCookbook(content))
  const server = await started(site, options)
  if (host !== undefined) {
    tell(`Warning: everybody who can reach ${host} can read this preview, drafts included.\n`)
  }
  report(site, options)
  print(`Preview at http://${inAddress(host ?? '127.0.0.1')}:${server.port}/\n`)
  const rebuild = oneAtATime(async () => {
    const read = await readCookbook(content)
    if (generationOf(read) === site.generation) return
    site = siteOf(read)
    server.show(site)
    report(site, options)
  })
  const unwatch = await watchFolder(content, rebuild)
  // What was saved while the watch was being set up.
  rebuild()
  await endAsked()
  await unwatch()
  await server.close()
  return exitCodes.fine
}

async function previewAssets(): Promise<PreviewAssets> {
  return {
    site: await readAssets(),
    own: [
      {path: previewScriptPath, content: await readAsset('preview.js')},
      {path: previewStylesheetPath, content: await readAsset('preview.css')},
    ],
  }
}

/** Names the bytes a cookbook was read from, so that a save that changed none is no rebuild. */
function generationOf({sources: {texts, images}, problems}: ReadCookbook): string {
  const hash = createHash('sha256')
  for (const {path, text} of texts) hash.update(`${path}\0${text}\0`)
  for (const {path, bytes} of images) hash.update(`${path}\0`).update(bytes)
  return hash.update(JSON.stringify(problems)).digest('hex').slice(0, 16)
}

function report({problems}: PreviewSite, {content, color, quiet}: PreviewOptions): void {
  const filePath = filePathBelow(content)
  const errors = problems.filter(({severity}) => severity === 'error')
  const messages = errors.map((problem) => message(problem, filePath))
  for (const text of textMessages(messages, paintFor('stderr', color))) tell(text)
  const others = countText(problems.length - errors.length, 'other finding')
  remark(`Pages made: ${countText(errors.length, 'error')}, ${others}.\n`, {quiet})
}

/** Where the port was not asked for, the first free one of so many. */
const portsTried = 20
const firstPort = 7250

async function started(site: PreviewSite, {port, host}: PreviewOptions): Promise<PreviewServer> {
  const wanted = {host: host ?? '127.0.0.1', addresses: addressesOf(host)}
  const ports =
    port === undefined ? Array.from({length: portsTried}, (_, n) => firstPort + n) : [port]
  for (const one of ports) {
    const server = await startedAt(site, {...wanted, port: one})
    if (server !== undefined) return server
  }
  const named =
    port === undefined ? `The ports ${firstPort} to ${ports.at(-1)} are` : `Port ${port} is`
  throw new EnvironmentFailure(`${named} in use`, 'Name a free one with `--port NUMBER`')
}

/** Undefined where another program has the port. */
async function startedAt(
  site: PreviewSite,
  listening: Listening,
): Promise<PreviewServer | undefined> {
  try {
    return await startPreview(site, listening)
  } catch (error) {
    if (errorCode(error) === 'EADDRINUSE') return undefined
    if (errorCode(error) === 'EACCES') {
      throw new EnvironmentFailure(`Port ${listening.port} is kept for the system`)
    }
    throw error
  }
}

/** The addresses a reader may ask for; `0.0.0.0` and `::` stand for all of this machine's. */
function addressesOf(host: string | undefined): readonly string[] {
  if (host === undefined) return ['127.0.0.1']
  const own = Object.values(networkInterfaces()).flatMap((list) =>
    (list ?? []).map(({address}) => address),
  )
  if (host === '0.0.0.0' || host === '::') return own
  if (isIP(host) !== 0 && own.includes(host)) return [host]
  throw new EnvironmentFailure(
    `${printable(host)} is no address of this machine`,
    `Name one with \`--host\`: ${[...own, '0.0.0.0'].join(', ')}`,
  )
}

function inAddress(host: string): string {
  return host.includes(':') ? `[${host}]` : host
}

/** Runs work that is asked for again while it runs once more after it; a disk that says no is told. */
function oneAtATime(work: () => Promise<void>): () => void {
  let isAsked = false
  let isRunning = false
  async function run(): Promise<void> {
    isRunning = true
    while (isAsked) {
      isAsked = false
      try {
        await work()
      } catch (error) {
        if (!(error instanceof EnvironmentFailure)) throw error
        tell(`scalepan: ${error.message}: the preview stays as it was\n`)
      }
    }
    isRunning = false
  }
  return () => {
    isAsked = true
    if (!isRunning) void run()
  }
}

async function endAsked(): Promise<void> {
  await new Promise<void>((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve())
  })
}
