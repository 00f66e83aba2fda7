import type {CarriedCooking, CookingData} from '../../parts/cooking-data.ts'
import {all, one} from '../page/query.ts'

/** The data of the page with the anchors and names that stand in its ledger. */
export function withLedger(data: CarriedCooking): CookingData {
  const rows = all('.ledger > li')
  return {
    ...data,
    recipe: {...data.recipe, lines: data.recipe.lines.map((line) => line || {adds: []})},
    lines: data.lines.map((line, index) => {
      const {instead = [], ...written} = typeof line === 'number' ? {grams: line} : line
      const row = rows[index]
      const name = (row && one('.name', row)?.textContent) ?? ''
      return {anchor: row?.id ?? '', choices: [{name, ...written}, ...instead]}
    }),
  }
}
