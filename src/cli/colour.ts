import process from 'node:process'
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

/** Colours for one of the two streams. */
export function paintFor(stream: 'stdout' | 'stderr', wanted: boolean): Paint {
  // In a pipe `isTTY` is undefined, whatever its type says, and would ask picocolors to decide.
  const isTerminal = process[stream].isTTY === true
  return pc.createColors(hasColour(wanted, process.env, isTerminal))
}
