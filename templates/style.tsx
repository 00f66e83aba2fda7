import type {Element} from 'hast'
import {h} from 'hastscript'
import {visit} from 'unist-util-visit'
import type {Computed} from '../src/nutrition/computed.ts'
import {energyShares} from '../src/nutrition/energy-shares.ts'
import {
  overviewStylesheetPath,
  paperStylesheetPath,
  recipePath,
  relativeHref,
  stylePath,
} from './addresses.ts'
import {cardFront} from './card.tsx'
import {verdictLegend} from './figures.tsx'
import type {Part} from './part.ts'
import {allergenLines} from './parts/allergen-lines.tsx'
import {cautionLines} from './parts/caution-lines.tsx'
import {claimLines} from './parts/claim-lines.tsx'
import {comparisonBars} from './parts/comparison-bars.ts'
import {declarationPart} from './parts/declaration-part.tsx'
import {energyBeams} from './parts/energy-beam.ts'
import {figuresTable, missingFigures} from './parts/figures-table.tsx'
import {headline} from './parts/headline.tsx'
import {ingredientList} from './parts/ingredient-list.tsx'
import {keeping, particulars} from './parts/particulars.tsx'
import {computedOn, mainBasis} from './parts/published-figures.ts'
import {statedTable} from './parts/stated-table.tsx'
import {timetablePart} from './parts/timetable-part.tsx'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'

/** Type, colours and every part of the other pages, shown on the recipe that has most of them. */
export function stylePage(site: Site): Page {
  const text = site.words.stylePage
  const shown = richest([...site.computed.values()])
  return shell(site, {
    path: stylePath,
    title: text.title,
    stylesheets: [overviewStylesheetPath, paperStylesheetPath],
    main: (
      <>
        <h1>{text.title}</h1>
        <p class="summary">{text.intro}</p>
        {typePart(site)}
        {coloursPart(site)}
        {controlsPart(site)}
        {verdictLegend(site)}
        {shown ? partsOf(site, shown) : undefined}
      </>
    ),
  })
}

/** The recipe with the most to show; the first of equals. */
function richest(all: readonly Computed[]): Computed | undefined {
  const wealth = ({recipe, lines}: Computed) =>
    [
      recipe.comparison,
      recipe.keeps,
      recipe.stated,
      recipe.totalMinutes,
      recipe.claims.length > 0 || undefined,
      lines.some(({instead}) => instead.length > 0) || undefined,
    ].filter((one) => one !== undefined).length
  return all.toSorted((left, right) => wealth(right) - wealth(left))[0]
}

function typePart({words: {stylePage: text}}: Site): Part {
  return (
    <section aria-labelledby="style-type">
      <h2 id="style-type">{text.type}</h2>
      <p class="summary">Aa Bb Cc 0123456789 ½ ¼ ° ± ×</p>
      <h3>Aa Bb Cc 0123456789 ½ ¼ ° ± ×</h3>
      <p>Aa Bb Cc 0123456789 ½ ¼ ° ± ×</p>
      <p>{text.typeText}</p>
      <p class="note">{text.note}</p>
    </section>
  )
}

const colours = ['paper', 'tint', 'ink', 'soft', 'rule', 'rim', 'band'] as const

function coloursPart({words: {stylePage: text}}: Site): Part {
  return (
    <section aria-labelledby="style-colours">
      <h2 id="style-colours">{text.colours}</h2>
      <ul class="swatches">
        {colours.map((colour) => (
          <li class={`is-${colour}`}>{text.colour[colour]}</li>
        ))}
      </ul>
    </section>
  )
}

function controlsPart({words: {stylePage: text}}: Site): Part {
  return (
    <section aria-labelledby="style-controls">
      <h2 id="style-controls">{text.controls}</h2>
      <div class="row">
        <button type="button">{text.button}</button>
        <label>
          {text.field}
          <input type="number" min="0" value="4" />
        </label>
        <label class="switch">
          <input type="checkbox" checked /> {text.choice}
        </label>
      </div>
    </section>
  )
}

function partsOf(site: Site, computed: Computed): Part {
  const {words} = site
  const {slug, title} = computed.recipe
  const main = computedOn(mainBasis(computed), computed)
  const shares = main && energyShares(main)
  return (
    <>
      <section aria-labelledby="style-list">
        <h2 id="style-list">{words.stylePage.list}</h2>
        <p class="note">
          {`${words.stylePage.shownOn} `}
          <a href={relativeHref(stylePath, recipePath(slug))}>{title.value}</a>
        </p>
        {headline(site, computed)}
        {particulars(site, computed)}
        {ingredientList(site, computed, stylePath)}
      </section>
      {allergenLines(site, computed)}
      {claimLines(site, computed)}
      {keeping(site, computed)}
      {cautionLines(site, computed)}
      {timetablePart(site, computed, stylePath)}
      <section aria-labelledby="style-figures">
        <h2 id="style-figures">{words.recipe.figures}</h2>
        {figuresTable(site, computed)}
        {missingFigures(site, computed)}
        {statedTable(site, computed)}
        {shares ? energyBeams(shares, words) : undefined}
      </section>
      {declarationPart(site, computed)}
      {comparisonBars(site, computed, stylePath)}
      <h2>{words.stylePage.card}</h2>
      {withoutIds(h('div', {className: ['sides']}, cardFront(site, computed)))}
    </>
  )
}

/** The ingredients stand on the page already, with the ids that their amounts are found by. */
function withoutIds(part: Element): Element {
  visit(part, 'element', ({properties}) => {
    delete properties.id
  })
  return part
}
