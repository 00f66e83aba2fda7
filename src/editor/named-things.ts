import type {YamlCursor} from '../cookbook/yaml/cursor-in-yaml.ts'

/** What a writer names by a word of theirs, where the keys themselves are not given. */
export type Named = 'food' | 'recipe' | 'rule'

/** Keys whose value names something, wherever they stand. */
const byKey: ReadonlyMap<string, Named> = new Map([
  ['food', 'food'],
  ['same as', 'food'],
  ['like', 'food'],
  ['yield factor', 'food'],
  ['recipe', 'recipe'],
])

/** What the key or value under the cursor names; nothing where it is none of the cookbook's names. */
export function namedBy(file: string, {kind, path}: YamlCursor): Named | undefined {
  const last = path.at(-1)
  if (kind === 'value') return last === undefined ? undefined : byKey.get(last)
  if (file === 'foods.yaml') return path.length === 0 ? 'food' : undefined
  if (file === 'cookbook.yaml') return last === 'checks' ? 'rule' : undefined
  if (file.startsWith('plans/')) return last === 'servings' ? 'recipe' : undefined
  if (path[0] === 'accepted') return path.length === 1 ? 'rule' : undefined
  // A name, one below a heading, or one that may stand in for another.
  const isName = path[0] === 'ingredients' && (path.length <= 2 || last === 'instead')
  return isName ? 'food' : undefined
}
