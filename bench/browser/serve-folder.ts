/** I/O: a built site as a web server hands it out, with a count of what it handed out. */

import {readFile} from 'node:fs/promises'
import {createServer} from 'node:http'
import path from 'node:path'
import {mediaType} from '../../src/preview/find-file.ts'

export interface ServedFolder {
  readonly url: (path: string) => string
  /** Bytes of all answers so far, not compressed. */
  readonly bytes: () => number
  readonly close: () => void
}

export async function serveFolder(folder: string): Promise<ServedFolder> {
  let bytes = 0
  const server = createServer(async (request, response) => {
    const asked = decodeURIComponent(new URL(request.url ?? '/', 'http://site').pathname)
    const name = asked.endsWith('/') ? `${asked}index.html` : asked
    try {
      const content = await readFile(path.join(folder, name))
      bytes += content.length
      response.writeHead(200, {'content-type': mediaType(name)}).end(content)
    } catch {
      response.writeHead(404).end()
    }
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const address = server.address()
  const port = typeof address === 'object' && address ? address.port : 0
  return {
    url: (name) => `http://127.0.0.1:${port}/${name}`,
    bytes: () => bytes,
    close() {
      server.close()
      server.closeAllConnections()
    },
  }
}
