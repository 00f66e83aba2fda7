import process from 'node:process'
import {errorCode} from '../cookbook/environment-failure.ts'

/** Results go to standard output, everything said about the work to standard error. */

/** Prints a piece of the result. */
export function print(text: string): void {
  process.stdout.write(text)
}

/** Tells something about the work. */
export function tell(text: string): void {
  process.stderr.write(text)
}

/** Tells something that nobody has to know; nothing where only errors are wanted. */
export function remark(text: string, {quiet}: {readonly quiet: boolean}): void {
  if (!quiet) tell(text)
}

/** Ends quietly when the reader of the output has gone (`scalepan check | head`). */
export function endQuietlyOnBrokenPipe(): void {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: Error) => {
      if (errorCode(error) !== 'EPIPE') throw error
      process.exit()
    })
  }
}
