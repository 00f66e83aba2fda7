import type {Part} from '../part.ts'
import {type Book, type BookSection, recipeId} from './book.ts'

/** A line of a list of contents: where it leads, and on which page that is once it is printed. */
function contentsLine({layout}: Book, id: string, title: string): Part {
  const page = layout.pageOf(id)
  return (
    <a href={`#${id}`} class="contents-line">
      <span class="entry">{title}</span>
      {page === undefined ? undefined : (
        <>
          <span class="leader"> </span>
          <span class="page">{page}</span>
        </>
      )}
    </a>
  )
}

/** A chapter without recipes. */
export interface Chapter {
  readonly id: string
  readonly title: string
}

/** Every section with its recipes, then the chapters behind them. */
export function contents(book: Book, chapters: readonly Chapter[]): Part {
  return (
    <ul class="contents">
      {book.sections.map((section) => (
        <li>
          {contentsLine(book, section.id, section.title)}
          {recipeLines(book, section)}
        </li>
      ))}
      {chapters.map(({id, title}) => (
        <li>{contentsLine(book, id, title)}</li>
      ))}
    </ul>
  )
}

/** The recipes of a section. */
function recipeLines(book: Book, {recipes}: BookSection): Part {
  return (
    <ul>
      {recipes.map((computed) => (
        <li>{contentsLine(book, recipeId(computed), computed.recipe.title.value)}</li>
      ))}
    </ul>
  )
}
