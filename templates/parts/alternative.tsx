import {type Figures, isComplete} from '../../src/food/figures.ts'
import type {Allergen} from '../../src/food/food.ts'
import {nutrientText} from '../../src/food/nutrient-text.ts'
import type {Computed, ComputedAlternative, ComputedLine} from '../../src/nutrition/computed.ts'
import {containedAllergens, ingredientAllergens} from '../../src/nutrition/contained-allergens.ts'
import {
  mainNutrients,
  type Publishing,
  publishedBy,
  publishedFigure,
} from '../../src/nutrition/published.ts'
import {recipePath, relativeHref} from '../addresses.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {withDecimal} from '../words/decimal.ts'
import type {Words} from '../words/en.ts'
import {weightText} from './amount-text.ts'
import {aroundAmount, scaledAmount} from './line-notes.ts'

/** What may stand instead of a line, and what one serving then has more or less of. */
export function alternativeNotes(
  site: Site,
  computed: Computed,
  entry: ComputedLine,
  path: string,
): Part[] {
  return entry.instead.map((choice) => {
    const weight = weightText(choice.choice.amount.value, choice.grams.value, site.words)
    return (
      <span class="instead">
        {' '}
        {aroundAmount(
          (shown) => site.words.recipe.or(shown, ''),
          scaledAmount(weight, choice.grams.value, 'g'),
        )}
        {choiceName(choice, path)}: {changes(site, computed, choice)}
      </span>
    )
  })
}

function choiceName({name, ingredient}: ComputedAlternative, path: string): Part {
  if (ingredient.kind === 'food') return name
  return <a href={relativeHref(path, recipePath(ingredient.recipe.slug))}>{name}</a>
}

function changes(site: Site, computed: Computed, choice: ComputedAlternative): string {
  const {words, cookbook} = site
  const differences =
    computed.perServing && choice.perServing
      ? figureChanges(
          computed.perServing,
          choice.perServing,
          publishedBy(cookbook.settings, computed.recipe),
          words,
        )
      : []
  const brought = broughtAllergens(computed, choice)
  return [
    differences.length > 0
      ? words.recipe.orChanges(words.and(differences))
      : words.recipe.orChangesNothing,
    ...(brought.length > 0
      ? [words.recipe.brings(words.and(brought.map(words.allergenName)))]
      : []),
    ...(choice.isCountedWhole ? [words.recipe.countedWhole] : []),
  ].join('; ')
}

function figureChanges(
  from: Figures<'serving'>,
  to: Figures<'serving'>,
  publishing: Publishing,
  words: Words,
): string[] {
  return mainNutrients.flatMap((nutrient) => {
    const [before, after] = [from, to].map((figures) =>
      publishedFigure(figures, nutrient, publishing),
    )
    if (!before || !after || !isComplete(before) || !isComplete(after)) return []
    const difference = after.value - before.value
    // Under one kilocalorie or half a gram a reader could not tell the bowls apart.
    if (Math.abs(difference) < (nutrient === 'energy' ? 1 : 0.5)) return []
    const amount = withDecimal(nutrientText(nutrient, Math.abs(difference)), words)
    const name = words.nutrientName[nutrient]
    return [difference > 0 ? words.recipe.more(amount, name) : words.recipe.less(amount, name)]
  })
}

function broughtAllergens(computed: Computed, choice: ComputedAlternative): Allergen[] {
  const already = containedAllergens(computed).contains
  const {contains} = ingredientAllergens(choice.ingredient)
  return [...contains].filter((name) => !already.has(name))
}
