import type {Computed} from '../src/nutrition/computed.ts'
import {formatFigure} from '../src/units/format-figure.ts'
import {indexPath, planPath, recipePath, relativeHref} from './addresses.ts'
import type {Part} from './part.ts'
import {figureHeads, figureNumbers} from './parts/figure-columns.tsx'
import {portionGrams} from './parts/headline.tsx'
import {daysText, minutesText} from './parts/time-text.ts'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'

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
  return (
    <section aria-labelledby="part-recipes">
      <h2 id="part-recipes">{words.index.title}</h2>
      <p>{words.index.intro(dishes.length)}</p>
      {finder(words)}
      <table class="recipes" id="recipe-table">
        <thead>
          <tr>
            <th scope="col">{words.index.recipe}</th>
            {figureHeads(words)}
            <th scope="col" class="number spare">
              {words.index.serving}
            </th>
            <th scope="col" class="number spare">
              {words.index.time}
            </th>
          </tr>
        </thead>
        <tbody>{dishes.map((computed) => dishRow(site, computed))}</tbody>
      </table>
    </section>
  )
}

/** Hidden until the script that makes it work has come. */
function finder({index}: Site['words']): Part {
  return (
    <div id="finder" class="row" hidden data-shown={index.shown}>
      <p>
        <label for="find-words">{index.name}</label>
        <input type="search" id="find-words" autoComplete="off" />
      </p>
      <p>
        <label for="find-energy">{index.mostEnergy}</label>
        <input type="number" id="find-energy" min="0" step="any" inputMode="decimal" />
      </p>
      <p>
        <label for="find-protein">{index.leastProtein}</label>
        <input type="number" id="find-protein" min="0" step="any" inputMode="decimal" />
      </p>
      <p id="find-status" role="status" />
    </div>
  )
}

function dishRow(site: Site, computed: Computed): Part {
  const {recipe} = computed
  const portion = portionGrams(computed)
  const minutes = recipe.totalMinutes?.value
  return (
    <tr data-words={recipe.tags.map(({value}) => value).join(' ')}>
      <th scope="row">{recipeLink(computed)}</th>
      {figureNumbers(site, computed, 'serving')}
      <td class="number spare" data-value={portion === undefined ? undefined : `${portion}`}>
        {portion === undefined ? undefined : formatFigure(portion, 'g')}
      </td>
      <td class="number spare" data-value={minutes === undefined ? undefined : `${minutes}`}>
        {minutes === undefined ? undefined : minutesText(minutes, site.words)}
      </td>
    </tr>
  )
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
