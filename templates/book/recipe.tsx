import type {Computed} from '../../src/nutrition/computed.ts'
import {cookbookPath} from '../addresses.ts'
import type {Part} from '../part.ts'
import {allergenSentences} from '../parts/allergen-texts.ts'
import {authored} from '../parts/authored.ts'
import {cautionText} from '../parts/caution-lines.tsx'
import {headline} from '../parts/headline.tsx'
import {inDocument} from '../parts/in-document.ts'
import {ingredientList} from '../parts/ingredient-list.tsx'
import {keeping, particulars} from '../parts/particulars.tsx'
import {type Book, recipeId} from './book.ts'

/** A recipe in the book, on a page of its own: what to weigh, what to do, what to mind. */
export function bookRecipe({site, places}: Book, computed: Computed): Part {
  const {recipe} = computed
  const allergens = allergenSentences(site, computed)
  const cautions = cautionText(site, computed)
  const id = recipeId(computed)
  const placing = {from: cookbookPath, to: cookbookPath, id, places}
  const placed = (deeper: number, part: Part) => inDocument(part, {...placing, deeper})
  return (
    <article class="book-recipe">
      <h3 id={id}>{recipe.title.value}</h3>
      {recipe.summary ? <p class="summary">{recipe.summary.value}</p> : undefined}
      {headline(site, computed)}
      {particulars(site, computed)}
      <div class="book-cooking">
        <div>{placed(1, <>{ingredientList(site, computed, cookbookPath)}</>)}</div>
        <div class="method">
          {placed(1, <>{authored(recipe.method.body, recipe.path, cookbookPath)}</>)}
        </div>
      </div>
      <div class="book-minding">
        {placed(2, keeping(site, computed))}
        {allergens === '' ? undefined : <p>{allergens}</p>}
        {cautions === undefined ? undefined : <p>{cautions}</p>}
      </div>
    </article>
  )
}
