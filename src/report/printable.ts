/**
 * Text from a cookbook, safe to print on a terminal: control characters, which could move the
 * cursor or hide a line, and marks that turn the reading direction are shown by their code.
 */
export function printable(text: string): string {
  return text.replace(
    /[\p{Cc}\u061C\u200B\u200E\u200F\u2028-\u202E\u2060-\u2069\uFEFF]/gu,
    (character) => `\\u{${(character.codePointAt(0) ?? 0).toString(16).toUpperCase()}}`,
  )
}
