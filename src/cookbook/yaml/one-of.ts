/** The words that would pass, for a message: `` one of `a`, `b` ``. */
export function oneOf(words: readonly string[]): string {
  const quoted = words.map((word) => `\`${word}\``).join(', ')
  return words.length === 1 ? quoted : `one of ${quoted}`
}
