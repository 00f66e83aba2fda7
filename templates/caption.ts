import type {Computed, ComputedLine} from '../src/nutrition/computed.ts'
import {containedAllergens} from '../src/nutrition/contained-allergens.ts'
import {absoluteHref, recipePath} from './addresses.ts'
import {kitchenMeasure, lineWeight} from './parts/amount-text.ts'
import {basisText} from './parts/headline.tsx'
import {publishedFigures, publishedText} from './parts/published-figures.ts'
import type {Site} from './site.ts'

/** The text under a video or a picture: ingredients, figures, allergens, link. */
export function captionText(site: Site, computed: Computed): string {
  const {cookbook, words} = site
  const {recipe} = computed
  const {address} = cookbook.settings
  const {figures} = publishedFigures(computed, cookbook.settings)
  const macros = figures.map(
    (figure) => `${words.nutrientName[figure.nutrient]} ${publishedText(figure, words)}`,
  )
  const contains = words.declaredAllergens(
    containedAllergens(computed).contains,
    cookbook.settings.rules,
  )
  return [
    recipe.title.value,
    recipe.serves ? words.servings(recipe.serves.value) : undefined,
    '',
    ...computed.lines.map((line) => ingredientText(line, words)),
    '',
    `${basisText(computed, words)}: ${macros.join(', ')}`,
    contains.length > 0 ? words.card.contains(contains.join(', ')) : undefined,
    address
      ? `${words.caption.full}: ${absoluteHref(address, recipePath(recipe.slug))}`
      : undefined,
    '',
  ]
    .filter((text) => text !== undefined)
    .join('\n')
}

function ingredientText(entry: ComputedLine, words: Site['words']) {
  const {line, role} = entry
  const weight = lineWeight(entry)
  const measure = kitchenMeasure(line.amount.value)
  const amount = measure === undefined ? weight : `${weight} (${measure})`
  const note = role === 'optional' ? `, ${words.recipe.optional}` : ''
  return `${amount} ${line.name.value}${note}`
}
