/**
 * A short sign of contents, to see that they changed; not to be trusted against malice. FNV-1a, 32
 * bits: offset basis 2166136261, prime 16777619 (Fowler, Noll, Vo; from memory).
 */
export function fingerprint(contents: readonly (string | Uint8Array)[]): string {
  let sign = 2166136261
  for (const content of contents) {
    const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content
    for (const byte of bytes) sign = Math.imul(sign ^ byte, 16777619)
    // Where one content ends and the next begins counts too.
    sign = Math.imul(sign ^ 0xff, 16777619)
  }
  return (sign >>> 0).toString(16).padStart(8, '0')
}
