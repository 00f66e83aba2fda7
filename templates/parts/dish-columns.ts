import {nutrientUnit} from '../../src/food/nutrients.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {mainNutrients} from '../../src/nutrition/published.ts'
import {batchCost, type Cost} from '../../src/shopping/cost.ts'
import {roundedText} from '../../src/units/format-figure.ts'
import type {Site} from '../site.ts'
import {withDecimal} from '../words/decimal.ts'
import {type Cell, figureCells} from './figure-columns.tsx'
import {portionGrams} from './headline.tsx'
import {isAtLeast, publishedOn} from './published-figures.ts'
import {minutesText} from './time-text.ts'

/** A column of the table of dishes, beside their names. */
export interface DishColumn {
  /** By which the page's script and addresses know it. */
  readonly key: string
  readonly name: string
  readonly unit?: string
  /** A phone has no room for it. */
  readonly isSpare: boolean
}

/** Whether any food of the cookbook has a price: without one nobody is told of costs. */
export function hasCosts({shopping}: Site): boolean {
  return shopping.foods.some(({price}) => price !== undefined)
}

export function dishColumns(site: Site): readonly DishColumn[] {
  const {words, cookbook} = site
  const main = mainNutrients.map((nutrient) => ({
    key: nutrient,
    name: words.nutrient[nutrient],
    unit: nutrientUnit[nutrient],
    isSpare: false,
  }))
  const {currency} = cookbook.settings
  return [
    ...main,
    {key: 'density', name: words.finding.density, unit: 'g', isSpare: true},
    {key: 'serving', name: words.index.serving, unit: 'g', isSpare: true},
    {key: 'minutes', name: words.index.time, isSpare: true},
    ...(hasCosts(site)
      ? [{key: 'cost', name: words.finding.cost, unit: currency, isSpare: true}]
      : []),
  ]
}

/** A dish as a row: its figures in the order of the columns, undefined where there is none. */
export interface DishRow {
  readonly computed: Computed
  readonly cells: readonly (Cell | undefined)[]
}

export function dishRows(site: Site, dishes: readonly Computed[]): readonly DishRow[] {
  const costs = hasCosts(site) ? servingCosts(site) : undefined
  return dishes.map((computed) => ({
    computed,
    cells: [
      ...figureCells(site, computed, 'serving'),
      densityCell(site, computed),
      portionCell(computed),
      minutesCell(site, computed),
      ...(costs ? [costCell(costs.get(computed.recipe.slug), site)] : []),
    ],
  }))
}

/** Grams of protein that come with 100 kcal, by the figures that are published. */
function densityCell({cookbook, words}: Site, computed: Computed): Cell | undefined {
  const [energy, protein] = publishedOn(
    'serving',
    ['energy', 'protein'],
    computed,
    cookbook.settings,
  )
  if (!energy || !protein || energy.value <= 0) return undefined
  const value = (protein.value / energy.value) * 100
  return {
    value,
    text: withDecimal(roundedText(value, 1), words),
    isOpen: isAtLeast(energy) || isAtLeast(protein),
  }
}

function portionCell(computed: Computed): Cell | undefined {
  const value = portionGrams(computed)
  return value === undefined ? undefined : {value, text: roundedText(value, 0), isOpen: false}
}

function minutesCell({words}: Site, {recipe}: Computed): Cell | undefined {
  const value = recipe.totalMinutes?.value
  return value === undefined ? undefined : {value, text: minutesText(value, words), isOpen: false}
}

function costCell(cost: Cost | undefined, {words}: Site): Cell | undefined {
  if (cost === undefined) return undefined
  const text = withDecimal(roundedText(cost.amount, 2), words)
  const isOpen = !cost.isComplete
  return {value: cost.amount, text: isOpen ? words.atLeast(text) : text, isOpen}
}

/** What a serving costs, by slug. */
function servingCosts({shopping}: Site): ReadonlyMap<string, Cost> {
  return new Map(
    shopping.recipes.flatMap((recipe) => {
      const cost = recipe.serves === undefined ? undefined : batchCost(recipe, shopping)
      if (cost === undefined || recipe.serves === undefined) return []
      return [[recipe.slug, {...cost, amount: cost.amount / recipe.serves}] as const]
    }),
  )
}
