/** Characters of a text: from the first to behind the last. */
export interface TextRange {
  readonly from: number
  readonly to: number
}

/** What a sticky expression matches at an index; undefined where it does not. */
export function matchAt(sticky: RegExp, text: string, index: number): RegExpExecArray | undefined {
  sticky.lastIndex = index
  return sticky.exec(text) ?? undefined
}
