import type {Recipe} from '../src/cookbook/recipe.ts'
import type {Computed} from '../src/nutrition/computed.ts'
import {energyShares} from '../src/nutrition/energy-shares.ts'
import {
  captionPath,
  cardPath,
  csvPath,
  jsonLdPath,
  recipePath,
  relativeHref,
  sharePath,
  usPanelStylesheetPath,
} from './addresses.ts'
import type {Part} from './part.ts'
import {allergenLines} from './parts/allergen-lines.tsx'
import {authored} from './parts/authored.ts'
import {bakingPart} from './parts/baking-part.tsx'
import {cautionLines} from './parts/caution-lines.tsx'
import {claimLines} from './parts/claim-lines.tsx'
import {comparisonBars} from './parts/comparison-bars.ts'
import {cookingForm} from './parts/cooking-form.tsx'
import {declarationPart} from './parts/declaration-part.tsx'
import {energyBeams} from './parts/energy-beam.ts'
import {figuresTable, missingFigures} from './parts/figures-table.tsx'
import {headline} from './parts/headline.tsx'
import {ingredientList} from './parts/ingredient-list.tsx'
import {netCarbohydrateLines} from './parts/net-carbohydrate-lines.tsx'
import {keeping, particulars} from './parts/particulars.tsx'
import {computedOn, mainBasis} from './parts/published-figures.ts'
import {statedTable} from './parts/stated-table.tsx'
import {structuredRecipe} from './parts/structured-recipe.ts'
import {timed} from './parts/timed.ts'
import {timetablePart} from './parts/timetable-part.tsx'
import {withoutWeights} from './parts/used-amounts.ts'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'

/** The page a dish is cooked from. */
export function recipePage(site: Site, computed: Computed): Page {
  const {recipe} = computed
  const path = recipePath(recipe.slug)
  return shell(site, {
    path,
    title: recipe.title.value,
    ...(recipe.summary && {description: recipe.summary.value}),
    kind: 'recipe',
    scripts: recipe.pan ? ['recipe', 'tin'] : ['recipe'],
    ...(site.cookbook.settings.declare === 'us' && {stylesheets: [usPanelStylesheetPath]}),
    structured: structuredRecipe(site, computed),
    image: linkedPicture(recipe),
    main: (
      <article>
        <header>
          <h1>{recipe.title.value}</h1>
          {recipe.summary ? <p class="summary">{recipe.summary.value}</p> : undefined}
          {headline(site, computed)}
          {particulars(site, computed)}
        </header>
        {picture(computed, path)}
        {cookingForm(site, computed)}
        <div class="cooking">
          <div>
            {computed.lines.length > 0 ? ingredients(site, computed, path) : undefined}
            {allergenLines(site, computed)}
            {claimLines(site, computed)}
          </div>
          <div>
            {recipe.method.passages.length > 0 ? method(site, computed, path) : undefined}
            {keeping(site, computed)}
            {cautionLines(site, computed)}
          </div>
        </div>
        {timetablePart(site, computed, path)}
        {figuresPart(site, computed)}
        {declarationPart(site, computed)}
        {bakingPart(site, computed)}
        {comparisonBars(site, computed, path)}
        {links(site, computed, path)}
      </article>
    ),
  })
}

/** Its own picture, where those who show links can show it; else the one that a build draws. */
function linkedPicture({image, slug}: Recipe): string {
  const file = image?.value.path
  return file && /\.(?:jpe?g|png|webp)$/i.test(file) ? `images/${file}` : sharePath(slug)
}

function ingredients(site: Site, computed: Computed, path: string): Part {
  return (
    <section aria-labelledby="part-ingredients">
      <h2 id="part-ingredients">{site.words.recipe.ingredients}</h2>
      {ingredientList(site, computed, path)}
    </section>
  )
}

function method({words}: Site, {recipe}: Computed, path: string): Part {
  return (
    <section aria-labelledby="part-method" class="method">
      <h2 id="part-method">{words.recipe.method}</h2>
      {withoutWeights(timed(authored(recipe.method.body, recipe.path, path)))}
    </section>
  )
}

function picture({recipe}: Computed, path: string): Part {
  if (!recipe.image) return undefined
  const {path: file, alt} = recipe.image.value
  return <img class="picture" src={relativeHref(path, `images/${file}`)} alt={alt} />
}

function figuresPart(site: Site, computed: Computed): Part {
  const {words} = site
  const main = computedOn(mainBasis(computed), computed)
  const shares = main && energyShares(main)
  const stated = statedTable(site, computed)
  return (
    <section aria-labelledby="part-figures">
      <h2 id="part-figures">{words.recipe.figures}</h2>
      <div class="pair">
        <div>
          {figuresTable(site, computed)}
          {missingFigures(site, computed)}
          <p class="rest">{words.figures.rest}</p>
          {netCarbohydrateLines(site, computed)}
        </div>
        <div>
          <h3>{words.figures.computedBeside}</h3>
          {stated ?? <p>{words.figures.noStated}</p>}
          {shares ? energyBeams(shares, words) : undefined}
        </div>
      </div>
    </section>
  )
}

/** Ways on: the card, the plain text, the recipes that use this one, the tags. */
function links(site: Site, {recipe}: Computed, path: string): Part {
  const {words} = site
  const users = site.users.get(recipe.slug) ?? []
  return (
    <footer class="ways-on">
      <p>
        <a href={relativeHref(path, cardPath(recipe.slug))}>{words.recipe.card}</a>
        {' · '}
        <a href={relativeHref(path, captionPath(recipe.slug))}>{words.recipe.caption}</a>
        {' · '}
        <a href={relativeHref(path, csvPath(recipe.slug))} download={`${recipe.slug}.csv`}>
          {words.cooking.csv}
        </a>
        {' · '}
        <a href={relativeHref(path, jsonLdPath(recipe.slug))} download={`${recipe.slug}.jsonld`}>
          {words.cooking.jsonld}
        </a>
      </p>
      {users.length > 0 ? (
        <p>
          {`${words.recipe.usedIn}: `}
          {users.map(({recipe: user}, index) => (
            <>
              {index > 0 ? ', ' : ''}
              <a href={relativeHref(path, recipePath(user.slug))}>{user.title.value}</a>
            </>
          ))}
        </p>
      ) : undefined}
      {recipe.tags.length > 0 ? (
        <p>{`${words.recipe.tags}: ${recipe.tags.map(({value}) => value).join(', ')}`}</p>
      ) : undefined}
    </footer>
  )
}
