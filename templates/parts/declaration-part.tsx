import type {Computed} from '../../src/nutrition/computed.ts'
import {type Declaration, declaration} from '../../src/nutrition/declaring/declaration.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import type {Words} from '../words/en.ts'
import {declaredTable} from './declared-table.tsx'
import {portionGrams} from './headline.tsx'
import {usPanel} from './us-panel.tsx'

/** The figures as the cookbook's law has them declared; undefined where it asks for none. */
export function declarationPart({cookbook: {settings}, words}: Site, computed: Computed): Part {
  const {declare} = settings
  if (declare === undefined || !(computed.perServing || computed.per100g)) return undefined
  const declared = declaration(computed, declare, settings)
  return (
    <section aria-labelledby="part-declared">
      <h2 id="part-declared">{words.declared.title[declare]}</h2>
      <div class="pair">
        <div>{declaredTable(declared, words)}</div>
        <div>
          {panel(declared, computed, words)}
          {notes(declared, words)}
        </div>
      </div>
    </section>
  )
}

/** A panel is for a serving; a component that serves nobody has none. */
function panel(declared: Declaration, computed: Computed, words: Words): Part {
  const {serves} = computed.recipe
  if (declared.rules !== 'us' || serves === undefined) return undefined
  const grams = portionGrams(computed)
  const served = {servings: serves.value, ...(grams !== undefined && {portionGrams: grams})}
  return usPanel(declared, served, words)
}

function notes({rules, energyMethod, missing}: Declaration, words: Words): Part {
  const {declared} = words
  const names = missing.map((nutrient) => inText(declared.name[rules][nutrient]))
  return (
    <div class="rest">
      {names.length > 0 ? <p>{declared.missing(words.and(names))}</p> : undefined}
      <p>
        {declared.referenceNote[rules]} {declared.energyNote(declared.energyMethod[energyMethod])}
        {rules === 'eu' && energyMethod !== 'eu' ? ` ${declared.otherEnergyNote}` : ''}
      </p>
      <p>{declared.roundedNote}</p>
    </div>
  )
}

/** `of which sugars` is `sugars` in a sentence, `Total Fat` is `total fat`. */
function inText(name: string): string {
  return name.toLowerCase().replace(/^of which /, '')
}
