import {cursorInYaml, type YamlCursor} from '../cookbook/yaml/cursor-in-yaml.ts'

/** The stretch of a file that is YAML, by its offsets. */
export interface YamlStretch {
  readonly from: number
  readonly to: number
}

/** The whole of a .yaml file, or the front matter; where that is not closed yet, all below its fence. */
export function yamlOf(path: string, text: string): YamlStretch | undefined {
  if (path.endsWith('.yaml')) return {from: 0, to: text.length}
  const opening = /^---[ \t]*(?:\r\n|\n|\r)/.exec(text)
  if (!opening) return undefined
  const from = opening[0].length
  const closing = /^---[ \t]*$/m.exec(text.slice(from))
  return {from, to: closing ? from + closing.index : text.length}
}

/**
 * Where a cursor stands in the YAML of a file, its offsets counted in the file.
 * @param offset in the file
 * @returns nothing outside the YAML
 */
export function cursorIn(path: string, text: string, offset: number): YamlCursor | undefined {
  const stretch = yamlOf(path, text)
  if (!stretch || offset < stretch.from || offset > stretch.to) return undefined
  const yaml = text.slice(stretch.from, stretch.to)
  const cursor = cursorInYaml(yaml, offset - stretch.from)
  return cursor && {...cursor, from: cursor.from + stretch.from, to: cursor.to + stretch.from}
}
