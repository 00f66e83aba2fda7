import type {Problem, Severity} from './problem.ts'

interface FolderRule {
  readonly severity: Severity
  readonly summary: string
  readonly why: string
}

/** What reading the cookbook folder can find, by rule id. */
export const folderRules = {
  'file-name': {
    severity: 'warning',
    summary: 'Every file that looks meant is one that is read.',
    why: 'A recipe with another ending, or in a folder of its own, would be missing without a word.',
  },
  'inside-folder': {
    severity: 'error',
    summary: 'Every file of a cookbook lies in its folder.',
    why: 'A link in a cookbook from somebody else could put any file of your machine on a page.',
  },
  'utf8-text': {
    severity: 'error',
    summary: 'Recipes, foods and tables are plain text in UTF-8.',
    why: 'In another encoding a half becomes another sign, and a picture is no recipe.',
  },
  'still-picture': {
    severity: 'error',
    summary: 'An SVG holds nothing that runs, moves, loads or leads elsewhere.',
    why: 'On a page it is a picture; opened by itself it is a page of its own, without the policy that keeps scripts from running.',
  },
  'file-size': {
    severity: 'error',
    summary: 'Files are no larger than a cookbook needs.',
    why: 'A file that is not what it seems is refused before it costs memory and minutes.',
  },
  'cookbook-size': {
    severity: 'error',
    summary: 'A cookbook has no more files than one build can hold.',
    why: 'A folder filled by mistake is refused before it costs memory and minutes.',
  },
} as const satisfies Readonly<Record<string, FolderRule>>

/** A problem of the folder, with its rule's severity. */
export function folderProblem(
  ruleId: keyof typeof folderRules,
  problem: Omit<Problem, 'ruleId' | 'severity'>,
): Problem {
  return {ruleId, severity: folderRules[ruleId].severity, ...problem}
}
