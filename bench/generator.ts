/** I/O: a general-purpose site generator with a minimal layout, where somebody has installed one. */

import {mkdirSync, writeFileSync} from 'node:fs'
import path from 'node:path'
import type {Bench} from './run-round.ts'

const layout = '<!doctype html><title>{{ title }}</title>{{ content | safe }}\n'

/** No template language in the recipes, one layout round all of them. */
const config = `export default function (config) {
  config.addGlobalData('layout', 'page.njk')
  return {dir: {includes: '../../layouts'}, markdownTemplateEngine: false}
}
`

/**
 * Prepares a run of Eleventy (package @11ty/eleventy).
 * @param installed folder whose node_modules holds it
 * @param work folder of the benchmark; every round runs in a folder of its own below it
 */
export function eleventy(installed: string, work: string): NonNullable<Bench['generator']> {
  mkdirSync(path.join(work, 'layouts'), {recursive: true})
  writeFileSync(path.join(work, 'layouts/page.njk'), layout)
  writeFileSync(path.join(work, 'eleventy.config.mjs'), config)
  return {
    entry: path.resolve(installed, 'node_modules/@11ty/eleventy/cmd.cjs'),
    config: '../eleventy.config.mjs',
  }
}
