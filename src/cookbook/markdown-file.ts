import type {Root} from 'mdast'
import type {Position} from 'unist'
import {parseMarkdown} from './markdown.ts'
import {pointsOf} from './points.ts'
import type {Report} from './problems.ts'
import type {SourceText} from './sources.ts'
import type {YamlNode} from './yaml/node.ts'
import {parseYaml} from './yaml/parse-yaml.ts'
import {beginningOf, type Reader, rootReading} from './yaml/reader.ts'
import {frontMatter, withoutByteOrderMark} from './yaml/yaml-source.ts'

/** A Markdown file whose front matter was read. */
export interface MarkdownFile<T> {
  readonly text: string
  readonly root: Root
  readonly values: T
  /** First key of the front matter: where something absent would go. */
  readonly beginning: Position
  /** Empty, before the line that closes the front matter: where a key can be added. */
  readonly ending: Position
  /** Whether the front matter has the key, even where its value was refused. */
  hasKey(key: string): boolean
}

/**
 * Reads a Markdown file that opens with front matter.
 * @returns nothing where the front matter cannot be understood; that is reported
 */
export function readMarkdownFile<T>(
  source: SourceText,
  reader: Reader<T>,
  report: Report,
): MarkdownFile<T> | undefined {
  const text = withoutByteOrderMark(source.text)
  const root = parseMarkdown(text, report)
  return root && readTree({text, root}, reader, report)
}

/** The same for a text that is parsed already. */
export function readTree<T>(
  {text, root}: {readonly text: string; readonly root: Root},
  reader: Reader<T>,
  report: Report,
): MarkdownFile<T> | undefined {
  const yaml = frontMatter(text, root)
  if (!yaml) {
    const start = pointsOf(text)(0)
    report({
      ruleId: 'front-matter-present',
      place: {start, end: start},
      reason: 'The file has no front matter, expected it to open with a line `---`',
      note: 'Write `title: …` between two lines of three hyphens at the top of the file.',
    })
    return undefined
  }
  let hasProblem = false
  const node = parseYaml(yaml, (problem) => {
    hasProblem = true
    report(problem)
  })
  // Front matter without a line is a mapping without a key.
  const place = yaml.placeOf(0, 0)
  const mapping: YamlNode | undefined =
    node ?? (hasProblem ? undefined : {kind: 'mapping', entries: [], place})
  const values = mapping && reader.read(mapping, rootReading('The front matter', report))?.value
  if (mapping === undefined || values === undefined) return undefined
  return {
    text,
    root,
    values,
    beginning: beginningOf(mapping),
    ending: yaml.placeOf(yaml.yaml.length, yaml.yaml.length),
    hasKey: (key) =>
      mapping.kind === 'mapping' && mapping.entries.some((entry) => entry.key.value === key),
  }
}
