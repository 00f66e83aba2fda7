import {readFileSync} from 'node:fs'

/** The version of this package, from its own package.json, two folders above source and bundle. */
export function version(): string {
  const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8')
  const read: unknown = JSON.parse(text)
  if (typeof read === 'object' && read !== null && 'version' in read) return String(read.version)
  throw new Error('package.json has no version')
}
