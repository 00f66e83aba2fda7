import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import {batchesUsed} from '../../src/nutrition/batches-used.ts'
import type {ComputedLine} from '../../src/nutrition/computed.ts'
import {formatFigure, roundedText} from '../../src/units/format-figure.ts'
import type {Site} from '../site.ts'
import {withDecimal} from '../words/decimal.ts'
import {minutesText} from './time-text.ts'

/** A note with an amount in it, which moves when more or less is made. */
interface LineNote {
  readonly text: (amount: string) => string
  readonly amount?: ScaledAmount
}

interface ScaledAmount {
  readonly text: string
  readonly value: number
  readonly unit: 'g' | '%'
}

/** What happens to a line besides being put in, in words; the page's script scales the amounts. */
export function lineNotes(site: Site, line: ComputedLine): readonly ElementContent[][] {
  return notesOf(site, line).map(({text, amount}) => {
    if (amount === undefined) return [{type: 'text', value: text('')}]
    const shown = withDecimal(amount.text, site.words)
    return aroundAmount(text, scaledAmount(shown, amount.value, amount.unit))
  })
}

/** An amount that a script scales: the text, and what it stands for. */
export function scaledAmount(text: string, value: number, unit: 'g' | '%'): ElementContent {
  return h('span', {dataScaled: scaledFrom(value), dataUnit: unit === 'g' ? undefined : unit}, text)
}

/** What a script multiplies: five digits are finer than any amount is shown. */
export function scaledFrom(value: number): string {
  return String(Number(value.toPrecision(5)))
}

/** No text of a catalogue has this sign: it keeps the place of the amount. */
const place = '\u0000'

/** A text of the catalogue, with an element where its amount goes. */
export function aroundAmount(
  text: (amount: string) => string,
  amount: ElementContent,
): ElementContent[] {
  return text(place)
    .split(place)
    .flatMap((value, index): ElementContent[] => {
      const words: ElementContent = {type: 'text', value}
      return index === 0 ? [words] : [structuredClone(amount), words]
    })
}

function notesOf(
  {words}: Site,
  {line, role, grams, ingredient}: ComputedLine,
): readonly LineNote[] {
  const text = words.recipe
  const notes: LineNote[] = []
  const {eaten, pouredOff, trimmed} = line
  if (ingredient.kind === 'component') {
    const percent = batchesUsed({grams}, ingredient.computed) * 100
    notes.push({text: text.ofBatch, amount: {...percentText(percent), unit: '%'}})
  }
  if (line.isBought) {
    const amount = {text: formatFigure(grams.value, 'g'), value: grams.value, unit: 'g' as const}
    notes.push({text: text.bought, amount})
  }
  if (eaten) notes.push(withReason(text.eaten, eaten.because?.value, weighed(eaten.amount.value)))
  if (pouredOff?.kind === 'weighed') {
    const {what, amount, because} = pouredOff
    const said = (poured: string) => text.pouredOff(poured, what)
    notes.push(withReason(said, because?.value, weighed(amount.value)))
  } else if (pouredOff) {
    const said = () => text.pouredOffLike(pouredOff.cooked.value)
    notes.push(withReason(said, pouredOff.because?.value))
  }
  if (line.simmeredMinutes) {
    const time = minutesText(line.simmeredMinutes.value, words)
    notes.push({text: () => text.simmered(time)})
  }
  const {cooked} = line
  if (cooked) notes.push({text: () => text.cooked(cooked.value)})
  if (trimmed) notes.push({text: text.trimmed, amount: weighed(trimmed.value)})
  if (role === 'uncounted') {
    notes.push({text: () => text.uncounted(line.uncounted?.because.value ?? '')})
  }
  if (role === 'optional') notes.push({text: () => text.optional})
  return notes

  function withReason(
    said: LineNote['text'],
    because: string | undefined,
    amount?: ScaledAmount,
  ): LineNote {
    const whole = (shown: string) =>
      because === undefined ? said(shown) : text.because(said(shown), because)
    return {text: whole, ...(amount && {amount})}
  }
}

function percentText(percent: number) {
  return {text: `${roundedText(percent, 0)} %`, value: percent}
}

function weighed(amount: {readonly text: string; readonly grams: {readonly value: number}}) {
  return {text: amount.text, value: amount.grams.value, unit: 'g' as const}
}
