import {execFileSync} from 'node:child_process'
import {copyFileSync} from 'node:fs'
import path from 'node:path'

/**
 * Bundles the command as it is shipped, by the package's own scripts, into a folder that has
 * nothing else of the project.
 * @returns path of the command's entry
 */
export function bundleCommand(project: string, folder: string): string {
  for (const [script, part] of [
    ['compile:command', 'dist/bin'],
    ['compile:assets', 'dist/assets'],
  ] as const) {
    const outFolder = `--outdir=${path.join(folder, part)}`
    execFileSync('npm', ['run', '--silent', script, '--', outFolder], {cwd: project})
  }
  copyFileSync(path.join(project, 'package.json'), path.join(folder, 'package.json'))
  return path.join(folder, 'dist/bin/scalepan.js')
}
