/**
 * The worker that keeps pages for when there is no network. What the network answers in time wins,
 * so nobody reads an old figure who could read a new one; else what was kept stands in.
 */

interface Waiting {
  waitUntil(promise: Promise<unknown>): void
}

interface Asked extends Waiting {
  readonly request: Request
  respondWith(response: Promise<Response>): void
}

interface Scope {
  readonly registration: {readonly scope: string}
  readonly clients: {claim(): Promise<void>}
  skipWaiting(): Promise<void>
  addEventListener(name: 'install' | 'activate', listener: (event: Waiting) => void): void
  addEventListener(name: 'fetch', listener: (event: Asked) => void): void
}

declare const self: Scope
/** Written before this code by the build: pages that are kept before anybody asks for them. */
declare const offlineFiles: {readonly version: string; readonly paths: readonly string[]}

/** Longer than this nobody waits between the shelves. */
const patienceMilliseconds = 4000

const {scope} = self.registration
const cacheName = `scalepan ${scope}`

self.addEventListener('install', (event) => event.waitUntil(install()))
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()))
self.addEventListener('fetch', (event) => {
  const {method, url} = event.request
  if (method === 'GET' && url.startsWith(scope)) event.respondWith(answer(event))
})

async function install(): Promise<void> {
  const cache = await caches.open(cacheName)
  const requests = offlineFiles.paths.map(
    (path) => new Request(new URL(path, scope), {cache: 'reload'}),
  )
  await cache.addAll(requests)
  await self.skipWaiting()
}

async function answer(event: Asked): Promise<Response> {
  const {request} = event
  const cache = await caches.open(cacheName)
  const key = pageKey(request.url)
  const fromNetwork = fetch(request).then(async (response) => {
    if (response.ok && response.type === 'basic') await cache.put(key, response.clone())
    return response
  })
  // A slow answer still renews what is kept.
  event.waitUntil(fromNetwork.catch(() => undefined))
  const inTime = await Promise.race([fromNetwork.catch(() => undefined), patience()])
  return inTime ?? (await cache.match(key)) ?? fromNetwork.catch(() => Response.error())
}

function patience(): Promise<undefined> {
  return new Promise((resolve) => {
    setTimeout(() => resolve(undefined), patienceMilliseconds)
  })
}

/** A folder and its `index.html` are one page, whatever stands behind them. */
function pageKey(address: string): string {
  const url = new URL(address)
  url.search = ''
  url.hash = ''
  if (url.pathname.endsWith('/')) url.pathname += 'index.html'
  return url.href
}

export {}
