/** What of a request decides whether it is answered. */
export interface Asked {
  readonly method: string
  /** The target as it was sent: `/recipes/barley-pot/`. */
  readonly target: string
  readonly host: string | undefined
  readonly origin: string | undefined
  /** Whether something comes behind the head. */
  readonly hasBody: boolean
}

/** Why a request is turned away: RFC 9110, section 15. */
export interface Refusal {
  readonly status: 400 | 403 | 405 | 413 | 414 | 421
  readonly reason: string
}

/** Longer targets than any page has; in characters. */
const longestTarget = 2048

/**
 * Turns away whatever is not a reader on this machine. A page elsewhere can make a browser ask a
 * loopback server, by its address or by a name that was pointed at it since (DNS rebinding): the
 * Host and Origin a browser sends tell both, and neither can be set by a page (Fetch Standard,
 * "forbidden request-header").
 * @param hosts what readers may call this server: `127.0.0.1:7250`
 */
export function refusal(asked: Asked, hosts: ReadonlySet<string>): Refusal | undefined {
  const {method, target, host, origin, hasBody} = asked
  if (host === undefined || !hosts.has(host.toLowerCase())) {
    return {status: 421, reason: 'This server answers to its own address only'}
  }
  if (origin !== undefined && !hosts.has(origin.toLowerCase().replace(/^http:\/\//u, ''))) {
    return {status: 403, reason: 'This server answers its own pages only'}
  }
  if (method !== 'GET' && method !== 'HEAD') return {status: 405, reason: 'Pages can be read only'}
  if (hasBody) return {status: 413, reason: 'Nothing is taken here'}
  if (target.length > longestTarget) return {status: 414, reason: 'No page has so long an address'}
  return target.startsWith('/') ? undefined : {status: 400, reason: 'Not the address of a page'}
}

/** What readers may call a server, by the addresses it listens on; a v6 address stands in `[]`. */
export function hostsOf(addresses: readonly string[], port: number): ReadonlySet<string> {
  const names = addresses.map((address) => (address.includes(':') ? `[${address}]` : address))
  const local = names.some((name) => name.startsWith('127.') || name === '[::1]')
  const all = [...names, ...(local ? ['localhost'] : [])]
  // A browser leaves out the port that http has anyway.
  return new Set(all.flatMap((name) => [`${name}:${port}`, ...(port === 80 ? [name] : [])]))
}
