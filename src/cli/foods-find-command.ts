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
  const large = await fromLargeTables(folder, (table) => table.find(written, most))
  const near = findFoods(written, [...cookbook.foods.all(), ...large], most)
  // A long name of a packet can hold all the words, and be too long to be like them.
  const found = distinct([...near, ...large]).slice(0, most)
  const {carbohydrate} = cookbook.settings
  if (format === 'json') print(foodsJson(found, carbohydrate))
  else if (found.length > 0) print(foodTable(found, carbohydrate))
  else tell(`No food is called anything like ${written}; write its label into foods.yaml.\n`)
  return exitCodes.fine
}

/** A row that the cookbook names comes from its own foods and from the table. */
function distinct(foods: readonly Food[]): readonly Food[] {
  return [...new Map(foods.map((food) => [food.id, food])).values()]
}
