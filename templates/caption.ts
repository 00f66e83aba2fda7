import type {Computed} from '../src/nutrition/computed.ts'
import {absoluteHref, recipePath} from './addresses.ts'
import {allergenSentences} from './parts/allergen-texts.ts'
import {captionOf} from './parts/caption-text.ts'
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
  return captionOf({
    title: recipe.title.value,
    servings: recipe.serves && words.servings(recipe.serves.value),
    ingredients: computed.lines.map((line) => ingredientText(line, words)),
    basis: basisText(computed, words),
    figures: figures.map(
      (figure) => `${words.nutrientName[figure.nutrient]} ${publishedText(figure, words)}`,
    ),
    allergens: allergenSentences(site, computed),
    link: address && `${words.caption.full}: ${absoluteHref(address, recipePath(recipe.slug))}`,
  })
}
