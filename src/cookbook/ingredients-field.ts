import {nearest} from '../units/nearest.ts'
import type {Kitchen} from '../units/parse-amount.ts'
import {asciiSlug, uniqueAnchor} from './ascii-slug.ts'
import {limits} from './limits.ts'
import {lineFields} from './line-fields.ts'
import {lineReader, type WrittenLine} from './line-reader.ts'
import type {Located} from './problem.ts'
import type {IngredientGroup, IngredientLine} from './recipe.ts'
import {type OpenEntry, openMapping} from './yaml/collection-readers.ts'
import {converted} from './yaml/converted.ts'
import type {YamlMapping, YamlNode} from './yaml/node.ts'
import type {Reader, Reading} from './yaml/reader.ts'

/** A line, or a heading with the lines under it. */
type Written =
  | {readonly kind: 'line'; readonly line: WrittenLine}
  | {readonly kind: 'group'; readonly lines: readonly OpenEntry<WrittenLine>[]}

/** The ingredient list: names to amounts, or to groups of them, in writing order. */
export function ingredientsReader(kitchen: Kitchen): Reader<readonly IngredientGroup[]> {
  return converted(
    openMapping(
      'ingredients with their amounts, such as `pearl barley: 180 g`',
      lineOrGroup(kitchen),
    ),
    ({value: entries, place}, reading) => {
      if (entries.length === 0) return undefined
      const count = lineCount(entries)
      if (count > limits.recipeIngredients) {
        reading.report({
          ruleId: 'ingredient-count',
          place: {start: place.start, end: place.start},
          reason: `${reading.subject} has \`${count}\` lines, expected \`${limits.recipeIngredients}\` at most`,
        })
        return undefined
      }
      return groupsOf(entries, reading)
    },
  )
}

function lineOrGroup(kitchen: Kitchen): Reader<Written> {
  const line = converted(lineReader(kitchen), ({value}): Written => ({kind: 'line', line: value}))
  const group = converted(
    openMapping('ingredients with their amounts', lineReader(kitchen)),
    ({value}): Written => ({kind: 'group', lines: value}),
  )
  return {
    expected: line.expected,
    schema: {
      anyOf: [line.schema, {...group.schema, propertyNames: {not: {enum: [...conditionKeys]}}}],
    },
    read: (node, reading) => (isGroup(node) ? group : line).read(node, reading),
  }
}

/** Keys that tell a line with conditions from a group of lines; they are the same in any kitchen. */
const conditionKeys: ReadonlySet<string> = new Set(
  Object.keys(lineFields({cups: 'metric', measures: new Set()})),
)

/** A mapping without an amount is a group, unless its keys show that the amount was forgotten. */
function isGroup(node: YamlNode): node is YamlMapping {
  return (
    node.kind === 'mapping' &&
    !node.entries.some(
      ({key}) => conditionKeys.has(key.value) || nearest(key.value, ['amount']) !== undefined,
    )
  )
}

function lineCount(entries: readonly OpenEntry<Written>[]): number {
  return entries.reduce(
    (count, {value: {value}}) => count + (value.kind === 'group' ? value.lines.length : 1),
    0,
  )
}

/** Lines between two headings stand together; those before the first have no heading. */
function groupsOf(
  entries: readonly OpenEntry<Written>[],
  reading: Reading,
): readonly IngredientGroup[] {
  const groups: {title?: Located<string>; lines: IngredientLine[]}[] = []
  const anchors = new Anchors(reading)
  for (const {key, value} of entries) {
    if (value.value.kind === 'group') {
      const lines = value.value.lines.map((line) => ({
        ...line.value.value,
        name: line.key,
        anchor: anchors.of(line.key, key.value),
      }))
      groups.push({title: key, lines})
      continue
    }
    const line = {...value.value.line, name: key, anchor: anchors.of(key, '')}
    const last = groups.at(-1)
    if (last && !last.title) last.lines.push(line)
    else groups.push({lines: [line]})
  }
  return groups
}

/** Gives each line its anchor, unique in the recipe. */
class Anchors {
  readonly #reading: Reading
  readonly #taken = new Set<string>()
  readonly #firstByName = new Map<string, Located<string>>()

  constructor(reading: Reading) {
    this.#reading = reading
  }

  /** @param group heading the line stands under, `''` for none */
  of(name: Located<string>, group: string): string {
    const slug = asciiSlug(name.value)
    const sameName = `${group}\n${slug || name.value}`
    const first = this.#firstByName.get(sameName)
    if (first) this.#reportSame(name, first)
    else this.#firstByName.set(sameName, name)
    return uniqueAnchor(slug || 'ingredient', this.#taken)
  }

  #reportSame(name: Located<string>, first: Located<string>): void {
    this.#reading.report({
      ruleId: 'no-duplicate-key',
      place: name.place,
      actual: name.value,
      reason: `\`${name.value}\` is listed twice, expected one line for \`${first.value}\` in ${this.#reading.subject}`,
      note: `The first one is on line ${first.place.start.line}. Add the amounts up, or name them apart and give both a \`food:\`.`,
    })
  }
}
