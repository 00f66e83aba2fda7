import {usesOfFood} from '../nutrition/uses-of-food.ts'
import {foodJson} from '../report/food-report.ts'
import {foodText} from '../report/food-text.ts'
import {paintFor} from './colour.ts'
import {examinedFolder} from './examined-folder.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {type FoodsFolder, readFoodsFolder} from './foods-folder.ts'
import {namedFood} from './named-food.ts'
import {print} from './output.ts'
import type {SharedOptions} from './shared-options.ts'

interface ShowOptions extends SharedOptions, FoodsFolder {
  readonly format: 'text' | 'json'
}

/** Prints everything known of one food. */
export async function foodsShowCommand(
  name: string,
  {format, color, quiet, ...folder}: ShowOptions,
): Promise<ExitCode> {
  const {examined} = await examinedFolder(folder.content, {quiet}, () =>
    readFoodsFolder(folder, [name]),
  )
  const {foods, settings} = examined.cookbook
  const food = namedFood(name, foods)
  const uses = usesOfFood(food, examined.computed.values())
  const shown = {food, uses, carbohydrate: settings.carbohydrate}
  if (format === 'json') print(foodJson(shown))
  else for (const text of foodText(shown, paintFor('stdout', color))) print(text)
  return exitCodes.fine
}
