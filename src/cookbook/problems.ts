import type {Problem} from './problem.ts'

/** What reading the files can find, by rule id: the state that must hold, and why. All are errors. */
export const readingRules = {
  'front-matter-present': {
    summary: 'A recipe, plan or page opens with front matter between two `---` lines.',
    why: 'Without it there is no title and no ingredient to compute from.',
  },
  'yaml-readable': {
    summary: 'Front matter and .yaml files are YAML that can be read in one way only.',
    why: 'A slip in the punctuation moves a value to another key in silence.',
  },
  'no-alias': {
    summary: 'YAML anchors, aliases and tags are not used.',
    why: 'A value written elsewhere has no place of its own for a message to point at, and a few lines of them can grow into gigabytes.',
  },
  'no-deep-nesting': {
    summary: 'Values are nested a few levels deep at most.',
    why: 'No field needs more, and a file made to exhaust the reader stops here.',
  },
  'no-duplicate-key': {
    summary: 'Each key stands once in its mapping.',
    why: 'Of two values for one key, one would be dropped in silence.',
  },
  'known-key': {
    summary: 'Every key is one that scalepan knows.',
    why: 'A misspelt key would be left out in silence, and with it a figure or a caution.',
  },
  'key-present': {
    summary: 'Keys that figures depend on are there, with a value.',
    why: 'What is missing is never guessed.',
  },
  'readable-value': {
    summary: 'Each value has the form its key asks for.',
    why: 'A value read in another sense than the writer meant is worse than none.',
  },
} as const

export type ReadingRuleId = keyof typeof readingRules

/** A problem before its file and severity are stamped on it. */
export interface ReadingProblem extends Omit<Problem, 'file' | 'severity'> {
  readonly ruleId: ReadingRuleId
}

/** Where readers report; it stamps the file. */
export type Report = (problem: ReadingProblem) => void

/** Collects what readers of one file report, into `problems`. */
export function reportInto(problems: Problem[], file: string): Report {
  return (problem) => problems.push({severity: 'error', file, ...problem})
}
