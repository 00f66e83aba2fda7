import type {Command} from 'commander'

/** Options every command understands, before or after its name. */
export interface SharedOptions {
  readonly color: boolean
  /** Errors and results only: no warnings, summaries, progress or next steps. */
  readonly quiet: boolean
}

/** The options of a call that every command understands. */
export function sharedOptions(command: Command): SharedOptions {
  const {color, quiet} = command.optsWithGlobals()
  return {color: color !== false, quiet: quiet === true}
}
