import type {Child} from 'hastscript'
import {cautionsOf} from '../../src/check/safety/cautions.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {cookbookPath, relativeHref} from '../addresses.ts'
import type {Part} from '../part.ts'
import {allergenSentences} from '../parts/allergen-texts.ts'
import {authored} from '../parts/authored.ts'
import {headline} from '../parts/headline.tsx'
import {inDocument} from '../parts/in-document.ts'
import {ingredientList} from '../parts/ingredient-list.tsx'
import {keepingText} from '../parts/keeping-text.ts'
import {particulars} from '../parts/particulars.tsx'
import {type Book, recipeId} from './book.ts'
import {withPages} from './page-references.ts'

/** A recipe in the book, on a page of its own: what to weigh, what to do, what to mind. */
export function bookRecipe(book: Book, computed: Computed): Part {
  const {site, places, layout} = book
  const {recipe} = computed
  const allergens = allergenSentences(site, computed)
  // Their sources stand once, in the chapter of sources.
  const cautions = cautionsOf(computed).map(site.words.safety.caution)
  const keeps = keepingText(recipe.keeps, site.words)
  const id = recipeId(computed)
  const placing = {from: cookbookPath, to: cookbookPath, id, places}
  const placed = (deeper: number, child: Child) =>
    withPages(book, inDocument(child, {...placing, deeper}))
  return (
    <article class={layout.isClose(id) ? 'book-recipe close' : 'book-recipe'}>
      <h3 id={id}>{recipe.title.value}</h3>
      {picture(computed)}
      {recipe.summary ? <p class="summary">{recipe.summary.value}</p> : undefined}
      {headline(site, computed)}
      {particulars(site, computed)}
      <div class="book-cooking">
        <div>{placed(1, ingredientList(site, computed, cookbookPath))}</div>
        <div class="method">
          {placed(1, authored(recipe.method.body, recipe.path, cookbookPath))}
        </div>
      </div>
      <div class="book-minding">
        {[keeps, allergens, cautions.join(' ')].map((text) =>
          text === '' ? undefined : <p>{text}</p>,
        )}
      </div>
    </article>
  )
}

function picture({recipe: {image}}: Computed): Part {
  if (image === undefined) return undefined
  const {path, alt} = image.value
  return <img class="picture" src={relativeHref(cookbookPath, `images/${path}`)} alt={alt} />
}
