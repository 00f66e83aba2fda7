import type {Computed} from '../../nutrition/computed.ts'
import {formatFigure} from '../../units/format-figure.ts'
import {expandedUncertainty} from '../../units/uncertain.ts'
import {isAtMost} from '../is-at-most.ts'
import type {Finding, Rule} from '../rule.ts'

export const batchWeight: Rule = {
  id: 'batch-weight',
  severity: 'error',
  summary: 'A finished batch, with what is left behind, weighs no more than what went into it.',
  why: 'A batch that is too heavy makes every figure per 100 g too low, and so every recipe that uses it by weight.',
  source: 'Conservation of mass.',
  *check({computed}) {
    const finding = computed.recipe.batch ? tooHeavy(computed) : nothingServed(computed)
    if (finding) yield finding
  },
}

function tooHeavy({recipe, batchGrams, mixedGrams, servedRatio}: Computed): Finding | undefined {
  const {batch, leftBehind} = recipe
  if (!batch || !batchGrams) return undefined
  // What was weighed is the share that is served of all that was in the pot.
  const cookedGrams = batchGrams.value / servedRatio.value
  const slack = expandedUncertainty(mixedGrams) + expandedUncertainty(batchGrams)
  if (isAtMost(cookedGrams, mixedGrams.value + slack)) return undefined
  const {text} = batch.value
  const most = formatFigure(mixedGrams.value, 'g', 0)
  const left = leftBehind ? ` with \`${leftBehind.value.text}\` left behind` : ''
  return {
    place: batch.place,
    reason: `Yield \`${text}\`${left}, expected \`${most}\` or less${leftBehind ? ' together' : ''}: the counted ingredients weigh no more`,
    actual: text,
    ...(!leftBehind && {expected: [most]}),
    note: 'Cooking only loses weight: list the water or stock that was added, or weigh the batch again.',
  }
}

/** More left behind than there was: every figure would fall below nothing. */
function nothingServed({recipe, servedRatio}: Computed): Finding | undefined {
  const {leftBehind} = recipe
  if (!leftBehind || servedRatio.value > 0) return undefined
  const {text, grams} = leftBehind.value
  const inPot = formatFigure(grams.value / (1 - servedRatio.value), 'g', 0)
  return {
    place: leftBehind.place,
    reason: `Left behind \`${text}\`, expected less than \`${inPot}\`: no more was in the pot`,
    actual: text,
    note: 'List the water or stock that was added, or weigh again what is left.',
  }
}
