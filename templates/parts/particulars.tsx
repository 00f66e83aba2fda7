import {doughPieces} from '../../src/nutrition/baking/dough-pieces.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {formatFigure} from '../../src/units/format-figure.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {withDecimal} from '../words/decimal.ts'
import type {Words} from '../words/en.ts'
import {portionGrams} from './headline.tsx'
import {daysText, minutesText} from './time-text.ts'

/** What a cook wants to know before starting: servings, weights, time, oven, tin. */
export function particulars({words}: Site, computed: Computed): Part {
  const {recipe, batchGrams} = computed
  const text = words.recipe
  const portion = portionGrams(computed)
  const weight = (grams: number) => withDecimal(formatFigure(grams, 'g'), words)
  return pairs([
    [text.serves, recipe.serves && `${recipe.serves.value}`, 'serves'],
    [text.servingWeighs, portion === undefined ? undefined : weight(portion), 'portion'],
    [text.batchWeighs, batchGrams && weight(batchGrams.value), 'batch'],
    [text.handsOn, recipe.handsOnMinutes && minutesText(recipe.handsOnMinutes.value, words)],
    [text.totalTime, recipe.totalMinutes && minutesText(recipe.totalMinutes.value, words)],
    [text.oven, recipe.oven?.value],
    [text.pan, recipe.pan?.value.text],
    [words.baking.pieces, piecesText(computed, words)],
  ])
}

/** `16 of 95 g`, and what is left of the dough where that is a gram or more. */
function piecesText(computed: Computed, words: Words): string | undefined {
  const {baking} = words
  const pieces = doughPieces(computed)
  if (pieces === undefined) return undefined
  const {count, gramsEach, leftGrams} = pieces
  const text = baking.piecesOf(count, withDecimal(formatFigure(gramsEach, 'g'), words))
  return leftGrams < 1
    ? text
    : `${text}, ${baking.left(withDecimal(formatFigure(leftGrams, 'g'), words))}`
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

/**
 * Names and values of what is known, as one definition list; undefined when nothing is. The third is
 * what a script knows a value by that scales.
 */
function pairs(entries: readonly (readonly [string, string | undefined, string?])[]): Part {
  const known = entries.filter(([, value]) => value !== undefined)
  if (known.length === 0) return undefined
  return (
    <dl class="particulars">
      {known.map(([name, value, shows]) => (
        <div>
          <dt>{name}</dt>
          <dd data-shows={shows}>{value}</dd>
        </div>
      ))}
    </dl>
  )
}
