import {cautionsOf} from '../../src/check/safety/cautions.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'

/** What to mind for safety, each with its source; undefined where nothing is known to mind. */
export function cautionLines({words}: Site, computed: Computed): Part {
  const cautions = cautionsOf(computed)
  if (cautions.length === 0) return undefined
  return (
    <section aria-labelledby="part-cautions" class="whole">
      <h2 id="part-cautions">{words.recipe.cautions}</h2>
      <ul>
        {cautions.map((caution) => (
          <li>
            {words.safety.caution(caution)} <span class="note">{caution.source}</span>
          </li>
        ))}
      </ul>
      <p class="note">{words.safety.localRulesFirst}</p>
    </section>
  )
}

/** The same in few lines for a card, whose page has the sources; undefined where there is nothing. */
export function cautionText({words}: Site, computed: Computed): string | undefined {
  const texts = cautionsOf(computed).map(words.safety.caution)
  return texts.length === 0 ? undefined : [...texts, words.cards.cautionsFrom].join(' ')
}
