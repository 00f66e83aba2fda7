import type {ElementContent} from 'hast'
import type {Computed} from '../src/nutrition/computed.ts'
import {cardSheetsPath, cardsPath, paperStylesheetPath, relativeHref} from './addresses.ts'
import {recipeId} from './book/book.ts'
import {cardBack, cardFront, sizeChoice} from './card.tsx'
import {inDocument} from './parts/in-document.ts'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'

/** The cards of every recipe, each side a page of the card's own size. */
export function cardsPage(site: Site): Page {
  const {words} = site
  return shell(site, {
    path: cardsPath,
    title: words.cards.title,
    kind: 'card-page',
    stylesheets: [paperStylesheetPath],
    main: (
      <>
        <p class="off-card summary">{words.cards.title}</p>
        <div class="off-card">{sizeChoice(site)}</div>
        <p class="off-card">
          {words.card.print}{' '}
          <a href={relativeHref(cardsPath, cardSheetsPath)}>{words.cards.sheets}</a>
        </p>
        <div class="sides">
          {[...site.computed.values()].map((computed) => sides(site, computed, cardsPath))}
        </div>
      </>
    ),
  })
}

/**
 * The same on sheets of paper: front and back stand on one side of the sheet with a fold between
 * them, so that no printer has to turn the sheet and hit the place.
 */
export function cardSheetsPage(site: Site): Page {
  const {words, cookbook} = site
  const {cards, paper} = cookbook.settings.print
  // A6 cards want a sheet of A4; a book on A5 is cut from it too.
  const sheet = paper === 'Letter' ? 'letter' : 'a4'
  return shell(site, {
    path: cardSheetsPath,
    title: words.cards.sheets,
    kind: 'sheet-page',
    stylesheets: [paperStylesheetPath],
    main: (
      <>
        <p class="off-paper summary">{words.cards.sheets}</p>
        <p class="off-paper">{words.cards.sheetsIntro(words.card.sizes[cards])}</p>
        <section
          class={`strips of-${cards.toLowerCase()} on-${sheet}`}
          aria-label={words.cards.sheets}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be within reach of keys (WCAG 2.1.1)
          tabIndex={0}
        >
          {[...site.computed.values()].map((computed) => (
            <div class="strip">{sides(site, computed, cardSheetsPath)}</div>
          ))}
        </section>
      </>
    ),
  })
}

function sides(site: Site, computed: Computed, path: string): ElementContent[] {
  return inDocument([cardFront(site, computed), cardBack(site, computed, path)], {
    from: path,
    to: path,
    id: recipeId(computed),
    deeper: 0,
    places: new Map(),
  })
}
