/** Where a link or picture in a text of the cookbook leads. */
export type LinkTarget =
  /** Within the page; `anchor` without `#`. */
  | {readonly kind: 'anchor'; readonly anchor: string}
  /** A web or mail address, in its normal form. */
  | {readonly kind: 'address'; readonly href: string}
  /** A file of the cookbook, relative to its folder. */
  | {readonly kind: 'file'; readonly path: string; readonly anchor?: string}
  | {readonly kind: 'refused'; readonly fault: string}

const safeSchemes: ReadonlySet<string> = new Set(['http:', 'https:', 'mailto:'])

/**
 * Stands for the cookbook folder while a link is resolved; `.invalid` is never a host (RFC 2606).
 * The step below it makes a link that climbs out of the folder show.
 */
const folder = 'https://cookbook.invalid/folder/'

/**
 * What a browser would make of a link, so that no way of writing one (control characters,
 * backslashes, two slashes) means something else there than here.
 * @param written the link, as the Markdown or YAML parser gives it
 * @param source path of the file it stands in, relative to the cookbook folder
 */
export function linkTarget(written: string, source: string): LinkTarget {
  if (written.startsWith('#')) return {kind: 'anchor', anchor: decoded(written.slice(1))}
  const base = new URL(encodedPath(source), folder)
  if (!URL.canParse(written, base)) return {kind: 'refused', fault: 'is no address'}
  const url = new URL(written, base)
  if (url.href.startsWith(folder)) {
    const path = decoded(url.pathname.slice(new URL(folder).pathname.length))
    const anchor = decoded(url.hash.slice(1))
    return {kind: 'file', path, ...(anchor !== '' && {anchor})}
  }
  if (!safeSchemes.has(url.protocol)) {
    return {kind: 'refused', fault: `has the scheme \`${url.protocol}\``}
  }
  if (!scheme.test(written)) return {kind: 'refused', fault: 'leads out of the cookbook'}
  return {kind: 'address', href: url.href}
}

const scheme = /^\s*(?:https?:[\\/]{2}|mailto:)/i

/** The way from one file of the cookbook to another, for an attribute. */
export function hrefFrom(source: string, path: string, anchor?: string): string {
  const up = '../'.repeat(source.split('/').length - 1)
  const fragment = anchor === undefined ? '' : `#${encodeURIComponent(anchor)}`
  return `${up}${encodedPath(path)}${fragment}`
}

function encodedPath(path: string): string {
  return path.split('/').map(encodeURIComponent).join('/')
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text)
  } catch {
    // A lone `%` opens no escape: the writer meant the sign.
    return text
  }
}
