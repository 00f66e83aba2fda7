import type {Plan} from '../src/cookbook/cookbook.ts'
import type {ShoppingData} from '../src/shopping/shopping-data.ts'
import {type ShoppingList, shoppingList, type Wanted} from '../src/shopping/shopping-list.ts'
import {
  overviewStylesheetPath,
  planPath,
  recipePath,
  relativeHref,
  shoppingPath,
  shoppingStylesheetPath,
} from './addresses.ts'
import type {Part} from './part.ts'
import {authored} from './parts/authored.ts'
import {figureHeads, figureNumbers} from './parts/figure-columns.tsx'
import {listFragment} from './parts/list-fragment.ts'
import {shoppingListPart} from './parts/shopping-list.tsx'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'

/** What a plan makes somebody buy. */
export function planList(plan: Plan, data: ShoppingData): ShoppingList {
  return shoppingList(data, wantedBy(plan))
}

function wantedBy({servings}: Plan): readonly Wanted[] {
  return servings.map(({recipe, servings}) => ({slug: recipe.value, servings}))
}

/** A plan: what is cooked, how much of it, and the list to shop by. */
export function planPage(site: Site, plan: Plan): Page {
  const {words} = site
  const path = planPath(plan.slug)
  return shell(site, {
    path,
    title: plan.title.value,
    kind: 'plan',
    stylesheets: [overviewStylesheetPath, shoppingStylesheetPath],
    ...(plan.summary && {description: plan.summary.value}),
    main: (
      <>
        <h1>{plan.title.value}</h1>
        {plan.summary ? <p class="summary">{plan.summary.value}</p> : undefined}
        {authored(plan.body, plan.path, path)}
        <section aria-labelledby="part-cooks">
          <h2 id="part-cooks">{words.plan.cooks}</h2>
          <p>{words.plan.figures}</p>
          {cooked(site, plan, path)}
        </section>
        <section aria-labelledby="part-list">
          <h2 id="part-list">{words.plan.list}</h2>
          <p>
            {words.shopping.intro}{' '}
            <a
              class="off-paper"
              href={`${relativeHref(path, shoppingPath)}${listFragment(wantedBy(plan))}`}
            >
              {words.plan.tick}
            </a>
          </p>
          {shoppingListPart(planList(plan, site.shopping), site, 'h3')}
        </section>
      </>
    ),
  })
}

function cooked(site: Site, plan: Plan, path: string): Part {
  const {words, computed} = site
  return (
    <table class="recipes">
      <thead>
        <tr>
          <th scope="col">{words.index.recipe}</th>
          {figureHeads(words)}
        </tr>
      </thead>
      <tbody>
        {plan.servings.map(({recipe, servings}) => {
          const one = computed.get(recipe.value)
          return (
            <tr>
              <th scope="row">
                {one ? (
                  <a href={relativeHref(path, recipePath(recipe.value))}>
                    {one.recipe.title.value}
                  </a>
                ) : (
                  recipe.value
                )}
                <span class="note"> {words.servings(servings)}</span>
              </th>
              {one ? figureNumbers(site, one, 'serving') : undefined}
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
