import {once} from '../src/units/remembered.ts'
import {
  componentsPath,
  dishesPath,
  findingDataPath,
  indexPath,
  overviewStylesheetPath,
  planPath,
  relativeHref,
} from './addresses.ts'
import type {Part} from './part.ts'
import {dataScript} from './parts/data-script.ts'
import {type DishRow, dishRows} from './parts/dish-columns.ts'
import {type FindingData, findingData} from './parts/finding-data.ts'
import {recipeFinder} from './parts/recipe-finder.tsx'
import {componentTable, dishTable} from './parts/recipe-tables.tsx'
import {partLinks, type TablePart, tableParts} from './parts/table-parts.tsx'
import {shell} from './shell.tsx'
import type {Page, PageToMake, Site} from './site.ts'

/** The first page, the pages its tables go on on, and the data that its script finds by. */
export interface Index {
  readonly pages: readonly PageToMake[]
  /** What is too much to stand in a page. */
  readonly files: readonly {readonly path: string; readonly make: () => string}[]
}

/** A table of recipes, in parts. */
interface Tables {
  readonly dishes: readonly TablePart[]
  readonly components: readonly TablePart[]
}

/** Every recipe with its figures, in plain tables; a script adds finding and sorting. */
export function recipeIndex(site: Site): Index {
  const all = [...site.computed.values()]
  const tables: Tables = {
    dishes: tableParts(
      all.filter(({perServing}) => perServing),
      dishesPath,
    ),
    components: tableParts(
      all.filter(({perServing}) => !perServing),
      componentsPath,
    ),
  }
  const dishes = once((): Dishes => {
    const rows = tables.dishes.map(({recipes}) => dishRows(site, recipes))
    return {rows, finding: findingData(site, rows.flat())}
  })
  return {
    pages: [
      {path: indexPath, page: () => firstPage(site, tables, dishes())},
      ...furtherDishes(site, tables.dishes, dishes),
      ...furtherComponents(site, tables.components),
    ],
    files: isWhole(tables.dishes)
      ? []
      : [{path: findingDataPath, make: () => dataScript(findingDataPath, dishes().finding)}],
  }
}

function isWhole(parts: readonly TablePart[]): boolean {
  return parts.length < 2
}

interface Dishes {
  /** Part by part. */
  readonly rows: readonly (readonly DishRow[])[]
  readonly finding: FindingData
}

function firstPage(site: Site, tables: Tables, dishes: Dishes): Page {
  const {words, cookbook} = site
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
        {dishes.rows.length > 0 ? dishPart(site, tables.dishes, dishes) : undefined}
        {componentPart(site, tables.components)}
        {planPart(site)}
      </>
    ),
  })
}

function dishPart(site: Site, parts: readonly TablePart[], {rows, finding}: Dishes): Part {
  const {words} = site
  return (
    <section aria-labelledby="part-recipes">
      <h2 id="part-recipes">{words.index.title}</h2>
      <p>{words.index.intro(finding.slugs.length)}</p>
      {recipeFinder(site, finding, isWhole(parts))}
      {dishTable(site, rows[0] ?? [], indexPath)}
      <p id="find-more" hidden>
        <button type="button">{words.finding.more}</button>
      </p>
      {partLinks(parts, {from: indexPath, label: words.index.parts, id: 'recipe-parts'})}
    </section>
  )
}

function componentPart(site: Site, parts: readonly TablePart[]): Part {
  const {words} = site
  const [first] = parts
  if (first === undefined) return undefined
  return (
    <section aria-labelledby="part-components">
      <h2 id="part-components">{words.index.components}</h2>
      <p>{words.index.componentsIntro}</p>
      {componentTable(site, first.recipes, indexPath)}
      {partLinks(parts, {from: indexPath, label: words.index.componentParts})}
    </section>
  )
}

function furtherDishes(
  site: Site,
  parts: readonly TablePart[],
  dishes: () => Dishes,
): readonly PageToMake[] {
  const {title, intro, parts: label} = site.words.index
  return parts.slice(1).map(({number, path}) => ({
    path,
    page: () =>
      tablePage(site, {
        path,
        title: `${title} ${number}`,
        intro: intro(dishes().finding.slugs.length),
        table: dishTable(site, dishes().rows[number - 1] ?? [], path),
        links: partLinks(parts, {from: path, label}),
      }),
  }))
}

function furtherComponents(site: Site, parts: readonly TablePart[]): readonly PageToMake[] {
  const {components: title, componentsIntro, componentParts: label} = site.words.index
  return parts.slice(1).map(({number, path, recipes}) => ({
    path,
    page: () =>
      tablePage(site, {
        path,
        title: `${title} ${number}`,
        intro: componentsIntro,
        table: componentTable(site, recipes, path),
        links: partLinks(parts, {from: path, label}),
      }),
  }))
}

interface TablePage {
  readonly path: string
  readonly title: string
  readonly intro: string
  readonly table: Part
  readonly links: Part
}

function tablePage(site: Site, {path, title, intro, table, links}: TablePage): Page {
  return shell(site, {
    path,
    title,
    stylesheets: [overviewStylesheetPath],
    main: (
      <>
        <h1>{title}</h1>
        <p>{intro}</p>
        <p>
          <a href={relativeHref(path, indexPath)}>{site.words.finding.label}</a>
        </p>
        {table}
        {links}
      </>
    ),
  })
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
