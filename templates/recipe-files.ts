import type {Basis, Figures} from '../src/food/figures.ts'
import {nutrientUnit} from '../src/food/nutrients.ts'
import type {Computed} from '../src/nutrition/computed.ts'
import {mainNutrients, publishedBy, publishedFigure} from '../src/nutrition/published.ts'
import {roundedText} from '../src/units/format-figure.ts'
import {recipeData} from './parts/structured-recipe.ts'
import type {Site} from './site.ts'

/** The recipe for machines, as a file: JSON-LD, schema.org. */
export function jsonLdText(site: Site, computed: Computed): string {
  return `${JSON.stringify(recipeData(site, computed), undefined, 2)}\n`
}

/**
 * Amounts and what each line adds to the batch, for a spreadsheet (RFC 4180: commas, CRLF). Figures
 * have a point whatever the language, and none of them is rounded to be read.
 */
export function csvText({cookbook: {settings}, words}: Site, computed: Computed): string {
  const {csvColumns} = words.cooking
  const publishing = publishedBy(settings, computed.recipe)
  const heads = [
    csvColumns.ingredient,
    csvColumns.grams,
    ...mainNutrients.map(
      (nutrient) => `${words.nutrientName[nutrient]} (${nutrientUnit[nutrient]})`,
    ),
  ]
  const row = (name: string, grams: number | undefined, figures: Figures<Basis> | undefined) => [
    name,
    grams === undefined ? '' : roundedText(grams, 1),
    ...mainNutrients.map((nutrient) =>
      figures ? roundedText(publishedFigure(figures, nutrient, publishing).value, 2) : '',
    ),
  ]
  const {batch, batchGrams, perServing, portionGrams} = computed
  return [
    heads,
    ...computed.lines.map(({line, grams, role, adds}) =>
      row(line.name.value, grams.value, role === 'counted' ? adds : undefined),
    ),
    row(csvColumns.total, batchGrams?.value, batch),
    ...(perServing ? [row(csvColumns.serving, portionGrams?.value, perServing)] : []),
  ]
    .map((cells) => `${cells.map(csvCell).join(',')}\r\n`)
    .join('')
}

/**
 * Quoted where it must be, and where it holds a `;`, which parts the cells in many languages. A text
 * that a spreadsheet would run as a formula gets a quote before it.
 */
function csvCell(text: string): string {
  const harmless = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text
  return /[",;\t\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless
}
