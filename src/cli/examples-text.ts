export type Example = readonly [call: string, does: string]

/** Calls with what each does, as help shows them. */
export function examples(list: readonly Example[]): string {
  const width = Math.max(...list.map(([call]) => call.length))
  const lines = list.map(([call, does]) => `  ${call.padEnd(width)}  ${does}`)
  return `\nExamples:\n${lines.join('\n')}\n`
}
