import type {Examined} from '../build.ts'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {Figures} from '../food/figures.ts'
import type {Aisle, Food} from '../food/food.ts'
import {nearFoodsJson} from '../report/food-report.ts'
import {nearFoodTable} from '../report/food-text.ts'
import {examinedFolder} from './examined-folder.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {type FoodsFolder, readFoodsFolder} from './foods-folder.ts'
import {namedFood} from './named-food.ts'
import {nearestOfAll} from './nearest-of-all.ts'
import {print} from './output.ts'
import type {SharedOptions} from './shared-options.ts'

export interface LikeOptions extends SharedOptions, FoodsFolder {
  readonly format: 'text' | 'json'
  readonly most: number
  /** Only foods of this aisle. */
  readonly aisle?: Aisle
}

/** What others are compared with: a food, or a recipe's finished dish. */
interface Wanted {
  readonly name: string
  readonly per100g: Figures<'100 g'>
  readonly food?: Food
}

/** Prints the foods whose macros are nearest to those of a food or a recipe. */
export async function foodsLikeCommand(
  name: string,
  {format, most, aisle, quiet, ...folder}: LikeOptions,
): Promise<ExitCode> {
  const {examined} = await examinedFolder(folder.content, {quiet}, () =>
    readFoodsFolder(folder, [name]),
  )
  const {foods, settings} = examined.cookbook
  const wanted = wantedCalled(name, examined)
  const isWanted = (food: Food): boolean =>
    food.id !== wanted.food?.id && (aisle === undefined || food.aisle === aisle)
  const near = await nearestOfAll(wanted.per100g, {name, most, folder, foods, isWanted})
  const shown = format === 'json' ? nearFoodsJson : nearFoodTable
  print(shown(wanted, near, settings.carbohydrate))
  return exitCodes.fine
}

function wantedCalled(name: string, {cookbook, computed}: Examined): Wanted {
  const recipe = cookbook.recipes.get(name)
  if (!recipe) {
    const food = namedFood(name, cookbook.foods)
    return {name: food.name, per100g: food.per100g, food}
  }
  const per100g = computed.get(name)?.per100g
  if (per100g) return {name: recipe.title.value, per100g}
  throw new EnvironmentFailure(
    `The figures of ${name} per 100 g are not known`,
    'Weigh the finished batch and write it after `yield`; scalepan check says what else is wrong',
  )
}
