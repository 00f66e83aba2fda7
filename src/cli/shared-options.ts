import type {Command} from 'commander'

/** Options every command understands, before or after its name. */
export interface SharedOptions {
  readonly color: boolean
}

/** The options of a call that every command understands. */
export function sharedOptions(command: Command): SharedOptions {
  return {color: command.optsWithGlobals().color !== false}
}
