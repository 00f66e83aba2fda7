import type {Allergen} from '../../src/food/food.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {containedAllergens} from '../../src/nutrition/contained-allergens.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import type {Words} from '../words/en.ts'

/** What the dish contains by the law the cookbook follows, and what nobody has stated. */
export function allergenLines(site: Site, computed: Computed): Part {
  const {words} = site
  const {contains, mayContain, onlyByChoice, notStated} = containedAllergens(computed)
  const text = words.allergens
  return (
    <section aria-labelledby="part-allergens" class="allergens">
      <h2 id="part-allergens">{words.recipe.allergens}</h2>
      {contains.size > 0 ? (
        <p>
          {text.contains}: <strong>{allergenNames(contains, words)}</strong>.
        </p>
      ) : (
        <p>{text.none}</p>
      )}
      {line(text.optional, allergenNames(onlyByChoice, words))}
      {line(text.mayContain, allergenNames(mayContain, words))}
      {line(text.notStated, [...notStated].join(', '))}
    </section>
  )
}

function line(name: string, names: string): Part {
  return names === '' ? undefined : <p>{`${name}: ${names}.`}</p>
}

/** Names in a fixed order, as the language has them. */
export function allergenNames(names: ReadonlySet<Allergen>, words: Words): string {
  return [...names]
    .map((name) => words.allergen[name] ?? name)
    .sort()
    .join(', ')
}
