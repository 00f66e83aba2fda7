import {existsSync, readdirSync, readFileSync} from 'node:fs'
import path from 'node:path'

/** Content of every file below a folder by path, hidden folders left out: what a site publishes. */
export function siteTree(folder: string): Record<string, string> {
  const tree: Record<string, string> = {}
  if (!existsSync(folder)) return tree
  const entries = readdirSync(folder, {recursive: true, withFileTypes: true})
  for (const entry of entries) {
    const relative = path.relative(folder, path.join(entry.parentPath, entry.name))
    if (entry.isFile() && !relative.startsWith('.scalepan')) {
      tree[relative] = readFileSync(path.join(folder, relative), 'latin1')
    }
  }
  return tree
}

/** Names in the folder where scalepan keeps its notes. */
export function workNames(folder: string): string[] {
  const work = path.join(folder, '.scalepan')
  return existsSync(work) ? readdirSync(work).sort() : []
}
