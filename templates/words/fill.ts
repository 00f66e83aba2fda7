/**
 * Puts values into a text of the catalogue: `{amount} left over`. Texts that scripts show are
 * written so, because a page hands them to its script as data.
 */
export function fill(text: string, values: Readonly<Record<string, string | number>>): string {
  return text.replaceAll(/\{(\w+)\}/g, (whole, name: string) => `${values[name] ?? whole}`)
}
