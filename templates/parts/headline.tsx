import type {Computed} from '../../src/nutrition/computed.ts'
import {formatFigure} from '../../src/units/format-figure.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {withDecimal} from '../words/decimal.ts'
import type {Words} from '../words/en.ts'
import {mainBasis, publishedFigures, publishedText} from './published-figures.ts'

/** The published figures, set like a line of print: what readers log. */
export function headline({cookbook, words}: Site, computed: Computed): Part {
  const {basis, figures} = publishedFigures(computed, cookbook.settings)
  return (
    <div class="headline" data-basis={basis}>
      <p>{basisText(computed, words)}</p>
      <dl>
        {figures.map((figure) => (
          <div>
            <dt>{words.nutrient[figure.nutrient]}</dt>
            <dd data-nutrient={figure.nutrient}>{publishedText(figure, words)}</dd>
          </div>
        ))}
      </dl>
    </div>
  )
}

/** What the published figures refer to: `One serving, 370 g`, `100 g`, `Whole batch`. */
export function basisText(computed: Computed, words: Words): string {
  const basis = mainBasis(computed)
  if (basis === '100 g') return words.figures.per100g
  if (basis === 'batch') return words.figures.batch
  const grams = portionGrams(computed)
  return grams === undefined
    ? words.figures.serving
    : words.figures.servingOf(withDecimal(formatFigure(grams, 'g'), words))
}

/** Weight of one serving, g: as the page states it, else its share of the finished batch. */
export function portionGrams({recipe, portionGrams}: Computed): number | undefined {
  return recipe.portion?.value.grams.value ?? portionGrams?.value
}
