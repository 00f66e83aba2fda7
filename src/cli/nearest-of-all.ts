import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {Basis, Figures} from '../food/figures.ts'
import type {Food} from '../food/food.ts'
import type {FoodIndex} from '../food/food-index.ts'
import {NearestFoods, type NearFood, scaledMacros} from '../food/nearest-foods.ts'
import type {FoodsFolder} from './foods-folder.ts'
import {fromLargeTables} from './large-tables.ts'

interface Comparing {
  /** What the call names. */
  readonly name: string
  readonly most: number
  readonly folder: FoodsFolder
  readonly foods: FoodIndex
  readonly isWanted: (food: Food) => boolean
  /**
   * Hundreds of grams of a food that are compared; without a food those of a table's row, which has
   * no weight of any measure. Absent: 100 g.
   */
  readonly hundreds?: (food?: Food) => number
}

/**
 * The foods nearest to some figures: of every food that can be named, and of the rows of tables too
 * large to be read whole. Where nothing can be compared the call is at fault.
 */
export async function nearestOfAll(
  figures: Figures<Basis>,
  {name, most, folder, foods, isWanted, hundreds = () => 1}: Comparing,
): Promise<readonly NearFood[]> {
  const nearest = new NearestFoods(figures, most)
  const shown = new Set<string>()
  for (const food of foods.all()) {
    // A food of a table that foods.yaml names has come before its table.
    if (isWanted(food) && !shown.has(food.id)) nearest.add(food, hundreds(food))
    shown.add(food.id)
  }
  const ofRow = hundreds()
  await fromLargeTables(folder, async (table) => {
    for await (const row of table.rowsByWeight()) {
      nearest.addRow(scaledMacros(row.macros, ofRow), () => {
        const food = row.food()
        // A row that the cookbook names has been shown already.
        return isWanted(food) && foods.lookUp(food.id) === undefined ? food : undefined
      })
    }
    return []
  })
  if (nearest.nearest.length > 0) return nearest.nearest
  throw new EnvironmentFailure(
    `Nothing can be compared with ${name}`,
    'Its protein, fat and carbohydrate must be known, and those of some food in the aisle',
  )
}
