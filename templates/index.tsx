import type {Computed} from '../src/nutrition/computed.ts'
import type {Cost} from '../src/shopping/cost.ts'
import {formatFigure, roundedText} from '../src/units/format-figure.ts'
import {indexPath, overviewStylesheetPath, planPath, recipePath, relativeHref} from './addresses.ts'
import type {Part} from './part.ts'
import {figureHeads, figureNumbers} from './parts/figure-columns.tsx'
import {hasCosts, proteinDensity, searchable, servingCost} from './parts/finding-data.ts'
import {portionGrams} from './parts/headline.tsx'
import {recipeFinder} from './parts/recipe-finder.tsx'
import {daysText, minutesText} from './parts/time-text.ts'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'
import {withDecimal} from './words/decimal.ts'

/** Every recipe with its figures, in plain tables; a script adds finding and sorting. */
export function indexPage(site: Site): Page {
  const {words, cookbook} = site
  const all = [...site.computed.values()]
  const dishes = all.filter(({perServing}) => perServing)
  const components = all.filter(({perServing}) => !perServing)
  return shell(site, {
    path: indexPath,
    title: words.index.title,
    scripts: ['recipe-table'],
    stylesheets: [overviewStylesheetPath],
    main: (
      <>
        <h1>{cookbook.settings.title}</h1>
        {cookbook.settings.description ? (
          <p class="summary">{cookbook.settings.description}</p>
        ) : undefined}
        {dishes.length > 0 ? dishPart(site, dishes) : undefined}
        {components.length > 0 ? componentPart(site, components) : undefined}
        {planPart(site)}
      </>
    ),
  })
}

function dishPart(site: Site, dishes: readonly Computed[]): Part {
  const {words} = site
  const {currency} = site.cookbook.settings
  return (
    <section aria-labelledby="part-recipes">
      <h2 id="part-recipes">{words.index.title}</h2>
      <p>{words.index.intro(dishes.length)}</p>
      {recipeFinder(site, dishes)}
      <table class="recipes" id="recipe-table">
        <thead>
          <tr>
            <th scope="col" data-key="title">
              {words.index.recipe}
            </th>
            {figureHeads(words)}
            {spareHead('density', words.finding.density, 'g')}
            {spareHead('serving', words.index.serving, 'g')}
            {spareHead('minutes', words.index.time)}
            {hasCosts(site) ? spareHead('cost', words.finding.cost, currency) : undefined}
          </tr>
        </thead>
        <tbody>{dishes.map((computed) => dishRow(site, computed))}</tbody>
      </table>
    </section>
  )
}

/** A column that a phone has no room for. */
function spareHead(key: string, name: string, unit?: string): Part {
  return (
    <th scope="col" class="number spare" data-key={key}>
      {name}
      {unit === undefined ? undefined : <span class="unit"> {unit}</span>}
    </th>
  )
}

function dishRow(site: Site, computed: Computed): Part {
  const {recipe} = computed
  const portion = portionGrams(computed)
  const minutes = recipe.totalMinutes?.value
  const density = proteinDensity(site, computed)
  const cost = servingCost(site, recipe.slug)
  return (
    <tr {...searchable(site, computed)}>
      <th scope="row">{recipeLink(computed)}</th>
      {figureNumbers(site, computed, 'serving')}
      {spareCell(
        density?.value,
        density && withDecimal(roundedText(density.value, 1), site.words),
        density?.isOpen,
      )}
      {spareCell(portion, portion === undefined ? undefined : roundedText(portion, 0))}
      {spareCell(minutes, minutes === undefined ? undefined : minutesText(minutes, site.words))}
      {hasCosts(site)
        ? spareCell(cost?.amount, costText(cost, site), !cost?.isComplete)
        : undefined}
    </tr>
  )
}

function spareCell(value: number | undefined, text: string | undefined, isOpen = false): Part {
  return (
    <td
      class="number spare"
      data-value={value === undefined ? undefined : `${value}`}
      data-open={value !== undefined && isOpen ? '' : undefined}
    >
      {text}
    </td>
  )
}

function costText(cost: Cost | undefined, {words}: Site): string | undefined {
  if (cost === undefined) return undefined
  const text = withDecimal(roundedText(cost.amount, 2), words)
  return cost.isComplete ? text : words.atLeast(text)
}

function recipeLink({recipe}: Computed): Part {
  return <a href={relativeHref(indexPath, recipePath(recipe.slug))}>{recipe.title.value}</a>
}

function componentPart(site: Site, components: readonly Computed[]): Part {
  const {words} = site
  return (
    <section aria-labelledby="part-components">
      <h2 id="part-components">{words.index.components}</h2>
      <p>{words.index.componentsIntro}</p>
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
        <tbody>{components.map((computed) => componentRow(site, computed))}</tbody>
      </table>
    </section>
  )
}

function componentRow(site: Site, computed: Computed): Part {
  const {batchGrams, recipe} = computed
  const fridge = recipe.keeps?.fridgeDays?.value
  return (
    <tr>
      <th scope="row">{recipeLink(computed)}</th>
      {figureNumbers(site, computed, '100 g')}
      <td class="number spare">{batchGrams ? formatFigure(batchGrams.value, 'g') : undefined}</td>
      <td class="number spare">
        {fridge === undefined ? undefined : daysText(fridge, site.words)}
      </td>
    </tr>
  )
}

function planPart({cookbook, words}: Site): Part {
  if (cookbook.plans.length === 0) return undefined
  return (
    <section aria-labelledby="part-plans">
      <h2 id="part-plans">{words.index.planned}</h2>
      <ul>
        {cookbook.plans.map(({slug, title, summary}) => (
          <li>
            <a href={relativeHref(indexPath, planPath(slug))}>{title.value}</a>
            {summary ? `: ${summary.value}` : ''}
          </li>
        ))}
      </ul>
    </section>
  )
}
