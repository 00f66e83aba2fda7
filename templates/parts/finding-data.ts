import type {Computed} from '../../src/nutrition/computed.ts'
import {containedAllergens} from '../../src/nutrition/contained-allergens.ts'
import type {Site} from '../site.ts'
import {checkedPromises} from './checked-promises.ts'
import {type DishRow, dishColumns} from './dish-columns.ts'
import type {Cell} from './figure-columns.tsx'
import {type Indexed, indexed} from './indexed.ts'
import {plainWords} from './plain-words.ts'

/** What the finder looks at, one entry a dish in the order of the table. */
export interface FindingData {
  readonly slugs: readonly string[]
  readonly titles: readonly string[]
  /** Plain words of name, tags and ingredients. */
  readonly words: Indexed
  readonly tags: Indexed
  readonly diets: Indexed
  /** Held, perhaps held by traces, or held by choice. */
  readonly allergens: Indexed
  /** Places of dishes with a food whose allergens nobody stated. */
  readonly notStated: readonly number[]
  /** By the keys of the columns. */
  readonly columns: Readonly<Record<string, ColumnData>>
}

export interface ColumnData {
  /** Null where the figure is not known. */
  readonly values: readonly (number | null)[]
  readonly texts: readonly string[]
  /** Places of figures that are only a lower bound. */
  readonly open: readonly number[]
}

export function findingData(site: Site, rows: readonly DishRow[]): FindingData {
  const dishes = rows.map(({computed}) => searched(site, computed))
  const columns = dishColumns(site).map(
    ({key}, column) => [key, columnData(rows.map(({cells}) => cells[column]))] as const,
  )
  return {
    slugs: rows.map(({computed}) => computed.recipe.slug),
    titles: rows.map(({computed}) => computed.recipe.title.value),
    words: indexed(dishes.map(({words}) => words)),
    tags: indexed(dishes.map(({tags}) => tags)),
    diets: indexed(dishes.map(({diets}) => diets)),
    allergens: indexed(dishes.map(({allergens}) => allergens)),
    notStated: placesWhere(dishes, ({isOpen}) => isOpen),
    columns: Object.fromEntries(columns),
  }
}

function searched({cookbook}: Site, computed: Computed) {
  const {recipe, lines} = computed
  const tags = recipe.tags.map(({value}) => value)
  const {diets} = checkedPromises(recipe, cookbook.settings)
  const {contains, mayContain, onlyByChoice, notStated} = containedAllergens(computed)
  const named = [recipe.title.value, ...tags, ...lines.map(({line}) => line.name.value)]
  return {
    words: named.flatMap(plainWords),
    tags,
    diets: diets.map(({name}) => name),
    allergens: [...contains, ...mayContain, ...onlyByChoice],
    isOpen: notStated.size > 0,
  }
}

function columnData(cells: readonly (Cell | undefined)[]): ColumnData {
  return {
    values: cells.map((cell) => (cell === undefined ? null : tidy(cell.value))),
    texts: cells.map((cell) => cell?.text ?? ''),
    open: placesWhere(cells, (cell) => cell?.isOpen === true),
  }
}

/** Six digits are finer than any figure is known. */
function tidy(value: number): number {
  return Number(value.toPrecision(6))
}

function placesWhere<Value>(
  values: readonly Value[],
  isMeant: (value: Value) => boolean,
): readonly number[] {
  return values.flatMap((value, place) => (isMeant(value) ? [place] : []))
}
