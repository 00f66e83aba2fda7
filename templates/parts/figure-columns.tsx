import type {Basis} from '../../src/food/figures.ts'
import {nutrientUnit} from '../../src/food/nutrients.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {mainNutrients} from '../../src/nutrition/published.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import type {Words} from '../words/en.ts'
import {isAtLeast, publishedNumber, publishedOn} from './published-figures.ts'

/** Heads of the columns of main figures, the unit said once. */
export function figureHeads(words: Words): Part[] {
  return mainNutrients.map((nutrient) => (
    <th scope="col" class="number">
      {words.nutrient[nutrient]} <span class="unit">{nutrientUnit[nutrient]}</span>
    </th>
  ))
}

/** A figure of a column: what sorts and narrows by it, and how it is shown. */
export interface Cell {
  readonly text: string
  readonly value: number
  /** Only a lower bound. */
  readonly isOpen: boolean
}

/** The published main figures of a recipe on a basis; undefined where there is none. */
export function figureCells(
  {cookbook, words}: Site,
  computed: Computed,
  basis: Basis,
): readonly (Cell | undefined)[] {
  const figures = publishedOn(basis, mainNutrients, computed, cookbook.settings)
  return mainNutrients.map((_, index) => {
    const figure = figures[index]
    return (
      figure && {
        text: publishedNumber(figure, words),
        value: figure.value,
        isOpen: isAtLeast(figure),
      }
    )
  })
}

/** These figures, one cell of a table each; empty where there is none. */
export function figureNumbers(site: Site, computed: Computed, basis: Basis): Part[] {
  return figureCells(site, computed, basis).map((cell) => <td class="number">{cell?.text}</td>)
}
