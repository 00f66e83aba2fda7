import path from 'node:path'
import process from 'node:process'
import {pathToFileURL} from 'node:url'
import pc from 'picocolors'
import type {Paint} from '../report/paint.ts'

/** What decides about colour, beside the stream itself. */
interface Surroundings {
  readonly NO_COLOR?: string | undefined
  readonly FORCE_COLOR?: string | undefined
  readonly TERM?: string | undefined
}

/**
 * Whether a stream gets colour: `--no-color` first, then NO_COLOR (https://no-color.org, any text
 * but none), then FORCE_COLOR (0 or false turn it off), then whether it is a terminal that can.
 */
export function hasColour(
  wanted: boolean,
  {NO_COLOR, FORCE_COLOR, TERM}: Surroundings,
  isTerminal: boolean,
): boolean {
  if (!wanted || (NO_COLOR !== undefined && NO_COLOR !== '')) return false
  if (FORCE_COLOR !== undefined && FORCE_COLOR !== '') {
    return FORCE_COLOR !== '0' && FORCE_COLOR !== 'false'
  }
  return isTerminal && TERM !== 'dumb'
}

/** The same of links to files: escape codes of which a pipe, or who forces colour into one, wants none. */
export function hasLinks(wanted: boolean, around: Surroundings, isTerminal: boolean): boolean {
  return isTerminal && around.TERM !== 'linux' && hasColour(wanted, around, isTerminal)
}

/** A text that leads to a file where it is clicked: OSC 8, "Hyperlinks in Terminal Emulators". */
function linked(text: string, file: string): string {
  const {href} = pathToFileURL(path.resolve(file))
  return `\u001B]8;;${href}\u001B\\${text}\u001B]8;;\u001B\\`
}

/** Colours and links for one of the two streams. */
export function paintFor(stream: 'stdout' | 'stderr', wanted: boolean): Paint {
  // In a pipe `isTTY` is undefined, whatever its type says, and would ask picocolors to decide.
  const isTerminal = process[stream].isTTY === true
  const {bold, dim, red, yellow, cyan} = pc.createColors(hasColour(wanted, process.env, isTerminal))
  const link = hasLinks(wanted, process.env, isTerminal) ? linked : (text: string) => text
  return {bold, dim, red, yellow, cyan, link}
}
