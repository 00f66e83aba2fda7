import type {Settings} from '../../cookbook/cookbook.ts'
import {isComplete} from '../../food/figures.ts'
import {nutrientName, nutrientUnit} from '../../food/nutrients.ts'
import type {Computed} from '../../nutrition/computed.ts'
import {mainNutrients, publishedBy, publishedFigure} from '../../nutrition/published.ts'
import {formatFigure} from '../../units/format-figure.ts'
import type {Rule} from '../rule.ts'

export const missingStated: Rule = {
  id: 'missing-stated',
  severity: 'note',
  summary: 'A recipe states its figures.',
  why: 'Only a figure that is written down can be seen to go stale.',
  *check({recipe, computed, cookbook}) {
    if (recipe.stated !== undefined) return
    const block = statedBlock(computed, cookbook.settings)
    if (block === undefined) return
    yield {
      place: recipe.frontMatter,
      reason: `No \`stated\` figures, expected the block to paste: \`${block}\``,
      expected: [block],
      note: 'Paste it into the front matter; from then on a change to an ingredient is noticed.',
      fix: {place: recipe.frontMatterEnd, text: `${block}\n`},
    }
  },
}

/** The line to paste into the front matter; undefined where nothing can be computed. */
export function statedBlock(computed: Computed, settings: Settings): string | undefined {
  const per100g = computed.perServing ? undefined : computed.per100g
  const figures = computed.perServing ?? per100g
  if (figures === undefined) return undefined
  const publishing = publishedBy(settings, computed.recipe)
  const stated = mainNutrients.flatMap((nutrient) => {
    const figure = publishedFigure(figures, nutrient, publishing)
    return isComplete(figure)
      ? [`${nutrientName[nutrient]}: ${formatFigure(figure.value, nutrientUnit[nutrient])}`]
      : []
  })
  const basis = per100g ? ['per: 100 g'] : []
  return stated.length === 0 ? undefined : `stated: { ${[...basis, ...stated].join(', ')} }`
}
