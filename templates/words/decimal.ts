/** Numbers as a language writes them: the checks and the data keep the point. */
export function withDecimal(text: string, {decimal}: {readonly decimal: string}): string {
  return decimal === '.' ? text : text.replaceAll(/(\d)\.(?=\d)/g, `$1${decimal}`)
}
