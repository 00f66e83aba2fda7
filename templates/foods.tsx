import type {Food} from '../src/food/food.ts'
import {nutrientUnit, type PublishedNutrient} from '../src/food/nutrients.ts'
import {publishedBy, publishedFigure} from '../src/nutrition/published.ts'
import {roundedText, usualDecimals} from '../src/units/format-figure.ts'
import {foodsPath, overviewStylesheetPath, recipePath, relativeHref} from './addresses.ts'
import type {Part} from './part.ts'
import {type FoodInUse, foodsInUse} from './parts/foods-in-use.ts'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'
import {withDecimal} from './words/decimal.ts'

const columns: readonly PublishedNutrient[] = [
  'energy',
  'protein',
  'carbohydrate',
  'fat',
  'fibre',
  'salt',
]

/** Every food in use: its figures, where they come from, who uses it. */
export function foodsPage(site: Site): Page {
  const {words} = site
  return shell(site, {
    path: foodsPath,
    title: words.foodsPage.title,
    stylesheets: [overviewStylesheetPath],
    main: (
      <>
        <h1>{words.foodsPage.title}</h1>
        <p>{words.foodsPage.intro}</p>
        <div class="frame">
          <table class="wide">
            <thead>
              <tr>
                <th scope="col">{words.foodsPage.food}</th>
                {columns.map((nutrient) => (
                  <th scope="col" class="number">
                    {words.nutrient[nutrient]} <span class="unit">{nutrientUnit[nutrient]}</span>
                  </th>
                ))}
              </tr>
            </thead>
            {foodsInUse(site.computed.values()).map((use) => foodRows(site, use))}
          </table>
        </div>
      </>
    ),
  })
}

/** The figures in one row, what is to be said about them below, over the whole width. */
function foodRows(site: Site, {food, users}: FoodInUse): Part {
  const {words} = site
  return (
    <tbody id={foodAnchor(food)}>
      <tr class="upper">
        <th scope="row">{food.name}</th>
        {columns.map((nutrient) => (
          <td class="number">{figureNumber(site, food, nutrient)}</td>
        ))}
      </tr>
      <tr>
        <td colSpan={columns.length + 1}>
          <span class="note">
            {foodOrigin(food, words)}. {words.foodsPage.usedBy}{' '}
            {users.map(({recipe}, index) => (
              <>
                {index > 0 ? ', ' : ''}
                <a href={relativeHref(foodsPath, recipePath(recipe.slug))}>{recipe.title.value}</a>
              </>
            ))}
            .
          </span>
        </td>
      </tr>
    </tbody>
  )
}

function figureNumber({cookbook, words}: Site, food: Food, nutrient: PublishedNutrient): string {
  const {value, missing} = publishedFigure(food.per100g, nutrient, publishedBy(cookbook.settings))
  if (missing.size > 0) return words.unknown
  const decimals = nutrient === 'salt' ? 2 : usualDecimals(value, nutrientUnit[nutrient])
  return withDecimal(roundedText(value, decimals), words)
}

/** Where the figures of a food come from, in words. */
export function foodOrigin({provenance}: Food, words: Site['words']): string {
  const text = words.foodsPage
  switch (provenance.kind) {
    case 'label':
      return text.fromLabel
    case 'regulation':
      return provenance.document
    case 'table':
      return text.fromTable(provenance.table, provenance.row)
  }
}

/** An id a link can name: letters and digits of the food's own. */
function foodAnchor({id}: Food): string {
  return id.replaceAll(/[^A-Za-z0-9]+/g, '-')
}
