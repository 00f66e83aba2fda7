import type {Plan} from '../src/cookbook/cookbook.ts'
import type {ShoppingData} from '../src/shopping/shopping-data.ts'
import {shoppingParts} from '../src/shopping/shopping-parts.ts'
import {
  planPath,
  relativeHref,
  shoppingNamesPath,
  shoppingPartPath,
  shoppingPath,
  shoppingStylesheetPath,
} from './addresses.ts'
import type {Part} from './part.ts'
import {dataScript} from './parts/data-script.ts'
import {jsonScript} from './parts/json-script.ts'
import {isInParts, shoppingNames, shoppingPageData} from './parts/shopping-data.ts'
import {shoppingListPart} from './parts/shopping-list.tsx'
import {planList} from './plan.tsx'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'

/** So many plans have their lists on this page; with more, each list stands with its plan alone. */
const mostLists = 12

/** A list for any servings of any recipes, chosen in the browser; for the plans, without a script. */
export function shoppingPage(site: Site): Page {
  const {words, cookbook} = site
  return shell(site, {
    path: shoppingPath,
    title: words.shopping.title,
    scripts: ['shopping-list'],
    stylesheets: [shoppingStylesheetPath],
    kind: 'shopping-page',
    main: (
      <>
        <h1>{words.shopping.title}</h1>
        <p>{words.shopping.intro}</p>
        {chooser(site)}
        <section aria-labelledby="part-plans">
          <h2 id="part-plans">{words.shopping.plans}</h2>
          {cookbook.plans.length === 0 ? <p>{words.shopping.noPlans}</p> : undefined}
          {cookbook.plans.length > mostLists ? planLinks(site) : planLists(site)}
        </section>
      </>
    ),
  })
}

/** What the page's script fetches when it is needed; nothing where the page holds it all. */
export function shoppingFiles({
  shopping,
}: Site): readonly {readonly path: string; readonly content: string}[] {
  if (!isInParts(shopping)) return []
  return [
    {path: shoppingNamesPath, content: dataScript(shoppingNamesPath, shoppingNames(shopping))},
    ...shoppingParts(shopping).map((part, number) => {
      const path = shoppingPartPath(number)
      return {path, content: dataScript(path, part)}
    }),
  ]
}

function planLists(site: Site): Part[] {
  return site.cookbook.plans.map((plan) => (
    <section>
      <h3 class="plan">{planLink(plan)}</h3>
      {shoppingListPart(planList(plan, site.shopping), site, 'h4')}
    </section>
  ))
}

function planLinks({cookbook}: Site): Part {
  return (
    <ul>
      {cookbook.plans.map((plan) => (
        <li>{planLink(plan)}</li>
      ))}
    </ul>
  )
}

function planLink({slug, title}: Plan): Part {
  return <a href={relativeHref(shoppingPath, planPath(slug))}>{title.value}</a>
}

/** Hidden until the script that makes it work has come. */
function chooser(site: Site): Part {
  const {words, shopping, cookbook} = site
  return (
    <div id="chooser" hidden>
      {jsonScript(shoppingPageData(site), 'application/json', 'shopping-data')}
      <section aria-labelledby="part-choose">
        <h2 id="part-choose">{words.shopping.choose}</h2>
        {isInParts(shopping) ? recipeSearch(words) : undefined}
        <ul class="choose">
          {isInParts(shopping)
            ? undefined
            : shopping.recipes.map((recipe) => servingsField(recipe, words))}
        </ul>
        <p class="row">
          {cookbook.plans.map(({title}, index) => (
            <button type="button" data-plan={`${index}`}>
              {title.value}
            </button>
          ))}
          <button type="button" data-clear="">
            {words.shopping.clear}
          </button>
        </p>
      </section>
      <section aria-labelledby="part-result">
        <h2 id="part-result">{words.shopping.result}</h2>
        <p id="list-status" role="status">
          {words.list.empty}
        </p>
        <p id="list-cost" />
        <div id="list" class="shopping" />
        <form id="own" class="row">
          <p>
            <label for="own-name">{words.shopping.own}</label>
            <input type="text" id="own-name" maxLength={80} autoComplete="off" />
          </p>
          <p>
            <button type="submit">{words.shopping.add}</button>
          </p>
        </form>
        <p class="row" id="share">
          <button type="button" id="copy-list">
            {words.shopping.copyList}
          </button>
          <button type="button" id="copy-link">
            {words.shopping.copyLink}
          </button>
        </p>
        <p id="share-status" role="status" />
        <p class="note" id="offline" hidden>
          {words.shopping.offline}
        </p>
      </section>
    </div>
  )
}

/** Where there are too many recipes to show a field for each. */
function recipeSearch({shopping}: Site['words']): Part {
  return (
    <>
      <p class="row">
        <span>
          <label for="choose-find">{shopping.find}</label>
          <input type="search" id="choose-find" autoComplete="off" />
        </span>
      </p>
      <p id="choose-status" role="status" />
    </>
  )
}

function servingsField(
  {slug, title, serves}: ShoppingData['recipes'][number],
  words: Site['words'],
): Part {
  return (
    <li>
      <input
        type="number"
        id={`servings-${slug}`}
        data-recipe={slug}
        min="0"
        step="any"
        value="0"
        inputMode="decimal"
      />
      <label for={`servings-${slug}`}>
        {title}
        {serves === undefined ? (
          <span class="measure">, {words.shopping.script.batches}</span>
        ) : undefined}
      </label>
    </li>
  )
}
