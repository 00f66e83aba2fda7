/** Turns a path below the cookbook folder into the one the writer types: `content/recipes/a.md`. */
export type FilePath = (relative: string) => string

/** @param folder the cookbook folder as the writer typed it; `/` stands between names everywhere */
export function filePathBelow(folder: string): FilePath {
  const typed = folder.replaceAll('\\', '/').replace(/\/+$/u, '')
  const above = typed === '.' ? '' : `${typed}/`
  return (relative) => `${above}${relative}`
}
