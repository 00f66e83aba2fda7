import type {Settings} from '../cookbook/cookbook.ts'
import {isComplete} from '../food/figures.ts'
import type {Food} from '../food/food.ts'
import {nutrientText} from '../food/nutrient-text.ts'
import {nutrientName} from '../food/nutrients.ts'
import {mainNutrients, publishedBy, publishedFigure} from '../nutrition/published.ts'

/** `per 100 g: energy 354 kcal, protein 9.9 g, …`; what nobody knows is said to be unknown. */
export function macrosText({per100g}: Food, settings: Settings): string {
  const publishing = publishedBy(settings)
  const figures = mainNutrients.map((nutrient) => {
    const figure = publishedFigure(per100g, nutrient, publishing)
    const text = isComplete(figure) ? nutrientText(nutrient, figure.value) : 'unknown'
    return `${nutrientName[nutrient]} ${text}`
  })
  return `per 100 g: ${figures.join(', ')}`
}
