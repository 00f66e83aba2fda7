/** I/O: tidying that never gets in the way. */

import {rmdirSync} from 'node:fs'
import {errorCode} from '../cookbook/environment-failure.ts'

/** Removes a folder that holds nothing. One that is in use, gone or refused just stays. */
export function removeIfEmpty(folder: string): void {
  try {
    rmdirSync(folder)
  } catch (error) {
    if (errorCode(error) === undefined) throw error
  }
}
