import type {Computed} from '../src/nutrition/computed.ts'
import {absoluteHref, recipePath} from './addresses.ts'
import {allergenSentences} from './parts/allergen-texts.ts'
import {basisText} from './parts/headline.tsx'
import {ingredientText} from './parts/ingredient-text.ts'
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
  return [
    recipe.title.value,
    recipe.serves ? words.servings(recipe.serves.value) : undefined,
    '',
    ...computed.lines.map((line) => ingredientText(line, words)),
    '',
    `${basisText(computed, words)}: ${macros.join(', ')}`,
    allergenSentences(site, computed) || undefined,
    address
      ? `${words.caption.full}: ${absoluteHref(address, recipePath(recipe.slug))}`
      : undefined,
    '',
  ]
    .filter((text) => text !== undefined)
    .join('\n')
}
