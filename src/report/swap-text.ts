import {allergenName} from '../food/allergens.ts'
import {nutrientName, nutrientUnit} from '../food/nutrients.ts'
import {formatFigure} from '../units/format-figure.ts'
import {signedChange} from './change-text.ts'
import {countText} from './count-text.ts'
import {reportedFigure} from './figure-text.ts'
import {printable} from './printable.ts'
import type {FiguresReport} from './report.ts'
import {type SwapReport, type SwapsReport, swapNutrients, type UsedReport} from './swap-report.ts'
import {textTable} from './text-table.ts'

const headings = swapNutrients.map((nutrient) => nutrientName[nutrient])

/** What is used and what would stand in its place, by its amount; then what each changes. */
export function* swapsText({recipe, per, wanted, foods}: SwapsReport): Iterable<string> {
  const {name, grams, adds, dish} = wanted
  yield `${printable(recipe.title)}: ${printable(name)}, ${formatFigure(grams, 'g')}${usedText(wanted)}\n\n`
  yield rows([
    ['in the recipe', 'id', 'amount', ...headings],
    [printable(name), '', formatFigure(grams, 'g'), ...figureCells(adds)],
    ...foods.map((food) => [
      printable(food.name),
      printable(food.id),
      formatFigure(food.grams, 'g'),
      ...figureCells(food.adds),
    ]),
  ])
  yield '\n'
  yield rows([
    [per === 'serving' ? 'a serving' : 'the batch', ...headings, 'apart', 'allergens'],
    [`with ${printable(name)}`, ...figureCells(dish), '', ''],
    ...foods.map((food) => [
      `with ${printable(food.name)}`,
      ...changeCells(food),
      apartText(food),
      allergenCell(food),
    ]),
  ])
  const whole = foods.filter(({countedWhole}) => countedWhole)
  if (whole.length > 0) {
    yield '\nWhat is poured off or cut off the line says nothing of another food: each is counted whole.\n'
  }
  yield '\nAllergens are those that the dish does not hold yet; a packet may say more: read it.\n'
}

function usedText({lines, aside, optional}: UsedReport): string {
  return [
    lines.length > 1 ? `, in ${countText(lines.length, 'line')}` : '',
    optional ? ', optional: counted as added' : '',
    aside.length > 0
      ? `; left as it is: ${countText(aside.length, 'line')} that no figure counts`
      : '',
  ].join('')
}

/** Of what is used by the pinch, the order shows in the tenths. */
function apartText({apart}: SwapReport): string {
  return formatFigure(apart, 'kcal', apart < 10 ? 1 : 0)
}

function figureCells(figures: FiguresReport): readonly string[] {
  return swapNutrients.map((nutrient) => reportedFigure(nutrient, figures[nutrient]))
}

function changeCells({change}: SwapReport): readonly string[] {
  return swapNutrients.map((nutrient) => {
    const value = change[nutrient]
    return value === undefined
      ? 'unknown'
      : `${signedChange(nutrient, value)} ${nutrientUnit[nutrient]}`
  })
}

function allergenCell({brings, mayBring, allergensUnknown}: SwapReport): string {
  const parts = [
    ...brings.map(allergenName),
    ...mayBring.map((allergen) => `traces of ${allergenName(allergen)}`),
    ...(allergensUnknown ? ['not stated'] : []),
  ]
  return parts.length === 0 ? 'none new' : parts.join(', ')
}

function rows(cells: readonly (readonly string[])[]): string {
  return `${textTable(cells).join('\n')}\n`
}
