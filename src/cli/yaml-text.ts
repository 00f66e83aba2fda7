/** Words that YAML reads as something else than text, or might. */
const otherwise = /^(?:true|false|null|yes|no|on|off)$/iu

/**
 * A text as a YAML value: as it is where that is safe, else in double quotes, which YAML shares
 * with JSON.
 */
export function yamlText(text: string): string {
  const isPlain = /^\p{L}[\p{L}\p{N} '’().,&-]*$/u.test(text) && !otherwise.test(text)
  return isPlain ? text : JSON.stringify(text)
}
