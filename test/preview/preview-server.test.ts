import {once} from 'node:events'
import {connect, type Socket} from 'node:net'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {type PreviewServer, startPreview} from '../../src/preview/preview-server.ts'
import type {PreviewSite} from '../../src/preview/preview-site.ts'

const files = new Map<string, string>([
  ['index.html', '<!DOCTYPE html><title>First</title>'],
  ['images/bowl.svg', '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>'],
])
const site: PreviewSite = {generation: 'one', files, missing: 'No such page', problems: []}

let server: PreviewServer

beforeAll(async () => {
  server = await startPreview(site, {host: '127.0.0.1', port: 0, addresses: ['127.0.0.1']})
})
afterAll(() => server.close())

function address(path: string): string {
  return `http://127.0.0.1:${server.port}${path}`
}

function opened(): Socket {
  // A server that hangs up on a flood is what some of the tests ask for.
  return connect(server.port, '127.0.0.1').on('error', () => undefined)
}

/** Everything the server says to some bytes, until it hangs up. */
async function saidTo(bytes: string | Uint8Array): Promise<string> {
  const socket = opened()
  let said = ''
  socket.on('data', (chunk) => {
    said += chunk.toString('latin1')
  })
  socket.write(bytes)
  await once(socket, 'close')
  return said
}

describe('the server', () => {
  test('shows a page, with headers that keep it to itself', async () => {
    const response = await fetch(address('/'))
    expect(await response.text()).toContain('First')
    expect(response.headers.get('content-security-policy')).toContain("frame-ancestors 'none'")
    expect(response.headers.get('cross-origin-resource-policy')).toBe('same-origin')
    expect(response.headers.get('x-content-type-options')).toBe('nosniff')
    expect(response.headers.get('cache-control')).toBe('no-store')
  })

  test('shows a picture in a box where nothing runs', async () => {
    const response = await fetch(address('/images/bowl.svg'))
    expect(response.headers.get('content-security-policy')).toBe(
      "default-src 'none'; style-src 'unsafe-inline'; sandbox",
    )
  })

  test('answers 404 with a page that hears of rebuilds', async () => {
    const response = await fetch(address('/recipes/none/'))
    expect(response.status).toBe(404)
    expect(await response.text()).toBe('No such page')
  })

  test('answers HEAD with a head', async () => {
    const response = await fetch(address('/'), {method: 'HEAD'})
    expect(response.status).toBe(200)
    expect(await response.text()).toBe('')
  })

  test('takes no other name, method or body', async () => {
    expect(await saidTo('GET / HTTP/1.1\r\nHost: rebound.example\r\n\r\n')).toMatch(
      /^HTTP\/1.1 421/u,
    )
    expect((await fetch(address('/'), {method: 'PUT'})).status).toBe(405)
    const host = `Host: 127.0.0.1:${server.port}`
    const withBody = `GET / HTTP/1.1\r\n${host}\r\nContent-Length: 1000000000\r\n\r\n`
    expect(await saidTo(withBody)).toMatch(/^HTTP\/1.1 413/u)
  })
})

describe('the server survives', () => {
  test.each([
    ['no words at all', '\r\n\r\n\r\n\r\n'],
    ['noise', Uint8Array.from({length: 4096}, (_, index) => (index * 197 + 11) % 256)],
    ['another protocol', '\u0016\u0003\u0001\u0002\u0000\u0001\u0000'],
    ['a head without an end', `GET / HTTP/1.1\r\nX: ${'a'.repeat(20_000)}`],
    ['two lengths', 'GET / HTTP/1.1\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\n'],
    [
      'a length and chunks',
      'POST / HTTP/1.1\r\nContent-Length: 4\r\nTransfer-Encoding: chunked\r\n\r\n',
    ],
    [
      'an upgrade',
      'GET / HTTP/1.1\r\nHost: x\r\nConnection: Upgrade\r\nUpgrade: websocket\r\n\r\n',
    ],
    ['a target with a line end', 'GET /\rX HTTP/1.1\r\n\r\n'],
  ])('%s', async (_, bytes) => {
    expect(await saidTo(bytes)).not.toMatch(/^HTTP\/1.1 200/u)
    expect((await fetch(address('/'))).status).toBe(200)
  })

  test('10,000 connections, many of them silent, many broken off', async () => {
    const began = performance.now()
    const request = `GET / HTTP/1.1\r\nHost: 127.0.0.1:${server.port}\r\nConnection: close\r\n\r\n`
    let answered = 0
    for (let round = 0; round < 25; round++) {
      const sockets = Array.from({length: 400}, (_, index) => {
        const socket = opened()
        socket.once('data', (said) => {
          if (said.toString('latin1').startsWith('HTTP/1.1 200')) answered += 1
        })
        if (index % 4 === 0) socket.end(request)
        if (index % 4 === 1) socket.write('GET / HT')
        if (index % 4 === 2) socket.write('nonsense\r\n\r\n')
        return socket
      })
      await Promise.all(
        sockets.filter((_, index) => index % 4 === 0).map((one) => once(one, 'close')),
      )
      for (const socket of sockets) socket.destroy()
    }
    expect(answered).toBeGreaterThan(1000)
    expect((await fetch(address('/'))).status).toBe(200)
    expect(performance.now() - began).toBeLessThan(50_000)
  })
})

test('open pages hear which state of the cookbook is shown, and of the next', async () => {
  const response = await fetch(address('/.preview/events'))
  expect(response.headers.get('content-type')).toBe('text/event-stream')
  const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader()
  let heard = ''
  async function hear(words: string): Promise<void> {
    while (!heard.includes(words)) {
      const {value, done} = (await reader?.read()) ?? {done: true}
      if (done) throw new Error(`The stream ended before ${words}`)
      heard += value
    }
  }
  await hear('event: built\ndata: one\n\n')
  server.show({...site, generation: 'two', files: new Map([['index.html', 'Second']])})
  await hear('event: built\ndata: two\n\n')
  expect(await (await fetch(address('/'))).text()).toBe('Second')
  await reader?.cancel()
})
