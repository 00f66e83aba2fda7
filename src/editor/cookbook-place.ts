/** Where a file stands in its cookbook. */
export interface CookbookPlace {
  /** URI of the cookbook folder, without a final `/`. */
  readonly root: string
  /** Relative to the cookbook folder, with `/`: `recipes/barley-pot.md`. */
  readonly path: string
}

/** The files a cookbook reads, by the part of their address that is the cookbook's own. */
const cookbookFile =
  /^(?<root>file:\/\/.*)\/(?<path>(?:recipes|plans|pages)\/[^/]+\.md|tables\/[^/]+\.tsv|(?:cookbook|foods)\.yaml)$/u

/** @returns nothing for a file that no cookbook reads */
export function cookbookPlace(uri: string): CookbookPlace | undefined {
  const {root, path} = cookbookFile.exec(uri)?.groups ?? {}
  if (root === undefined || path === undefined) return undefined
  try {
    return {root, path: decodeURIComponent(path)}
  } catch {
    // A stray `%` in the address: no file of ours.
    return undefined
  }
}

/** The URI of a file of a cookbook. */
export function uriOf({root, path}: CookbookPlace): string {
  return `${root}/${path.split('/').map(encodeURIComponent).join('/')}`
}
