import {understandCookbook} from '../cookbook/understand.ts'
import {findFoods} from '../food/find-foods.ts'
import type {Food} from '../food/food.ts'
import {foodsJson} from '../report/food-report.ts'
import {foodTable} from '../report/food-text.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {type FoodsFolder, readFoodsFolder} from './foods-folder.ts'
import {fromLargeTables} from './large-tables.ts'
import {print, tell} from './output.ts'

export interface FindOptions extends FoodsFolder {
  readonly format: 'text' | 'json'
  readonly most: number
}

/** Prints the foods whose name is like what was written. */
export async function foodsFindCommand(
  words: readonly string[],
  {format, most, ...folder}: FindOptions,
): Promise<ExitCode> {
  const {sources} = await readFoodsFolder(folder)
  const {cookbook} = understandCookbook(sources)
  const written = words.join(' ')
  const found = together(written, {
    near: findFoods(written, cookbook.foods.all(), most),
    packets: await fromLargeTables(folder, (table) => table.find(written, most)),
    most,
  })
  const {carbohydrate} = cookbook.settings
  if (format === 'json') print(foodsJson(found, carbohydrate))
  else if (found.length > 0) print(foodTable(found, carbohydrate))
  else tell(`No food is called anything like ${written}; write its label into foods.yaml.\n`)
  return exitCodes.fine
}

interface Found {
  /** Foods of the cookbook, best first. */
  readonly near: readonly Food[]
  /** Rows of large tables, best first. */
  readonly packets: readonly Food[]
  readonly most: number
}

/**
 * Both kinds, best first. Packets get half of the places at least: their long names are less like
 * what was written than a plain one.
 */
function together(written: string, {near, packets, most}: Found): readonly Food[] {
  const places = Math.max(most - near.length, Math.floor(most / 2))
  const kept = [...near.slice(0, most - Math.min(places, packets.length)), ...packets]
  // A row that the cookbook names comes both ways; a name too long to be like the words comes last.
  const ordered = [...findFoods(written, kept, most), ...kept]
  return [...new Map(ordered.map((food) => [food.id, food])).values()].slice(0, most)
}
