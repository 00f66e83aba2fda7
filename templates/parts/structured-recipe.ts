import type {Element} from 'hast'
import {isComplete} from '../../src/food/figures.ts'
import type {PublishedNutrient} from '../../src/food/nutrients.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {formatFigure, roundedText} from '../../src/units/format-figure.ts'
import {absoluteHref, recipePath} from '../addresses.ts'
import type {Site} from '../site.ts'
import {checkedPromises} from './checked-promises.ts'
import {portionGrams} from './headline.tsx'
import {ingredientText} from './ingredient-text.ts'
import {jsonScript} from './json-script.ts'
import {publishedOn} from './published-figures.ts'
import {isoDuration} from './time-text.ts'

/** The recipe in the vocabulary of schema.org (Recipe, NutritionInformation), for machines. */
export function structuredRecipe(site: Site, computed: Computed): Element {
  return jsonScript(recipeData(site, computed), 'application/ld+json')
}

/** The data of the block; keys that have nothing to say are left out. */
export function recipeData(site: Site, computed: Computed): Readonly<Record<string, unknown>> {
  const {recipe} = computed
  const {settings} = site.cookbook
  const {address, language} = settings
  const image = recipe.image && `images/${recipe.image.value.path}`
  return dropEmpty({
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    name: recipe.title.value,
    description: recipe.summary?.value,
    inLanguage: language,
    url: address && absoluteHref(address, recipePath(recipe.slug)),
    image: address && image && absoluteHref(address, image),
    keywords: recipe.tags.map(({value}) => value).join(', ') || undefined,
    recipeYield: recipe.serves && site.words.servings(recipe.serves.value),
    ...durations(computed),
    recipeIngredient: computed.lines.map((line) => ingredientText(line, site.words)),
    recipeInstructions: instructions(computed),
    suitableForDiet: diets(site, computed),
    nutrition: nutrition(site, computed),
  })
}

/** Hands-on time as preparation and the rest as cooking: the vocabulary wants the two as a pair. */
function durations({recipe}: Computed): Record<string, string> {
  const total = recipe.totalMinutes?.value
  const handsOn = recipe.handsOnMinutes?.value
  return {
    ...(total !== undefined && {totalTime: isoDuration(total)}),
    ...(total !== undefined &&
      handsOn !== undefined &&
      total >= handsOn && {prepTime: isoDuration(handsOn), cookTime: isoDuration(total - handsOn)}),
  }
}

function instructions({recipe}: Computed): readonly Record<string, unknown>[] | undefined {
  const steps = recipe.method.passages.filter(({kind}) => kind === 'step')
  const passages = steps.length > 0 ? steps : recipe.method.passages.filter(isText)
  if (passages.length === 0) return undefined
  return passages.map(({text}) => ({'@type': 'HowToStep', text}))
}

function isText({kind}: {readonly kind: string}): boolean {
  return kind === 'text'
}

/** The diets of schema.org (RestrictedDiet) that ingredients can be held to. */
const dietProperties: ReadonlyMap<string, string> = new Map([
  ['vegetarian', 'https://schema.org/VegetarianDiet'],
  ['vegan', 'https://schema.org/VeganDiet'],
])

function diets({cookbook}: Site, {recipe}: Computed): readonly string[] | undefined {
  const {diets} = checkedPromises(recipe, cookbook.settings)
  const named = diets.flatMap(({name}) => dietProperties.get(name) ?? [])
  return named.length > 0 ? named : undefined
}

/** schema.org's property for a nutrient, with the word or unit its text form takes. */
const nutritionProperties: readonly {
  readonly nutrient: PublishedNutrient
  readonly property: string
  readonly decimals: number
  readonly unit: string
}[] = [
  {nutrient: 'energy', property: 'calories', decimals: 0, unit: 'calories'},
  {nutrient: 'protein', property: 'proteinContent', decimals: 1, unit: 'g'},
  {nutrient: 'carbohydrate', property: 'carbohydrateContent', decimals: 1, unit: 'g'},
  {nutrient: 'fat', property: 'fatContent', decimals: 1, unit: 'g'},
  {nutrient: 'saturated', property: 'saturatedFatContent', decimals: 1, unit: 'g'},
  {nutrient: 'trans', property: 'transFatContent', decimals: 1, unit: 'g'},
  {nutrient: 'fibre', property: 'fiberContent', decimals: 1, unit: 'g'},
  {nutrient: 'sugars', property: 'sugarContent', decimals: 1, unit: 'g'},
  {nutrient: 'sodium', property: 'sodiumContent', decimals: 0, unit: 'mg'},
  {nutrient: 'cholesterol', property: 'cholesterolContent', decimals: 0, unit: 'mg'},
]

/** Figures of one serving, as the page publishes them; an incomplete figure is not given at all. */
function nutrition({cookbook}: Site, computed: Computed): Record<string, unknown> | undefined {
  if (!computed.perServing) return undefined
  const names = nutritionProperties.map(({nutrient}) => nutrient)
  const figures = publishedOn('serving', names, computed, cookbook.settings)
  const grams = portionGrams(computed)
  return dropEmpty({
    '@type': 'NutritionInformation',
    servingSize: grams === undefined ? undefined : formatFigure(grams, 'g'),
    ...Object.fromEntries(
      nutritionProperties.flatMap(({property, decimals, unit}, index) => {
        const figure = figures[index]
        if (!figure || (!figure.judged && !isComplete(figure.computed))) return []
        const value = Number(roundedText(figure.value, decimals))
        return [[property, `${value} ${unit}`]]
      }),
    ),
  })
}

function dropEmpty(data: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(data).filter(([, value]) => value !== undefined))
}
