/** I/O: small JSON files of the work folder, read without trusting what they hold. */

import {readFileSync} from 'node:fs'
import {errorCode} from '../cookbook/environment-failure.ts'

/** What a file of JSON says; `undefined` where there is no file, null where it is no JSON. */
export function readJsonFile(full: string): unknown {
  try {
    return JSON.parse(readFileSync(full, 'utf8'))
  } catch (error) {
    if (error instanceof SyntaxError) return null
    // Where a file stands in the way of a folder there is none either; who writes there will be told.
    if (['ENOENT', 'ENOTDIR'].includes(errorCode(error) ?? '')) return undefined
    throw error
  }
}

/** A field of what may be an object. */
export function fieldOf(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? Reflect.get(value, key)
    : undefined
}
