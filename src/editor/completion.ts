import {
  type CompletionItem,
  CompletionItemKind,
  type CompletionList,
} from 'vscode-languageserver/node'
import type {Examined} from '../build.ts'
import {ruleTexts} from '../check/rule-texts.ts'
import {type PointAt, pointsOf} from '../cookbook/points.ts'
import type {YamlCursor} from '../cookbook/yaml/cursor-in-yaml.ts'
import type {JsonSchema} from '../cookbook/yaml/json-schema.ts'
import {findFoods} from '../food/find-foods.ts'
import type {Food} from '../food/food.ts'
import {rangeOf} from './diagnostics.ts'
import {macrosText} from './macros-text.ts'
import {namedBy} from './named-things.ts'
import {schemasAt} from './schema-path.ts'
import {schemaOf} from './schemas.ts'
import {cursorIn} from './yaml-of.ts'

/** Foods that one answer lists; another letter asks again. */
const mostFoods = 60

/** A text that may stand under the cursor. */
interface Offer {
  readonly text: string
  readonly kind: CompletionItemKind
  readonly detail?: string
  readonly documentation?: string
}

/** What could stand at an offset of a file. */
export function completion(
  {path, text, offset}: {readonly path: string; readonly text: string; readonly offset: number},
  examined: Examined,
): CompletionList {
  const cursor = cursorIn(path, text, offset)
  if (!cursor) return {isIncomplete: false, items: []}
  const offers = [...schemaOffers(path, cursor), ...namedOffers(path, cursor, examined)]
  const fresh = offers.filter((offer) => !cursor.siblings.includes(offer.text))
  const pointAt = pointsOf(text)
  return {
    isIncomplete: namedBy(path, cursor) === 'food',
    items: fresh.map((offer, index) => item(offer, {cursor, pointAt, index})),
  }
}

/** Keys, words and examples that the definitions of the fields give. */
function schemaOffers(path: string, {kind, path: keys}: YamlCursor): readonly Offer[] {
  const schema = schemaOf(path)
  const found = schema ? schemasAt(schema, keys) : []
  return found.flatMap((each) => (kind === 'key' ? keyOffers(each) : valueOffers(each)))
}

function keyOffers({properties = {}}: JsonSchema): readonly Offer[] {
  return Object.entries(properties).map(([text, {description}]) => ({
    text,
    kind: CompletionItemKind.Property,
    ...(description !== undefined && {detail: description}),
  }))
}

function valueOffers({enum: words = [], examples = [], type}: JsonSchema): readonly Offer[] {
  const flags = type === 'boolean' ? ['true', 'false'] : []
  return [
    ...[...words, ...flags].map((text) => ({text, kind: CompletionItemKind.EnumMember})),
    ...examples.map((text) => ({text, kind: CompletionItemKind.Value, detail: 'for example'})),
  ]
}

function namedOffers(path: string, cursor: YamlCursor, examined: Examined): readonly Offer[] {
  switch (namedBy(path, cursor)) {
    case 'food':
      // A new food of one's own wants a new name.
      return path === 'foods.yaml' && cursor.kind === 'key' ? [] : foodOffers(cursor, examined)
    case 'recipe':
      return Array.from(examined.cookbook.recipes.values(), ({slug, title}) => ({
        text: slug,
        kind: CompletionItemKind.Reference,
        detail: title.value,
      }))
    case 'rule':
      return ruleTexts.map(({id, summary, why}) => ({
        text: id,
        kind: CompletionItemKind.Constant,
        detail: summary,
        documentation: why,
      }))
    default:
      return []
  }
}

function foodOffers({typed}: YamlCursor, {cookbook}: Examined): readonly Offer[] {
  const {foods, settings} = cookbook
  const found =
    typed === '' ? firstOf(foods.all(), mostFoods) : findFoods(typed, foods.all(), mostFoods)
  return found.map((food) => ({
    text: food.name,
    kind: CompletionItemKind.Value,
    detail: macrosText(food, settings),
    documentation: [food.id, ...food.also].join('; '),
  }))
}

function firstOf(foods: Iterable<Food>, most: number): readonly Food[] {
  const first: Food[] = []
  for (const food of foods) {
    if (first.length === most) break
    first.push(food)
  }
  return first
}

interface Setting {
  readonly cursor: YamlCursor
  readonly pointAt: PointAt
  /** Place among the offers: the editor keeps their order. */
  readonly index: number
}

function item(offer: Offer, {cursor, pointAt, index}: Setting): CompletionItem {
  const {text, kind, detail, documentation} = offer
  const {from, to, isFlow, hasColon, typed} = cursor
  const word = isFlow && /[,[\]{}]/.test(text) ? `"${text}"` : text
  const isKey = cursor.kind === 'key' && !hasColon
  return {
    label: text,
    kind,
    ...(detail !== undefined && {detail}),
    ...(documentation !== undefined && {documentation}),
    sortText: String(index).padStart(4, '0'),
    // Foods are found through slips of the pen and other names, which the editor would sort out.
    ...(kind === CompletionItemKind.Value && typed !== '' && {filterText: typed}),
    textEdit: {
      range: rangeOf({start: pointAt(from), end: pointAt(to)}),
      newText: isKey ? `${word}: ` : word,
    },
  }
}
