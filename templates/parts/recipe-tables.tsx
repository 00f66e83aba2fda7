import type {Computed} from '../../src/nutrition/computed.ts'
import {formatFigure} from '../../src/units/format-figure.ts'
import {recipePath, relativeHref} from '../addresses.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {withDecimal} from '../words/decimal.ts'
import {type DishRow, dishColumns} from './dish-columns.ts'
import {figureHeads, figureNumbers} from './figure-columns.tsx'
import {daysText} from './time-text.ts'

/**
 * Dishes with their figures.
 * @param from path of the page the table stands on
 */
export function dishTable(site: Site, rows: readonly DishRow[], from: string): Part {
  const columns = dishColumns(site)
  return (
    <table class="recipes" id="recipe-table">
      <thead>
        <tr>
          <th scope="col" data-key="title">
            {site.words.index.recipe}
          </th>
          {columns.map(({key, name, unit, isSpare}) => (
            <th scope="col" class={numberClass(isSpare)} data-key={key}>
              {name}
              {unit === undefined ? undefined : unitPart(unit)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({computed, cells}) => (
          <tr>
            <th scope="row">{recipeLink(computed, from)}</th>
            {columns.map(({isSpare}, column) => (
              <td class={numberClass(isSpare)}>{cells[column]?.text}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function unitPart(unit: string): Part {
  return (
    <>
      {' '}
      <span class="unit">{unit}</span>
    </>
  )
}

function numberClass(isSpare: boolean): string {
  return isSpare ? 'number spare' : 'number'
}

/**
 * Components with their figures.
 * @param from path of the page the table stands on
 */
export function componentTable(site: Site, components: readonly Computed[], from: string): Part {
  const {words} = site
  return (
    <table class="recipes">
      <thead>
        <tr>
          <th scope="col">{words.index.recipe}</th>
          {figureHeads(words)}
          <th scope="col" class="number spare">
            {words.index.batch}
          </th>
          <th scope="col" class="number spare">
            {words.index.keeps}
          </th>
        </tr>
      </thead>
      <tbody>{components.map((computed) => componentRow(site, computed, from))}</tbody>
    </table>
  )
}

function componentRow(site: Site, computed: Computed, from: string): Part {
  const {words} = site
  const {batchGrams, recipe} = computed
  const fridge = recipe.keeps?.fridgeDays?.value
  return (
    <tr>
      <th scope="row">{recipeLink(computed, from)}</th>
      {figureNumbers(site, computed, '100 g')}
      <td class="number spare">
        {batchGrams ? withDecimal(formatFigure(batchGrams.value, 'g'), words) : undefined}
      </td>
      <td class="number spare">{fridge === undefined ? undefined : daysText(fridge, words)}</td>
    </tr>
  )
}

function recipeLink({recipe}: Computed, from: string): Part {
  return <a href={relativeHref(from, recipePath(recipe.slug))}>{recipe.title.value}</a>
}
