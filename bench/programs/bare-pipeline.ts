/**
 * I/O. B: Markdown to HTML with nothing but the packages that scalepan reads and writes with.
 * Arguments: the cookbook folder, the folder for one HTML file for each Markdown file.
 */

import {mkdirSync, readdirSync, readFileSync, writeFileSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import {toHast} from 'mdast-util-to-hast'
import rehypeStringify from 'rehype-stringify'
import remarkFrontmatter from 'remark-frontmatter'
import remarkParse from 'remark-parse'
import {unified} from 'unified'

const [, , content = '', site = ''] = process.argv

const parser = unified().use(remarkParse).use(remarkFrontmatter).freeze()
const writer = unified().use(rehypeStringify).freeze()

for (const name of readdirSync(content, {recursive: true, encoding: 'utf8'})) {
  if (!name.endsWith('.md')) continue
  const page = path.join(site, name.replace(/\.md$/u, '.html'))
  mkdirSync(path.dirname(page), {recursive: true})
  writeFileSync(page, pageOf(readFileSync(path.join(content, name), 'utf8')))
}

function pageOf(text: string): string {
  const tree = toHast(parser.parse(text))
  if (tree.type !== 'root') throw new Error('A document gives a document')
  return writer.stringify(tree)
}
