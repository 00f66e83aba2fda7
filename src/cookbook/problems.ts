import type {Problem, Severity} from './problem.ts'

/**
 * What reading the files can find, by rule id: the state that must hold, and why. An error, where
 * no other severity is named.
 */
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
  'ingredient-count': {
    summary: 'A recipe has at most 1,000 ingredient lines.',
    why: 'No dish has more; a file made to exhaust the reader stops here.',
  },
  'table-rows': {
    summary: 'A composition table has at most 100,000 rows.',
    why: 'No kitchen looks further; a file made to exhaust the reader stops here.',
  },
  'slug-name': {
    summary:
      'The file name of a recipe, plan or page is made of lower-case ASCII letters, digits and hyphens.',
    why: 'It becomes an address on the web, the same on every system.',
  },
  'one-file-a-slug': {
    summary: 'Each slug belongs to one file.',
    why: 'Of two files with one slug, one page would overwrite the other.',
  },
  'no-hidden-character': {
    summary: 'Files hold no invisible characters that change how a text reads.',
    why: 'With them a page can show another amount or name than the one that was checked.',
  },
  'readable-markdown': {
    summary: 'Markdown stays within what somebody could read: lines, levels and signs have limits.',
    why: 'A file made to exhaust the reader stops here, and the rest of the cookbook is still checked.',
  },
  'no-raw-html': {
    summary: 'Texts are Markdown; HTML in them is shown as it is written.',
    why: 'A guest recipe must not bring scripts, frames or styles onto the page.',
  },
  'no-unsafe-link': {
    summary: 'Links lead to a web or mail address, to a file of the cookbook, or within the page.',
    why: 'Other addresses can run something, or lead nowhere once the site opens from a disk.',
  },
  'unknown-ingredient-link': {
    summary: 'A link within a method leads to one of its ingredients or headings.',
    why: 'The amount is printed where it is used, and a link that leads nowhere prints none.',
  },
  'unknown-heading-link': {
    summary: 'A link within a page leads to one of its headings.',
    why: 'A link that leads nowhere leaves the reader where they are.',
  },
  'image-in-folder': {
    summary: 'Pictures come from the images folder of the cookbook.',
    why: 'The site loads nothing from elsewhere, so that it opens from a disk and tells nobody who reads it.',
  },
  'picture-present': {
    summary: 'Every picture that a text shows is in the images folder.',
    why: 'A page with a hole where the picture should be looks broken to everybody but the writer.',
  },
  'page-present': {
    summary: 'A link to a recipe, plan or page leads to a file of the cookbook.',
    why: 'A link that leads nowhere is found by a reader, at the stove.',
  },
  'image-alternative': {
    severity: 'warning',
    summary: 'Every picture has words that stand in for it.',
    why: 'Who cannot see the picture, or prints without it, reads the words.',
  },
} as const satisfies Readonly<Record<string, ReadingRule>>

interface ReadingRule {
  readonly severity?: Severity
  readonly summary: string
  readonly why: string
}

export type ReadingRuleId = keyof typeof readingRules

/** A problem before its file and severity are stamped on it. */
export interface ReadingProblem extends Omit<Problem, 'file' | 'severity'> {
  readonly ruleId: ReadingRuleId
}

/** Where readers report; it stamps the file. */
export type Report = (problem: ReadingProblem) => void

/** Collects what readers of one file report, into `problems`. */
export function reportInto(problems: Problem[], file: string): Report {
  return (problem) => {
    const rule: ReadingRule = readingRules[problem.ruleId]
    problems.push({severity: rule.severity ?? 'error', file, ...problem})
  }
}
