import type {Root} from 'mdast'
import remarkFrontmatter from 'remark-frontmatter'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import {expect, test} from 'vitest'
import {parseYaml} from '../../../src/cookbook/yaml/parse-yaml.ts'
import {
  frontMatter,
  wholeFile,
  withoutByteOrderMark,
} from '../../../src/cookbook/yaml/yaml-source.ts'

const markdown = unified().use(remarkParse).use(remarkFrontmatter)

function frontMatterOf(file: string) {
  const text = withoutByteOrderMark(file)
  const root: Root = markdown.parse(text)
  return {text, source: frontMatter(text, root)}
}

test.each([
  ['line feeds', '---\ntitle: Pot\nserves: four\n---\n\nStir.\n'],
  ['carriage returns and line feeds', '---\r\ntitle: Pot\r\nserves: four\r\n---\r\n\r\nStir.\r\n'],
  ['lone carriage returns', '---\rtitle: Pot\rserves: four\r---\r\rStir.\r'],
  ['a byte order mark', '\uFEFF---\ntitle: Pot\nserves: four\n---\n\nStir.\n'],
  ['blanks behind the fences', '---  \t\ntitle: Pot\nserves: four\n---   \n\nStir.\n'],
  ['all of it', '\uFEFF--- \r\ntitle: Pot\r\nserves: four\r\n--- \r\n\r\nStir.\r\n'],
  ['no body', '---\ntitle: Pot\nserves: four\n---'],
])('A file with %s is pointed at where the writer sees it', (_, file) => {
  const {text, source} = frontMatterOf(file)
  const at = source?.yaml.indexOf('four') ?? -1
  const place = source?.placeOf(at, at + 4)
  expect(place?.start).toMatchObject({line: 3, column: 9})
  expect(place?.end).toMatchObject({line: 3, column: 13})
  expect(text.slice(place?.start.offset, place?.end.offset)).toBe('four')
  expect(source?.yaml).not.toContain('---')
  expect(source?.yaml).not.toContain('Stir')
})

test('Lone carriage returns end lines of YAML as they do in Markdown', () => {
  const {source} = frontMatterOf('---\rtitle: Pot\rserves: four\r---\r')
  const node = source && parseYaml(source, () => undefined)
  const [title, serves] = node?.kind === 'mapping' ? node.entries : []
  expect([title?.key.value, title?.value]).toMatchObject(['title', {text: 'Pot'}])
  expect(serves?.value.place.start).toEqual({line: 3, column: 9, offset: 23})
})

test('Letters beyond the basic plane count as the editors of the trade count them, in UTF-16', () => {
  const {source} = frontMatterOf('---\ntitle: 🍋 pot\n---\n')
  const at = source?.yaml.indexOf('pot') ?? -1
  expect(source?.placeOf(at, at + 3).start).toEqual({line: 2, column: 11, offset: 14})
})

test('Front matter that is empty, absent or never closed', () => {
  expect(frontMatterOf('---\n---\nStir.').source?.yaml).toBe('')
  expect(frontMatterOf('Stir.').source).toBeUndefined()
  expect(frontMatterOf('---\ntitle: Pot\n').source).toBeUndefined()
})

test('A whole file starts at line 1, column 1', () => {
  expect(wholeFile('a: 1').placeOf(3, 4).start).toEqual({line: 1, column: 4, offset: 3})
})
