import type {Computed, ComputedLine} from '../../src/nutrition/computed.ts'
import {recipePath, relativeHref} from '../addresses.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {alternativeNotes} from './alternative.tsx'
import {kitchenMeasure, lineWeight} from './amount-text.ts'
import {lineNotes} from './line-notes.ts'

/** The ingredients as a weigher's ledger: the weight left of the rule, the food right of it. */
export function ingredientList(site: Site, computed: Computed, path: string): Part[] {
  return computed.recipe.groups.map(({title, lines}) => {
    const anchors = new Set(lines.map(({anchor}) => anchor))
    const ofGroup = computed.lines.filter(({line}) => anchors.has(line.anchor))
    return (
      <>
        {title ? <h3>{title.value}</h3> : undefined}
        <ul class="ledger">{ofGroup.map((line) => ingredient(site, computed, line, path))}</ul>
      </>
    )
  })
}

function ingredient(site: Site, computed: Computed, entry: ComputedLine, path: string): Part {
  const {line} = entry
  const measure = kitchenMeasure(line.amount.value, site.words)
  const notes = lineNotes(site, entry)
  return (
    <li id={line.anchor} class={entry.role === 'counted' ? undefined : 'aside'}>
      <span class="weight">{lineWeight(entry, site.words)}</span>{' '}
      <span class="what">
        <span class="name">{ingredientName(entry, path)}</span>
        {measure === undefined ? undefined : <span class="measure">, {measure}</span>}
        {notes.map((note) => (
          <span class="note"> {note}</span>
        ))}
        {alternativeNotes(site, computed, entry, path)}
      </span>
    </li>
  )
}

function ingredientName({line, ingredient}: ComputedLine, path: string): Part {
  if (ingredient.kind === 'food') return line.name.value
  return <a href={relativeHref(path, recipePath(ingredient.recipe.slug))}>{line.name.value}</a>
}
