import type {Problem} from './problem.ts'

/** One text file of the cookbook folder, read and decoded. */
export interface SourceText {
  /** Relative to the cookbook folder, with `/`: `recipes/barley-pot.md`. */
  readonly path: string
  /** Without a byte order mark. */
  readonly text: string
}

/** Everything the stages after reading see of the disk. */
export interface CookbookSources {
  /** In path order. */
  readonly texts: readonly SourceText[]
  /** Files below images/, relative to it, in path order. */
  readonly images: readonly SourceImage[]
}

export interface SourceImage {
  readonly path: string
  readonly bytes: Uint8Array
}

/** A cookbook as it was read, with what reading it found. */
export interface ReadCookbook {
  readonly sources: CookbookSources
  readonly problems: readonly Problem[]
}
