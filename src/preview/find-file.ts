import type {PreviewFiles} from './lazy-files.ts'

/** What stands at an address of the site. */
export type Found =
  | {readonly kind: 'file'; readonly path: string; readonly content: string | Uint8Array}
  /** A folder asked for without its `/`, so that links of its page would lead astray. */
  | {readonly kind: 'moved'; readonly to: string}
  | {readonly kind: 'missing'}

/**
 * Looks a request's target up among the files in memory: nothing else can be reached, whatever
 * dots and escapes it has.
 */
export function findFile(target: string, files: PreviewFiles): Found {
  const path = decoded(target.replace(/[?#].*$/su, '').slice(1))
  if (path === undefined) return {kind: 'missing'}
  const full = path === '' || path.endsWith('/') ? `${path}index.html` : path
  const content = files.get(full)
  if (content !== undefined) return {kind: 'file', path: full, content}
  if (!files.has(`${path}/index.html`)) return {kind: 'missing'}
  return {kind: 'moved', to: `/${path.split('/').map(encodeURIComponent).join('/')}/`}
}

function decoded(text: string): string | undefined {
  try {
    return decodeURIComponent(text)
  } catch {
    return undefined
  }
}

const types: ReadonlyMap<string, string> = new Map([
  ['html', 'text/html; charset=utf-8'],
  ['css', 'text/css; charset=utf-8'],
  ['js', 'text/javascript; charset=utf-8'],
  ['txt', 'text/plain; charset=utf-8'],
  ['xml', 'application/xml; charset=utf-8'],
  ['svg', 'image/svg+xml'],
  ['png', 'image/png'],
  ['jpg', 'image/jpeg'],
  ['jpeg', 'image/jpeg'],
  ['webp', 'image/webp'],
  ['avif', 'image/avif'],
  ['gif', 'image/gif'],
])

/** The media type of a file by the end of its name; what is not known is bytes to be saved. */
export function mediaType(path: string): string {
  const ending = /\.(?<ending>[a-z]+)$/iu.exec(path)?.groups?.ending ?? ''
  return types.get(ending.toLowerCase()) ?? 'application/octet-stream'
}
