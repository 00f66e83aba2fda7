import {allergenGroups} from '../../src/food/allergens.ts'
import type {Allergen} from '../../src/food/food.ts'
import type {LabelRules} from '../../src/food/label-rules.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {containedAllergens} from '../../src/nutrition/contained-allergens.ts'
import type {Site} from '../site.ts'

export interface AllergenText {
  readonly label: string
  readonly names: readonly string[]
}

/**
 * What there is to say about the allergens of a dish by the law the cookbook follows, what it
 * contains first; nothing is said of what is not there.
 */
export function allergenTexts({words, cookbook}: Site, computed: Computed): AllergenText[] {
  const {rules} = cookbook.settings
  const {contains, mayContain, onlyByChoice, notStated} = containedAllergens(computed)
  const text = words.allergens
  const named = (allergens: Iterable<Allergen>) => [...allergens].map(words.allergenName).sort()
  return [
    {label: text.contains, names: words.declaredAllergens(contains, rules)},
    {label: text.outside, names: named(outsideLaw(contains, rules))},
    {label: text.optional, names: named(onlyByChoice)},
    {label: text.mayContain, names: named(mayContain)},
    {label: text.notStated, names: [...notStated].sort()},
  ].filter(({names}) => names.length > 0)
}

/** The same as running text, for a card or a caption; empty where there is nothing to say. */
export function allergenSentences(site: Site, computed: Computed): string {
  return allergenTexts(site, computed)
    .map(({label, names}) => `${label}: ${names.join(', ')}.`)
    .join(' ')
}

/** Allergens that some law lists and this one does not: a reader may still look for them. */
function outsideLaw(contains: ReadonlySet<Allergen>, rules: LabelRules): readonly Allergen[] {
  const listed = new Set(allergenGroups[rules].flatMap(({members}) => members))
  return [...contains].filter((allergen) => !listed.has(allergen))
}
