import process from 'node:process'
import {serve} from '../editor/serve.ts'
import {today} from './today.ts'

/** Speaks with an editor until it ends the server; the server ends the process with its code. */
export function lspCommand(): void {
  serve({input: process.stdin, output: process.stdout, today})
}
