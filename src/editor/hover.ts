import type {Position} from 'unist'
import type {Hover} from 'vscode-languageserver/node'
import type {Examined} from '../build.ts'
import type {Food} from '../food/food.ts'
import type {Computed} from '../nutrition/computed.ts'
import {usesOfFood} from '../nutrition/uses-of-food.ts'
import {explain} from '../report/explain.ts'
import {foodText} from '../report/food-text.ts'
import {plainPaint} from '../report/paint.ts'
import {rangeOf} from './diagnostics.ts'
import {figureHover, lineHover} from './hover-text.ts'
import {namedBy} from './named-things.ts'
import {cursorIn} from './yaml-of.ts'

/** A place in a file as it stands in the editor. */
export interface AskedPlace {
  readonly path: string
  readonly text: string
  readonly offset: number
}

/** What is known of the ingredient, the stated figure or the food at a place. */
export function hover(asked: AskedPlace, examined: Examined): Hover | undefined {
  const computed = [...examined.computed.values()].find(({recipe}) => recipe.path === asked.path)
  const ofRecipe = computed && recipeHover(asked.offset, computed, examined)
  return ofRecipe ?? foodHover(asked, examined)
}

function recipeHover(offset: number, computed: Computed, examined: Examined): Hover | undefined {
  const {stated} = computed.recipe
  const line = computed.lines.findIndex(({line: {name, amount}}) =>
    [name, amount].some(({place}) => holds(place, offset)),
  )
  const figure = stated?.figures.findIndex(({place}) => holds(place, offset)) ?? -1
  if (line < 0 && figure < 0) return undefined
  const {lines, comparison, per, figures} = explain(computed, examined, {
    filePath: (path) => path,
    messages: [],
  })
  const place = stated?.figures[figure]?.place ?? computed.lines[line]?.line.name.place
  const lineReport = lines[line]
  const judged = comparison[figure]
  if (judged) return shown(figureHover(judged, per), place)
  return lineReport && shown(lineHover(lineReport, {per, whole: figures}), place)
}

/** The food that the name under the cursor means. */
function foodHover({path, text, offset}: AskedPlace, examined: Examined): Hover | undefined {
  const cursor = cursorIn(path, text, offset)
  if (!cursor || namedBy(path, cursor) !== 'food') return undefined
  const food = examined.cookbook.foods.lookUp(cursor.text)
  return food && shown(foodBlock(food, examined))
}

function foodBlock(food: Food, {cookbook, computed}: Examined): string {
  const uses = usesOfFood(food, computed.values())
  const {carbohydrate} = cookbook.settings
  return `\`\`\`text\n${[...foodText({food, uses, carbohydrate}, plainPaint)].join('')}\`\`\``
}

function shown(value: string, place?: Position): Hover {
  return {contents: {kind: 'markdown', value}, ...(place && {range: rangeOf(place)})}
}

function holds({start, end}: Position, offset: number): boolean {
  return (start.offset ?? 0) <= offset && offset <= (end.offset ?? 0)
}
