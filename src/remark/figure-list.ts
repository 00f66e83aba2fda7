import type {List, Paragraph} from 'mdast'
import {onBasis} from '../check/stated-basis.ts'
import type {Settings} from '../cookbook/cookbook.ts'
import type {StatedBasis} from '../cookbook/recipe.ts'
import {type Figure, isComplete} from '../food/figures.ts'
import {nutrientText, nutrientWithUncertainty} from '../food/nutrient-text.ts'
import {nutrientName, type PublishedNutrient} from '../food/nutrients.ts'
import type {Computed} from '../nutrition/computed.ts'
import {mainNutrients, publishedBy, publishedFigure} from '../nutrition/published.ts'
import {formatFigure} from '../units/format-figure.ts'

/** The computed figures as Markdown: what they are per, and a list with the ± of each. */
export function figureList(
  computed: Computed,
  settings: Settings,
): readonly [Paragraph, List] | readonly [] {
  const basis = basisOf(computed)
  const found = basis && onBasis(basis, computed)
  if (!found) return []
  const weight = basis === '100 g' ? '' : ` (${formatFigure(found.grams, 'g')})`
  const publishing = publishedBy(settings, computed.recipe)
  const items = nutrientsOf(computed).map((nutrient) => {
    const figure = publishedFigure(found.figures, nutrient, publishing)
    return `${nutrientName[nutrient]}: ${figureWords(nutrient, figure)}`
  })
  return [paragraph(`Per ${basis}${weight}`), list(items)]
}

/** As the recipe states its own, else the smallest there is. */
function basisOf(computed: Computed): StatedBasis | undefined {
  const stated = computed.recipe.stated?.basis
  const bases: readonly StatedBasis[] = ['serving', '100 g', 'batch']
  return [...(stated ? [stated] : []), ...bases].find((basis) => onBasis(basis, computed))
}

/** The main figures, and every further one that is stated. */
function nutrientsOf({recipe}: Computed): readonly PublishedNutrient[] {
  const stated = recipe.stated?.figures.map(({nutrient}) => nutrient) ?? []
  return [...new Set<PublishedNutrient>([...mainNutrients, ...stated])]
}

/** `453 ± 9 kcal`; `at least 4.2 g` or `unknown` where a food's figure is missing. */
function figureWords(nutrient: PublishedNutrient, figure: Figure): string {
  if (isComplete(figure)) return nutrientWithUncertainty(nutrient, figure)
  return figure.value > 0 ? `at least ${nutrientText(nutrient, figure.value)}` : 'unknown'
}

function paragraph(words: string): Paragraph {
  return {type: 'paragraph', children: [{type: 'strong', children: [{type: 'text', value: words}]}]}
}

function list(items: readonly string[]): List {
  return {
    type: 'list',
    ordered: false,
    spread: false,
    children: items.map((value) => ({
      type: 'listItem',
      spread: false,
      children: [{type: 'paragraph', children: [{type: 'text', value}]}],
    })),
  }
}
