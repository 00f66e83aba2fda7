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
    <th scope="col" class="number" data-key={nutrient}>
      {words.nutrient[nutrient]} <span class="unit">{nutrientUnit[nutrient]}</span>
    </th>
  ))
}

/** The published main figures of a recipe on a basis, one cell each; empty where there is none. */
export function figureNumbers({cookbook, words}: Site, computed: Computed, basis: Basis): Part[] {
  const figures = publishedOn(basis, mainNutrients, computed, cookbook.settings)
  return mainNutrients.map((_, index) => {
    const figure = figures[index]
    return (
      <td
        class="number"
        data-value={figure && `${figure.value}`}
        data-open={figure && isAtLeast(figure) ? '' : undefined}
      >
        {figure && publishedNumber(figure, words)}
      </td>
    )
  })
}
