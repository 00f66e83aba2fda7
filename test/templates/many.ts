import type {Recipe} from '../../src/cookbook/recipe.ts'
import type {SiteInput} from '../../src/site/render-site.ts'
import {at, cookbook, siteInput} from './sample.ts'

const [pot, stock, classic] = ['barley-pot', 'brown-stock', 'classic-pot'].map((slug) => {
  const recipe = cookbook.recipes.get(slug)
  if (recipe === undefined) throw new Error(`the sample has no ${slug}`)
  return recipe
})

/** A title with all that could end a string, a script or a tag. */
export const crookedTitle = `Cook's \\ "pot" </script> & \u2028 <b>`

/**
 * The sample with many recipes more, all made alike: dishes that use the sample's stock, and as many
 * components of their own.
 */
export function manyRecipes(dishes: number, components: number): SiteInput {
  const more = [
    ...Array.from({length: dishes}, (_, index) => named(classic, `dish-${index}`, `Pot ${index}`)),
    ...Array.from({length: components}, (_, index) =>
      named(stock, `stock-${index}`, `Stock ${index}`),
    ),
    named(classic, 'crooked', crookedTitle),
  ]
  const all = [pot, stock, classic, ...more].flatMap((recipe) => recipe ?? [])
  return siteInput({}, {recipes: new Map(all.map((recipe) => [recipe.slug, recipe]))})
}

function named(recipe: Recipe | undefined, slug: string, title: string): Recipe | undefined {
  return recipe && {...recipe, slug, path: `recipes/${slug}.md`, title: at(title)}
}
