import {dishOf} from '../../src/check/claims/dish.ts'
import {claimSentences} from '../../src/check/claims/sentences.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {checkedPromises} from './checked-promises.ts'
import {checksLanguage} from './checks-language.ts'

/** What the dish claims about nutrition, with what a law wants beside it; undefined where nothing. */
export function claimLines(site: Site, computed: Computed): Part {
  const {words, cookbook} = site
  const {claims} = checkedPromises(computed.recipe, cookbook.settings)
  if (claims.length === 0) return undefined
  const {rules} = cookbook.settings
  return (
    <section aria-labelledby="part-claims" class="whole">
      <h2 id="part-claims">{words.claims.title}</h2>
      <p>
        <strong lang={checksLanguage(words)}>{claims.join(', ')}</strong>.
      </p>
      {sentences(site, computed).map((text) => (
        <p lang={checksLanguage(words)}>{text}</p>
      ))}
      <p class="note">{rules === 'us' ? words.claims.lawUs : words.claims.lawEu}</p>
    </section>
  )
}

/** Claims and promises that were checked, in few words for a card; empty where there are none. */
export function promiseText(site: Site, computed: Computed): string {
  const {words, cookbook} = site
  const {claims, freeFrom, diets} = checkedPromises(computed.recipe, cookbook.settings)
  const parts = [
    [words.claims.title, claims],
    [words.allergens.freeFrom, freeFrom.map(words.safety.promise)],
    [words.allergens.suits, diets.map(({name}) => words.safety.promise(name))],
  ] as const
  const said = parts
    .filter(([, names]) => names.length > 0)
    .map(([label, names]) => `${label}: ${names.join(', ')}.`)
  return [...said, ...(claims.length > 0 ? sentences(site, computed) : [])].join(' ')
}

function sentences({cookbook, computed: all}: Site, computed: Computed): readonly string[] {
  return claimSentences(dishOf(computed, cookbook, all)).map(({text}) => text)
}
