import {existsSync} from 'node:fs'
import {readFolder} from '../cookbook/read-folder.ts'
import type {ReadCookbook} from '../cookbook/sources.ts'

/** Which cookbook a command about foods looks into. */
export interface FoodsFolder {
  readonly content: string
  /** Whether the call names the folder; else it may be missing. */
  readonly isContentNamed: boolean
}

/**
 * A cookbook for a command about foods. It may have no recipes; and where no folder was named there
 * may be none at all, for the built-in table is there everywhere.
 */
export async function readFoodsFolder(
  folder: FoodsFolder,
  named: readonly string[] = [],
): Promise<ReadCookbook> {
  if (!isThere(folder)) return {sources: {texts: [], images: []}, problems: []}
  return readFolder(folder.content, named)
}

/** Whether there is a folder to look into; one that was named is looked into, and missed, by reading it. */
export function isThere({content, isContentNamed}: FoodsFolder): boolean {
  return isContentNamed || existsSync(content)
}
