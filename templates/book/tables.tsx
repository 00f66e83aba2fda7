import {allergenGroups} from '../../src/food/allergens.ts'
import type {Basis} from '../../src/food/figures.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {
  type ContainedAllergens,
  containedAllergens,
} from '../../src/nutrition/contained-allergens.ts'
import type {Part} from '../part.ts'
import {figureHeads, figureNumbers} from '../parts/figure-columns.tsx'
import type {Words} from '../words/en.ts'
import {type Book, recipeId} from './book.ts'

/** The published figures of every recipe: of dishes for one serving, of components for 100 g. */
export function figuresTables(book: Book): Part {
  const {words} = book.site
  const recipes = [...book.site.computed.values()]
  return (
    <>
      {figuresOn(
        book,
        'serving',
        words.book.figuresServing,
        recipes.filter(({perServing}) => perServing),
      )}
      {figuresOn(
        book,
        '100 g',
        words.book.figures100g,
        recipes.filter(({perServing, per100g}) => !perServing && per100g),
      )}
    </>
  )
}

function figuresOn(
  {site, layout}: Book,
  basis: Basis,
  title: string,
  recipes: readonly Computed[],
): Part {
  const {words} = site
  if (recipes.length === 0) return undefined
  const pages = recipes.map((computed) => layout.pageOf(recipeId(computed)))
  const isPaged = pages.some((page) => page !== undefined)
  return (
    <table class="recipes">
      <thead>
        <tr>
          <th scope="col">{title}</th>
          {figureHeads(words)}
          {isPaged ? (
            <th scope="col" class="number">
              {words.book.page}
            </th>
          ) : undefined}
        </tr>
      </thead>
      <tbody>
        {recipes.map((computed, index) => (
          <tr>
            <th scope="row">{recipeLink(computed)}</th>
            {figureNumbers(site, computed, basis)}
            {isPaged ? <td class="number">{pages[index]}</td> : undefined}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function recipeLink(computed: Computed): Part {
  return <a href={`#${recipeId(computed)}`}>{computed.recipe.title.value}</a>
}

/** A row for each recipe, a column for each allergen that the law of the cookbook names. */
export function allergensTable({site}: Book): Part {
  const {words, cookbook} = site
  const groups = allergenGroups[cookbook.settings.rules]
  const rows = [...site.computed.values()].map((computed) => ({
    computed,
    allergens: containedAllergens(computed),
  }))
  const unstated = rows.filter(({allergens}) => allergens.notStated.size > 0)
  return (
    <>
      <p>{words.book.allergensIntro}</p>
      <div class="frame">
        <table class="allergens">
          <thead>
            <tr>
              <th scope="col">{words.index.recipe}</th>
              {groups.map((group) => (
                <th scope="col">
                  <span>{words.allergenGroup(group)}</span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({computed, allergens}) => (
              <tr>
                <th scope="row">
                  {recipeLink(computed)}
                  {allergens.notStated.size > 0 ? ` ${words.book.notStated}` : ''}
                </th>
                {groups.map(({members}) => (
                  <td>{allergenSign(members, allergens, words)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {unstated.map(({computed, allergens}) => (
        <p class="note">
          {`${words.book.notStated} ${computed.recipe.title.value}: ${[...allergens.notStated].sort().join(', ')}.`}
        </p>
      ))}
      <p class="note">
        {cookbook.settings.rules === 'us' ? words.allergens.lawUs : words.allergens.lawEu}
      </p>
    </>
  )
}

type Members = (typeof allergenGroups)['eu'][number]['members']

/** The strongest thing to say about a group: a letter, so that it needs no colour. */
function allergenSign(members: Members, allergens: ContainedAllergens, {book}: Words): string {
  const isIn = (set: ContainedAllergens['contains']) => members.some((member) => set.has(member))
  if (isIn(allergens.contains)) return book.contains
  if (isIn(allergens.onlyByChoice)) return book.optional
  return isIn(allergens.mayContain) ? book.traces : ''
}
