/** I/O: a server on this machine that shows a cookbook's pages from memory. */

import {createServer, type IncomingMessage, type Server, type ServerResponse} from 'node:http'
import type {AddressInfo, Socket} from 'node:net'
import {eventsPath} from './addresses.ts'
import {findFile, mediaType} from './find-file.ts'
import type {PreviewSite} from './preview-site.ts'
import {hostsOf, refusal} from './request-guard.ts'

/** A server that listens. */
export interface PreviewServer {
  readonly port: number
  /** Shows another state of the cookbook, and tells the pages that are open. */
  readonly show: (site: PreviewSite) => void
  readonly close: () => Promise<void>
}

export interface Listening {
  /** The address to listen on. */
  readonly host: string
  /** 0 takes any that is free. */
  readonly port: number
  /** Addresses that readers may ask for: `127.0.0.1`. */
  readonly addresses: readonly string[]
}

/** More at once than a browser's tabs need; further connections are closed unanswered. */
const mostConnections = 256
/** Pages that are told of rebuilds, at once. */
const mostListeners = 64
const longestHeadBytes = 8192
/** A connection that says nothing for so long is closed; so is a request that is not whole. */
const patienceMilliseconds = 2000

/** Starts a server; fails as the system does when the port is taken. */
export async function startPreview(
  first: PreviewSite,
  listening: Listening,
): Promise<PreviewServer> {
  let site = first
  let hosts: ReadonlySet<string> = new Set()
  const listeners = new Set<ServerResponse>()
  const server = createServer(
    {
      maxHeaderSize: longestHeadBytes,
      headersTimeout: patienceMilliseconds,
      requestTimeout: patienceMilliseconds,
      keepAliveTimeout: patienceMilliseconds,
      connectionsCheckingInterval: 500,
    },
    (request, response) => {
      response.on('error', () => response.destroy())
      if (refused(request, response, hosts)) return
      if (request.url === `/${eventsPath}`) listen(response, listeners, site.generation)
      else answer(request, response, site)
    },
  )
  server.maxConnections = mostConnections
  server.on('clientError', turnAway)
  // Nothing here changes protocol.
  server.on('upgrade', (_request, socket: Socket) => socket.destroy())
  const port = await listened(server, listening)
  hosts = hostsOf(listening.addresses, port)
  return {
    port,
    show(next) {
      site = next
      for (const listener of listeners) listener.write(built(site.generation))
    },
    close: () => closed(server),
  }
}

async function listened(server: Server, {host, port}: Listening): Promise<number> {
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, host, resolve)
  })
  const address: AddressInfo | string | null = server.address()
  return typeof address === 'object' && address !== null ? address.port : port
}

async function closed(server: Server): Promise<void> {
  await new Promise<void>((resolve) => {
    server.close(() => resolve())
    server.closeAllConnections()
  })
}

/** Answers what is no HTTP, or too much of it, and lets go. */
function turnAway(error: Error & {readonly code?: string}, socket: Socket): void {
  if (socket.writable && error.code !== 'ECONNRESET') {
    const isLong = error.code === 'HPE_HEADER_OVERFLOW'
    const status = isLong ? '431 Request Header Fields Too Large' : '400 Bad Request'
    socket.end(`HTTP/1.1 ${status}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n`)
  }
  socket.destroySoon()
}

function refused(
  request: IncomingMessage,
  response: ServerResponse,
  hosts: ReadonlySet<string>,
): boolean {
  const {method = '', url = '', headers} = request
  const length = headers['content-length']
  const hasBody =
    headers['transfer-encoding'] !== undefined || (length !== undefined && length !== '0')
  const asked = {method, target: url, host: headers.host, origin: headers.origin, hasBody}
  const refuse = refusal(asked, hosts)
  if (refuse === undefined) return false
  const {status, reason} = refuse
  response.writeHead(status, {
    ...sharedHeaders,
    'Content-Type': 'text/plain; charset=utf-8',
    // What may still come behind the head is not read.
    Connection: 'close',
    ...(status === 405 && {Allow: 'GET, HEAD'}),
  })
  response.end(`${reason}\n`)
  return true
}

const sharedHeaders = {
  'Cache-Control': 'no-store',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
} as const

/** Pages load from this server alone; a picture opened by itself runs nothing. */
const pagePolicy =
  "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
const filePolicy = "default-src 'none'; style-src 'unsafe-inline'; sandbox"

function answer(request: IncomingMessage, response: ServerResponse, site: PreviewSite): void {
  const found = findFile(request.url ?? '', site.files)
  if (found.kind === 'moved') {
    response.writeHead(302, {...sharedHeaders, Location: found.to}).end()
    return
  }
  const {path, content} =
    found.kind === 'file' ? found : {path: 'missing.html', content: site.missing}
  const type = mediaType(path)
  response.writeHead(found.kind === 'file' ? 200 : 404, {
    ...sharedHeaders,
    'Content-Type': type,
    'Content-Length': Buffer.byteLength(content),
    'Content-Security-Policy': type.startsWith('text/html') ? pagePolicy : filePolicy,
  })
  response.end(request.method === 'HEAD' ? undefined : content)
}

/** Keeps a page's connection open to tell it of rebuilds (HTML Standard, server-sent events). */
function listen(
  response: ServerResponse,
  listeners: Set<ServerResponse>,
  generation: string,
): void {
  const [oldest] = listeners
  if (oldest !== undefined && listeners.size >= mostListeners) oldest.end()
  listeners.add(response)
  response.on('close', () => listeners.delete(response))
  response.writeHead(200, {...sharedHeaders, 'Content-Type': 'text/event-stream'})
  response.write(`retry: 500\n${built(generation)}`)
}

function built(generation: string): string {
  return `event: built\ndata: ${generation}\n\n`
}
