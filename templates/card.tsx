import type {Computed, ComputedLine} from '../src/nutrition/computed.ts'
import {formatFigure} from '../src/units/format-figure.ts'
import {absoluteHref, cardPath, paperStylesheetPath, recipePath, relativeHref} from './addresses.ts'
import type {Part} from './part.ts'
import {allergenSentences} from './parts/allergen-texts.ts'
import {kitchenMeasure, lineWeight} from './parts/amount-text.ts'
import {authored} from './parts/authored.ts'
import {cautionText} from './parts/caution-lines.tsx'
import {promiseText} from './parts/claim-lines.tsx'
import {basisText, portionGrams} from './parts/headline.tsx'
import {keepingText} from './parts/keeping-text.ts'
import {publishedFigures, publishedText} from './parts/published-figures.ts'
import {qrCode} from './parts/qr-code.ts'
import {minutesText} from './parts/time-text.ts'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'
import {withDecimal} from './words/decimal.ts'

const sizes = ['A6', '6x4', '5x3'] as const

/**
 * A card to print on both sides: on the front what goes in, what it gives and what to mind; on the
 * back what to do. The size is chosen by the style sheet alone, and what does not fit flows to a
 * further card under the same title.
 */
export function cardPage(site: Site, computed: Computed): Page {
  const {recipe} = computed
  const {words} = site
  const path = cardPath(recipe.slug)
  return shell(site, {
    path,
    stylesheets: [paperStylesheetPath],
    title: words.card.title(recipe.title.value),
    kind: 'card-page',
    main: (
      <>
        <div class="off-card">{sizeChoice(site)}</div>
        <p class="off-card">
          {words.card.print}{' '}
          <a href={relativeHref(path, recipePath(recipe.slug))}>{words.card.backToRecipe}</a>
        </p>
        <div class="sides">
          {cardFront(site, computed)}
          {cardBack(site, computed, path)}
        </div>
      </>
    ),
  })
}

export function sizeChoice({words, cookbook}: Site): Part {
  return (
    <fieldset class="row">
      <legend>{words.card.size}</legend>
      {sizes.map((size) => (
        <label>
          <input
            type="radio"
            name="size"
            id={`size-${size.toLowerCase()}`}
            checked={size === cookbook.settings.print.cards}
          />{' '}
          {words.card.sizes[size]}
        </label>
      ))}
    </fieldset>
  )
}

/** What goes in, what it gives, what to mind. */
export function cardFront(site: Site, computed: Computed): Part {
  const {words, cookbook} = site
  const {figures} = publishedFigures(computed, cookbook.settings)
  const allergens = allergenSentences(site, computed)
  const promises = promiseText(site, computed)
  const cautions = cautionText(site, computed)
  const known = facts(site, computed)
  return (
    <section class="side" aria-label={words.card.front(computed.recipe.title.value)}>
      <h1 class="title">{computed.recipe.title.value}</h1>
      {known.length > 0 ? <p class="facts">{known.join(' · ')}</p> : undefined}
      {computed.recipe.groups.map(({title, lines}) => (
        <>
          {title ? <h2>{title.value}</h2> : undefined}
          <ul class="ledger">
            {computed.lines
              .filter(({line}) => lines.includes(line))
              .map((line) => cardLine(site, line))}
          </ul>
        </>
      ))}
      <div class="card-figures">
        <p>{basisText(computed, words)}</p>
        <dl>
          {figures.map((figure) => (
            <div>
              <dt>{words.nutrient[figure.nutrient]}</dt>
              <dd>{publishedText(figure, words)}</dd>
            </div>
          ))}
        </dl>
      </div>
      {allergens === '' ? undefined : <p>{allergens}</p>}
      {promises === '' ? undefined : <p>{promises}</p>}
      {cautions === undefined ? undefined : <p class="cautions">{cautions}</p>}
    </section>
  )
}

function facts({words}: Site, computed: Computed): string[] {
  const {serves, totalMinutes, oven, pan} = computed.recipe
  const portion = portionGrams(computed)
  const servings = serves ? words.servings(serves.value) : undefined
  const inGrams = (grams: number) => withDecimal(formatFigure(grams, 'g'), words)
  const weight = portion === undefined ? '' : ` × ${inGrams(portion)}`
  const batch = computed.batchGrams && inGrams(computed.batchGrams.value)
  return [
    servings ? `${servings}${weight}` : batch && `${words.recipe.batchWeighs}: ${batch}`,
    totalMinutes && minutesText(totalMinutes.value, words),
    oven?.value,
    pan?.value.text,
  ].filter((fact) => fact !== undefined)
}

function cardLine({words}: Site, entry: ComputedLine): Part {
  const {line, role} = entry
  const measure = kitchenMeasure(line.amount.value, words)
  return (
    <li id={line.anchor} class={role === 'counted' ? undefined : 'aside'}>
      <span class="weight">{lineWeight(entry, words)}</span>{' '}
      <span class="what">
        {line.name.value}
        {measure === undefined ? '' : `, ${measure}`}
        {role === 'optional' ? ` (${words.recipe.ifWanted})` : ''}
      </span>
    </li>
  )
}

/** What to do, and where the page is. */
export function cardBack(site: Site, computed: Computed, path: string): Part {
  const {words, cookbook} = site
  const {recipe} = computed
  const {address} = cookbook.settings
  const keeps = keepingText(recipe.keeps, words)
  return (
    <section class="side" aria-label={words.card.back(recipe.title.value)}>
      <h2 class="title">{recipe.title.value}</h2>
      {address
        ? qrCode(site, absoluteHref(address, recipePath(recipe.slug)), words.card.scan)
        : undefined}
      {authored(recipe.method.body, recipe.path, path)}
      {keeps === '' ? undefined : <p>{keeps}</p>}
    </section>
  )
}
