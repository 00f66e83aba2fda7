import type {Computed} from '../../src/nutrition/computed.ts'
import type {Part} from '../part.ts'
import {foodsInUse} from '../parts/foods-in-use.ts'
import {type Book, recipeId} from './book.ts'

interface Entry {
  readonly name: string
  readonly recipes: readonly Computed[]
}

/** Each food and each component with the recipes that use it: by page once that is known. */
export function ingredientIndex(book: Book): Part {
  return (
    <ul class="index">
      {entries(book).map(({name, recipes}, index, all) => (
        <li class={isNewLetter(name, all[index - 1]?.name) ? 'letter' : undefined}>
          {name}{' '}
          {recipes.map((computed, index) => (
            <>
              {index > 0 ? ', ' : ''}
              <a href={`#${recipeId(computed)}`}>{where(book, computed)}</a>
            </>
          ))}
        </li>
      ))}
    </ul>
  )
}

function isNewLetter(name: string, before: string | undefined): boolean {
  return before !== undefined && name[0]?.toLowerCase() !== before[0]?.toLowerCase()
}

function entries({site: {computed, users}, layout}: Book): readonly Entry[] {
  const foods = foodsInUse(computed.values()).map(({food, users}) => ({
    name: food.name,
    recipes: users,
  }))
  const components = [...users].map(([slug, recipes]) => {
    const own = computed.get(slug)
    return {
      name: own?.recipe.title.value.toLowerCase() ?? slug,
      recipes: own ? [own, ...recipes] : recipes,
    }
  })
  const page = (one: Computed) => Number(layout.pageOf(recipeId(one)) ?? 0)
  return [...foods, ...components]
    .map(({name, recipes}) => ({name, recipes: recipes.toSorted((a, b) => page(a) - page(b))}))
    .sort((left, right) => (left.name.toLowerCase() < right.name.toLowerCase() ? -1 : 1))
}

function where({layout}: Book, computed: Computed): string {
  return layout.pageOf(recipeId(computed)) ?? computed.recipe.title.value
}
