import {isComplete} from '../../src/food/figures.ts'
import {nutrientFigure} from '../../src/food/nutrient-text.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {netCarbohydrate} from '../../src/nutrition/net-carbohydrate.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {withDecimal} from '../words/decimal.ts'
import {computedOn} from './published-figures.ts'

/** Net carbohydrate and what is meant by it; undefined unless the cookbook asks for it. */
export function netCarbohydrateLines({cookbook, words}: Site, computed: Computed): Part {
  if (!cookbook.settings.netCarbohydrate) return undefined
  const told = (['serving', '100 g'] as const).flatMap((basis) => {
    const figures = computedOn(basis, computed)
    if (figures === undefined) return []
    const figure = netCarbohydrate(figures)
    const {value, plusMinus, unit} = nutrientFigure('carbohydrate', figure)
    const more = plusMinus === undefined ? '' : ` ${words.plusMinus(plusMinus)}`
    const amount = withDecimal(`${value}${more} ${unit}`, words)
    return [words.declared.each(isComplete(figure) ? amount : words.unknown, words.basis[basis])]
  })
  if (told.length === 0) return undefined
  return (
    <div class="rest">
      <p>{words.declared.netCarbohydrate(told.join(', '))}</p>
      <p>{words.declared.netCarbohydrateMeans}</p>
    </div>
  )
}
