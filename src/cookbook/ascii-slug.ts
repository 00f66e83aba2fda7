/**
 * A text as an anchor: lower-case ASCII letters and digits, words joined by single hyphens. Chromium
 * percent-encodes other characters in the destinations of a PDF, so no anchor has any.
 * @returns nothing (`''`) for a text without a Latin letter or a digit
 */
export function asciiSlug(text: string): string {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{Mark}+|['’]/gu, '')
    .replace(/[ßæœøđðłþı]/g, (letter) => latinLetters.get(letter) ?? '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
}

/** Letters that do not come apart into a base letter and a mark. */
const latinLetters: ReadonlyMap<string, string> = new Map([
  ['ß', 'ss'],
  ['æ', 'ae'],
  ['œ', 'oe'],
  ['ø', 'o'],
  ['đ', 'd'],
  ['ð', 'd'],
  ['ł', 'l'],
  ['þ', 'th'],
  ['ı', 'i'],
])

/**
 * An anchor nobody has yet: the first time as it is, then `-2`, `-3` …
 * @param taken anchors in use; the one returned is added
 */
export function uniqueAnchor(anchor: string, taken: Set<string>): string {
  let free = anchor
  for (let count = 2; taken.has(free); count++) free = `${anchor}-${count}`
  taken.add(free)
  return free
}
