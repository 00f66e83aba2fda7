import type {Computed} from '../src/nutrition/computed.ts'
import {formatFigure} from '../src/units/format-figure.ts'
import {indexPath, planPath, recipePath, relativeHref} from './addresses.ts'
import type {Part} from './part.ts'
import {portionGrams} from './parts/headline.tsx'
import {mainNutrients, publishedOn, publishedText} from './parts/published-figures.ts'
import {daysText, minutesText} from './parts/time-text.ts'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'

/** Every recipe with its figures, in one plain table. */
export function indexPage(site: Site): Page {
  const {words, cookbook} = site
  const all = [...site.computed.values()]
  const dishes = all.filter(({perServing}) => perServing)
  const components = all.filter(({perServing}) => !perServing)
  return shell(site, {
    path: indexPath,
    title: words.index.title,
    main: (
      <>
        <h1>{cookbook.settings.title}</h1>
        {cookbook.settings.description ? (
          <p class="summary">{cookbook.settings.description}</p>
        ) : undefined}
        {dishes.length > 0 ? dishTable(site, dishes) : undefined}
        {components.length > 0 ? componentTable(site, components) : undefined}
        {planList(site)}
      </>
    ),
  })
}

function dishTable(site: Site, dishes: readonly Computed[]): Part {
  const {words} = site
  const heads = mainNutrients.map((nutrient) => words.nutrient[nutrient])
  return (
    <section aria-labelledby="part-recipes">
      <h2 id="part-recipes">{words.index.title}</h2>
      <p>{words.index.intro(dishes.length)}</p>
      <table class="recipes" data-sortable="" data-sort-text={words.index.sortBy('{column}')}>
        <thead>
          <tr>
            <th scope="col">{words.index.recipe}</th>
            {heads.map((head) => (
              <th scope="col" class="number">
                {head}
              </th>
            ))}
            <th scope="col" class="number">
              {words.index.serving}
            </th>
            <th scope="col" class="number">
              {words.index.time}
            </th>
          </tr>
        </thead>
        <tbody>{dishes.map((computed) => dishRow(site, computed))}</tbody>
      </table>
    </section>
  )
}

function dishRow({words, cookbook}: Site, computed: Computed): Part {
  const {recipe} = computed
  const portion = portionGrams(computed)
  const minutes = recipe.totalMinutes?.value
  return (
    <tr data-words={recipe.tags.map(({value}) => value).join(' ')}>
      <th scope="row">{recipeLink(computed)}</th>
      {publishedOn('serving', mainNutrients, computed, cookbook.settings).map((figure) => (
        <td class="number" data-value={`${figure.value}`}>
          {publishedText(figure, words)}
        </td>
      ))}
      <td class="number" data-value={portion === undefined ? undefined : `${portion}`}>
        {portion === undefined ? undefined : formatFigure(portion, 'g')}
      </td>
      <td class="number" data-value={minutes === undefined ? undefined : `${minutes}`}>
        {minutes === undefined ? undefined : minutesText(minutes, words)}
      </td>
    </tr>
  )
}

function recipeLink({recipe}: Computed): Part {
  return <a href={relativeHref(indexPath, recipePath(recipe.slug))}>{recipe.title.value}</a>
}

function componentTable({words, cookbook}: Site, components: readonly Computed[]): Part {
  return (
    <section aria-labelledby="part-components">
      <h2 id="part-components">{words.index.components}</h2>
      <p>{words.index.componentsIntro}</p>
      <table class="recipes">
        <thead>
          <tr>
            <th scope="col">{words.index.recipe}</th>
            {mainNutrients.map((nutrient) => (
              <th scope="col" class="number">
                {words.nutrient[nutrient]}
              </th>
            ))}
            <th scope="col" class="number">
              {words.index.batch}
            </th>
            <th scope="col" class="number">
              {words.index.keeps}
            </th>
          </tr>
        </thead>
        <tbody>
          {components.map((computed) => {
            const figures = publishedOn('100 g', mainNutrients, computed, cookbook.settings)
            const fridge = computed.recipe.keeps?.fridgeDays?.value
            return (
              <tr>
                <th scope="row">{recipeLink(computed)}</th>
                {mainNutrients.map((_, index) => {
                  const figure = figures[index]
                  return <td class="number">{figure ? publishedText(figure, words) : undefined}</td>
                })}
                <td class="number">
                  {computed.batchGrams ? formatFigure(computed.batchGrams.value, 'g') : undefined}
                </td>
                <td class="number">{fridge === undefined ? undefined : daysText(fridge, words)}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </section>
  )
}

function planList({cookbook, words}: Site): Part {
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
