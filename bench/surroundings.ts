/** I/O: what a measurement depends on beside the programs. */

import {readFileSync} from 'node:fs'
import {cpus, loadavg, totalmem, type} from 'node:os'
import path from 'node:path'
import process from 'node:process'

const packages = [
  'unified',
  'remark-parse',
  'remark-frontmatter',
  'mdast-util-to-hast',
  'rehype-stringify',
  'yaml',
] as const

/** Versions, machine and how busy it is with other things (load average), in a few lines. */
export function surroundings(project: string): string {
  const [processor] = cpus()
  const [load] = loadavg()
  const gigabytes = Math.round(totalmem() / 1024 ** 3)
  const versions = packages.map((name) => `${name} ${versionIn(project, `node_modules/${name}`)}`)
  return [
    `scalepan ${versionIn(project, '.')}, Node ${process.version}, ${type()}`,
    `${cpus().length} × ${processor?.model.trim()}, ${gigabytes} GiB; waiting before: ${load?.toFixed(1)}`,
    versions.join(', '),
  ].join('\n')
}

function versionIn(project: string, folder: string): string {
  const {version} = JSON.parse(readFileSync(path.join(project, folder, 'package.json'), 'utf8'))
  return String(version)
}
