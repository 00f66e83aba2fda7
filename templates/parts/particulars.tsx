import type {Computed} from '../../src/nutrition/computed.ts'
import {formatFigure} from '../../src/units/format-figure.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {portionGrams} from './headline.tsx'
import {daysText, minutesText} from './time-text.ts'

/** What a cook wants to know before starting: servings, weights, time, oven, tin. */
export function particulars({words}: Site, computed: Computed): Part {
  const {recipe, batchGrams} = computed
  const text = words.recipe
  const portion = portionGrams(computed)
  return pairs([
    [text.serves, recipe.serves && `${recipe.serves.value}`],
    [text.servingWeighs, portion === undefined ? undefined : formatFigure(portion, 'g')],
    [text.batchWeighs, batchGrams && formatFigure(batchGrams.value, 'g')],
    [text.handsOn, recipe.handsOnMinutes && minutesText(recipe.handsOnMinutes.value, words)],
    [text.totalTime, recipe.totalMinutes && minutesText(recipe.totalMinutes.value, words)],
    [text.oven, recipe.oven?.value],
    [text.pan, recipe.pan?.value.text],
  ])
}

/** How long the finished dish keeps; undefined where the recipe does not say. */
export function keeping({words}: Site, {recipe}: Computed): Part {
  const {roomDays, fridgeDays, freezerDays} = recipe.keeps ?? {}
  if (!roomDays && !fridgeDays && !freezerDays) return undefined
  return (
    <section aria-labelledby="part-keeping" class="whole">
      <h2 id="part-keeping">{words.recipe.keeping}</h2>
      {pairs([
        [words.recipe.room, roomDays && daysText(roomDays.value, words)],
        [words.recipe.fridge, fridgeDays && daysText(fridgeDays.value, words)],
        [words.recipe.freezer, freezerDays && daysText(freezerDays.value, words)],
      ])}
    </section>
  )
}

/** Names and values of what is known, as one definition list; undefined when nothing is. */
function pairs(entries: readonly (readonly [string, string | undefined])[]): Part {
  const known = entries.filter(([, value]) => value !== undefined)
  if (known.length === 0) return undefined
  return (
    <dl class="particulars">
      {known.map(([name, value]) => (
        <div>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  )
}
