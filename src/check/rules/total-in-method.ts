import {placeInPassage} from '../../cookbook/passage-place.ts'
import {amountsIn} from '../../cookbook/prose/amounts.ts'
import type {TextRange} from '../../cookbook/prose/match-at.ts'
import {sentenceAround} from '../../cookbook/prose/sentences.ts'
import {kitchenOf} from '../../cookbook/understand.ts'
import type {Computed, ComputedLine} from '../../nutrition/computed.ts'
import type {WeightAmount} from '../../units/amount.ts'
import {formatFigure} from '../../units/format-figure.ts'
import {isAtMost} from '../is-at-most.ts'
import {type AmountOfLine, amountsOfLines} from '../method/amounts-of-lines.ts'
import {type IngredientMention, ingredientMentions, stepsOf} from '../method/ingredient-mentions.ts'
import type {Rule} from '../rule.ts'

export const totalInMethod: Rule = {
  id: 'total-in-method',
  severity: 'warning',
  summary: 'A total that the method names is the sum of what it is a total of.',
  why: 'A total outlives a change to one of its parts, and the cook weighs to it.',
  *check({recipe, computed, cookbook}) {
    const kitchen = kitchenOf(cookbook.settings, cookbook.foods)
    // Few methods name a total, so what it is held against is gathered at the first.
    let attached: readonly AmountOfLine[] | undefined
    let mentions: readonly IngredientMention[] | undefined
    for (const passage of stepsOf(recipe)) {
      for (const mention of amountsIn(passage.text, kitchen)) {
        const {amount, from, to} = mention
        if (amount.kind !== 'weight' || !isTotal(passage.text, mention)) continue
        // "All 170 g of the flour" is the amount of one line: amounts-in-method.
        attached ??= amountsOfLines(computed, cookbook)
        const own = attached.find((each) => each.passage === passage && each.mention.from === from)
        if (own?.lines.length === 1) continue
        mentions ??= ingredientMentions(computed)
        const here = mentions.filter((each) => each.passage === passage)
        const sums = possibleSums(computed, here, sentenceAround(passage.text, from))
        if (sums.length === 0 || sums.some((sum) => isSame(amount, sum))) continue
        const nearest = nearestTo(amount.grams.value, sums)
        const expected = formatFigure(nearest, 'g', 0)
        yield {
          place: placeInPassage(passage, from, to),
          reason: `Total \`${amount.text}\` in the method, expected \`${expected}\` from the list`,
          actual: amount.text,
          expected: [expected],
          note: 'It was held against the sum of the ingredients named in the sentence, in the step and in each group, against all of them, and against `yield`.',
        }
      }
    }
  },
}

const before =
  /\b(?:all|the whole|whole|(?:the )?total(?: of| is| weight of)?)\s+(?:the\s+|of the\s+)?$/i
const behind = /^\s*(?:in total|in all|altogether|total)\b/i

function isTotal(text: string, {from, to}: TextRange): boolean {
  return before.test(text.slice(Math.max(0, from - 24), from)) || behind.test(text.slice(to))
}

function possibleSums(
  {lines, mixedGrams, batchGrams, recipe}: Computed,
  here: readonly IngredientMention[],
  sentence: TextRange,
): readonly number[] {
  const inSentence = here.filter(({from}) => from >= sentence.from && from < sentence.to)
  const groups = recipe.groups.map((group) => lines.filter(({line}) => group.lines.includes(line)))
  const sets = [
    inSentence.flatMap((each) => each.lines),
    here.flatMap((each) => each.lines),
    ...groups,
  ]
  const sums = sets.map((set) => sumOf([...new Set(set)])).filter((sum) => sum > 0)
  return [...sums, mixedGrams.value, ...(batchGrams ? [batchGrams.value] : [])]
}

function sumOf(lines: readonly ComputedLine[]): number {
  return lines.reduce((total, {grams}) => total + grams.value, 0)
}

/** A hundredth may stay on spoons and bowls (common practice, no source). */
const lostRatio = 0.01
/** And a sum is written to no coarser digit than this. */
const roundingRatio = 0.02

function isSame({grams}: WeightAmount, sum: number): boolean {
  const rounding = Math.min(grams.increment / 2, roundingRatio * sum)
  const slack = Math.max(rounding, grams.halfRange, lostRatio * sum)
  return isAtMost(Math.abs(grams.value - sum), slack)
}

function nearestTo(value: number, sums: readonly number[]): number {
  return sums.reduce((best, sum) => (Math.abs(sum - value) < Math.abs(best - value) ? sum : best))
}
