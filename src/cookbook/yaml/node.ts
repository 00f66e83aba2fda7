import type {Position} from 'unist'
import type {Located} from '../problem.ts'

/** YAML as readers see it: texts as written, each with its range in the file. */
export type YamlNode = YamlMapping | YamlList | YamlText | YamlEmpty

export interface YamlMapping {
  readonly kind: 'mapping'
  /** In writing order, each key once. */
  readonly entries: readonly YamlEntry[]
  readonly place: Position
}

export interface YamlEntry {
  readonly key: Located<string>
  readonly value: YamlNode
}

export interface YamlList {
  readonly kind: 'list'
  readonly elements: readonly YamlNode[]
  readonly place: Position
}

/** Any single value; numbers stay text, so that `12.50` keeps its last digit. */
export interface YamlText {
  readonly kind: 'text'
  /** Without quotes and outer blanks. */
  readonly text: string
  readonly place: Position
}

/** A key with nothing behind it (or `null`, `~`); its place is the key's. */
export interface YamlEmpty {
  readonly kind: 'empty'
  readonly place: Position
}
