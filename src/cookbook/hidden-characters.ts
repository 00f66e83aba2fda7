import {placeBetween, pointsOf} from './points.ts'
import type {Report} from './problems.ts'

/**
 * Characters that have no shape of their own and change how the rest reads: controls, line and
 * paragraph separators, zero-width spaces, and the marks that override or isolate the direction
 * of writing (Unicode Standard Annex 9, section 2; Unicode Technical Report 36, section 2.5).
 * Joiners and plain direction marks stay allowed: scripts and emoji are written with them.
 */
const hidden =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
  /[\0-\x08\v\f\x0E-\x1F\x7F-\x9F\u180E\u200B\u2028-\u202E\u2060-\u206F\uFEFF\uFFF9-\uFFFB]/g

/** Reports of one file at most; where there are more, they came in together. */
const mostReported = 5

/** Reports the invisible characters of a file, front matter and all. */
export function reportHiddenCharacters(text: string, report: Report): void {
  const pointAt = pointsOf(text)
  let count = 0
  for (const {0: character, index} of text.matchAll(hidden)) {
    if (++count > mostReported) return
    const code = character.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')
    report({
      ruleId: 'no-hidden-character',
      place: placeBetween(pointAt, index, index + 1),
      actual: `U+${code}`,
      reason: `Invisible character \`U+${code}\` stands here, expected only characters that show`,
      note: 'Delete it together with its neighbours and type those again.',
    })
  }
}
