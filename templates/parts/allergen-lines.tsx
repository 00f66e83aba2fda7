import {leavesSomethingOpen} from '../../src/check/absences/diet.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {foodsInDish} from '../../src/nutrition/foods-in-dish.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {allergenTexts} from './allergen-texts.ts'
import {checkedPromises} from './checked-promises.ts'

/** What the dish contains by the law the cookbook follows, and what nobody has stated. */
export function allergenLines(site: Site, computed: Computed): Part {
  const {words, cookbook} = site
  const text = words.allergens
  const texts = allergenTexts(site, computed)
  const foods = foodsInDish(computed).map(({food}) => food)
  const {freeFrom, diets} = checkedPromises(computed.recipe, cookbook.settings)
  return (
    <section aria-labelledby="part-allergens" class="whole">
      <h2 id="part-allergens">{words.recipe.allergens}</h2>
      {texts.some(({label}) => label === text.contains) ? undefined : <p>{text.none}</p>}
      {texts.map(({label, names}) => (
        <p>
          {label}: <strong>{names.join(', ')}</strong>.
        </p>
      ))}
      {promise(text.freeFrom, freeFrom.map(words.safety.promise))}
      {promise(
        text.suits,
        diets.map(({name}) => words.safety.promise(name)),
      )}
      {diets
        .filter((diet) => leavesSomethingOpen(diet, foods))
        .map((diet) => (
          <p class="note">{words.safety.leftOpen(diet)}</p>
        ))}
      <p class="note">{cookbook.settings.rules === 'us' ? text.lawUs : text.lawEu}</p>
    </section>
  )
}

function promise(label: string, names: readonly string[]): Part {
  return names.length === 0 ? undefined : <p>{`${label}: ${names.join(', ')}.`}</p>
}
