import {durationsIn} from '../../cookbook/prose/durations.ts'
import type {Recipe} from '../../cookbook/recipe.ts'
import type {Computed} from '../../nutrition/computed.ts'
import {formatFigure, roundedText} from '../../units/format-figure.ts'
import {stepsOf} from '../method/ingredient-mentions.ts'
import type {Finding, Rule} from '../rule.ts'
import {methodText} from '../safety/heat.ts'

/**
 * A batch lighter than this share of what went in has lost more than cooking takes by the way: an
 * oven takes a tenth to a third, an open pot a fifth in half an hour (common practice, no source).
 */
const usualRatio = 0.6

/**
 * Minutes of the steps after which an open pot may have lost any share. Time off the heat counts as
 * well: a step need not say which it is, and no alarm is better than a false one.
 */
const longMinutes = 45

const losesWeight =
  /\b(?:reduc|evaporat|thick|syrup|concentrat|caramel|sticky|jam|roast|bak|oven|dehydrat|dry|dries|dried|drain|strain|siev|sift|press|squeez|wring|skim|pour|discard|throw|render|bones?\b|carcass|shell|peel|core|stone)|\bboil\w*(?: \w+){0,3} (?:down|away|off|dry)\b|\bcook\w*(?: \w+){0,3} (?:down|away|off)\b/i

export const batchLoss: Rule = {
  id: 'batch-loss',
  severity: 'warning',
  summary: 'A batch that lost more than a usual share of its weight says in the method where to.',
  why: 'A batch weighed too light, or without the half that is in the other bowl, makes every figure per 100 g too high.',
  source: 'Shares that cooking takes: common practice, no source.',
  *check({recipe, computed}) {
    if (stepsOf(recipe).length === 0 || isLossTold(recipe)) return
    const finding = tooLight(computed)
    if (finding) yield finding
  },
}

function isLossTold(recipe: Recipe): boolean {
  if (recipe.oven !== undefined || losesWeight.test(methodText(recipe))) return true
  const spent = stepsOf(recipe).flatMap(({text}) =>
    durationsIn(text).filter(({role}) => role === 'spent'),
  )
  return spent.reduce((sum, {highMinutes}) => sum + highMinutes, 0) >= longMinutes
}

function tooLight({recipe, batchGrams, mixedGrams, servedRatio}: Computed): Finding | undefined {
  const {batch} = recipe
  if (!batch || !batchGrams || mixedGrams.value <= 0) return undefined
  const ratio = batchGrams.value / servedRatio.value / mixedGrams.value
  if (ratio >= usualRatio) return undefined
  const mixed = formatFigure(mixedGrams.value, 'g', 0)
  return {
    place: batch.place,
    reason: `Yield \`${batch.value.text}\` is \`${roundedText(100 * ratio, 0)} %\` of the \`${mixed}\` that went in, expected a step in which it loses so much`,
    actual: batch.value.text,
    note: 'Weigh the batch again; write what is poured off or stays in the pot (`poured off`, `left behind`), or how long it boils down.',
  }
}
