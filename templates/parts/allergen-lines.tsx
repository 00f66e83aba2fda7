import {allergenGroups} from '../../src/food/allergens.ts'
import type {Allergen} from '../../src/food/food.ts'
import type {LabelRules} from '../../src/food/label-rules.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {containedAllergens} from '../../src/nutrition/contained-allergens.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'

/** What the dish contains by the law the cookbook follows, and what nobody has stated. */
export function allergenLines({words, cookbook}: Site, computed: Computed): Part {
  const {rules} = cookbook.settings
  const {contains, mayContain, onlyByChoice, notStated} = containedAllergens(computed)
  const text = words.allergens
  const declared = words.declaredAllergens(contains, rules)
  return (
    <section aria-labelledby="part-allergens" class="whole">
      <h2 id="part-allergens">{words.recipe.allergens}</h2>
      {declared.length > 0 ? (
        <p>
          {text.contains}: <strong>{declared.join(', ')}</strong>.
        </p>
      ) : (
        <p>{text.none}</p>
      )}
      {line(text.outside, outsideLaw(contains, rules).map(words.allergenName))}
      {line(text.optional, [...onlyByChoice].map(words.allergenName))}
      {line(text.mayContain, [...mayContain].map(words.allergenName))}
      {line(text.notStated, [...notStated])}
      <p class="note">{rules === 'us' ? text.lawUs : text.lawEu}</p>
    </section>
  )
}

/** Allergens that some law lists and this one does not: a reader may still look for them. */
function outsideLaw(contains: ReadonlySet<Allergen>, rules: LabelRules): readonly Allergen[] {
  const listed = new Set(allergenGroups[rules].flatMap(({members}) => members))
  return [...contains].filter((allergen) => !listed.has(allergen))
}

function line(name: string, names: readonly string[]): Part {
  return names.length === 0 ? undefined : <p>{`${name}: ${[...names].sort().join(', ')}.`}</p>
}
