import {readCookbook} from '../cookbook/read-folder.ts'
import {understandCookbook} from '../cookbook/understand.ts'
import {findFoods} from '../food/find-foods.ts'
import {foodTable} from '../report/food-text.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print, tell} from './output.ts'

export interface FindOptions {
  readonly content: string
  readonly most: number
}

/** Prints the foods whose name is like what was written. */
export async function foodsFindCommand(
  words: readonly string[],
  {content, most}: FindOptions,
): Promise<ExitCode> {
  const {sources} = await readCookbook(content)
  const {cookbook} = understandCookbook(sources)
  const written = words.join(' ')
  const found = findFoods(written, cookbook.foods.all(), most)
  if (found.length > 0) print(foodTable(found, cookbook.settings.carbohydrate))
  else tell(`No food is called anything like ${written}; write its label into foods.yaml.\n`)
  return exitCodes.fine
}
