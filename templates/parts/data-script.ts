/**
 * Data in files of their own, for scripts that need them late or not at all. They are scripts
 * themselves: a page that is opened from a disk may load those, and nothing else.
 */

/** Where such a file leaves its data, by its own path; read by `browser/page/load-data.ts`. */
export const dataStore = 'scalepanData'

/** @param path of the file, relative to the site */
export function dataScript(path: string, value: unknown): string {
  const json = JSON.stringify(value)
  // As JSON in a string: a browser reads that faster than the same written as code.
  return `(self.${dataStore}??={})[${JSON.stringify(path)}]=JSON.parse(${quoted(json)})\n`
}

/** A string of JavaScript in single quotes; JSON has escaped line ends already. */
function quoted(text: string): string {
  return `'${text.replaceAll(/[\\']/g, '\\$&')}'`
}
