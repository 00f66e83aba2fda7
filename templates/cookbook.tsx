import {
  cardsPath,
  cookbookHeadsPath,
  cookbookPath,
  paperStylesheetPath,
  relativeHref,
} from './addresses.ts'
import {
  type Book,
  type BookSection,
  bookOf,
  type Layout,
  notYetPrinted,
  textId,
} from './book/book.ts'
import {checked, sources} from './book/checked.tsx'
import {type Chapter, contents} from './book/contents.tsx'
import {ingredientIndex} from './book/ingredient-index.tsx'
import {withPages} from './book/page-references.ts'
import {bookRecipe} from './book/recipe.tsx'
import {allergensTable, figuresTables} from './book/tables.tsx'
import type {Part} from './part.ts'
import {authored} from './parts/authored.ts'
import {inDocument} from './parts/in-document.ts'
import {mark} from './parts/mark.ts'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'

/** A chapter with its text. */
interface FullChapter extends Chapter {
  readonly text: Part
}

/**
 * The whole cookbook as one document. A browser prints it as it stands; with the page of each id
 * known, contents and index name pages.
 */
export function cookbookPage(site: Site, layout: Layout = notYetPrinted): Page {
  const {words, cookbook} = site
  const book = bookOf(site, layout)
  const chapters = chaptersOf(book)
  return shell(site, {
    path: cookbookPath,
    title: words.book.label,
    kind: 'book',
    stylesheets: [paperStylesheetPath, cookbookHeadsPath],
    main: (
      <div class={`on-${cookbook.settings.print.paper.toLowerCase()}`}>
        <p class="off-paper note">
          {words.book.print} <a href={relativeHref(cookbookPath, cardsPath)}>{words.cards.title}</a>
        </p>
        {cover(site)}
        <section class="chapter-contents">
          <h2 id="contents">{words.book.contents}</h2>
          {contents(book, chapters)}
        </section>
        {book.sections.map((section) => sectionPart(book, section))}
        {chapters.map(({id, title, text}) => (
          <section class={`chapter-${id}`}>
            <h2 id={id}>{title}</h2>
            {text}
          </section>
        ))}
      </div>
    ),
  })
}

/** Every part with a running head, in the order of the book. */
export function headedParts(site: Site): readonly Chapter[] {
  const book = bookOf(site, notYetPrinted)
  return [{id: 'contents', title: site.words.book.contents}, ...book.sections, ...chaptersOf(book)]
}

function cover({cookbook: {settings}}: Site): Part {
  return (
    <header class="cover" id="cover">
      {mark()}
      <h1>{settings.title}</h1>
      {settings.description === '' ? undefined : <p class="summary">{settings.description}</p>}
      {settings.address === undefined ? undefined : <p class="note">{settings.address}</p>}
    </header>
  )
}

function chaptersOf(book: Book): readonly FullChapter[] {
  const {site, places} = book
  const {words, cookbook} = site
  return [
    ...cookbook.pages.map(({slug, title, path, body}) => {
      const id = textId(slug)
      const placing = {from: cookbookPath, to: cookbookPath, id, deeper: 1, places}
      return {
        id,
        title: title.value,
        text: <>{withPages(book, inDocument(authored(body, path, cookbookPath), placing))}</>,
      }
    }),
    {id: 'figures', title: words.book.figures, text: figuresTables(book)},
    {id: 'allergens', title: words.book.allergens, text: allergensTable(book)},
    {id: 'checked', title: words.book.checked, text: checked(book, 'checked')},
    {id: 'sources', title: words.book.sources, text: sources(book)},
    {id: 'index', title: words.book.index, text: ingredientIndex(book)},
  ]
}

/** A section begins above its first recipe. */
function sectionPart(book: Book, {id, title, recipes}: BookSection): Part {
  return (
    <section class={`chapter-${id}`}>
      <h2 id={id}>{title}</h2>
      {recipes.map((computed) => bookRecipe(book, computed))}
    </section>
  )
}
