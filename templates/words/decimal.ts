/** What of the words decides how a number reads. */
export interface NumberWords {
  readonly decimal: string
}

/** Numbers as a language writes them: the checks and the data keep the point. */
export function withDecimal(text: string, {decimal}: NumberWords): string {
  return decimal === '.' ? text : text.replaceAll(/(\d)\.(?=\d)/g, `$1${decimal}`)
}
