import {Option} from 'commander'

/** An option that may be given several times; what it is given is a list. */
export function listed(flags: string, description: string): Option {
  return new Option(flags, description)
    .default([], 'none')
    .argParser((text: string, before: readonly string[]) => [...before, text])
}
