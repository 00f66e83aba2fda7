import type {Diet} from '../../src/check/absences/diet.ts'
import {type Caution, localRulesFirst} from '../../src/check/safety/cautions.ts'

/** What the checks say of safety and of promises; another language has it in its own words. */
export const safety = {
  caution: ({text}: Caution): string => text,
  localRulesFirst,
  /** A word of `free from` or `suits`, as the writer has it. */
  promise: (word: string): string => word,
  leftOpen: ({leavesOpen}: Diet): string | undefined => leavesOpen,
}
