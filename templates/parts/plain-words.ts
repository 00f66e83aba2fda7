/** Lower case without accents, word by word: what a reader types is looked for so. */
export function plainWords(text: string): readonly string[] {
  return text
    .normalize('NFKD')
    .replaceAll(/\p{Mark}/gu, '')
    .toLowerCase()
    .split(/[^\p{Letter}\p{Number}]+/u)
    .filter((word) => word !== '')
}
