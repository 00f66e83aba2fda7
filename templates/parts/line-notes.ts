import {batchesUsed} from '../../src/nutrition/batches-used.ts'
import type {ComputedLine} from '../../src/nutrition/computed.ts'
import {formatFigure, roundedText} from '../../src/units/format-figure.ts'
import type {Site} from '../site.ts'
import {minutesText} from './time-text.ts'

/** What happens to a line besides being put in, in words. */
export function lineNotes({words}: Site, {line, role, grams, ingredient}: ComputedLine): string[] {
  const text = words.recipe
  const notes: string[] = []
  const {eaten, pouredOff} = line
  if (ingredient.kind === 'component') {
    const share = batchesUsed({grams}, ingredient.computed)
    notes.push(text.ofBatch(`${roundedText(share * 100, 0)} %`))
  }
  if (line.isBought) notes.push(text.bought(formatFigure(grams.value, 'g')))
  if (eaten) notes.push(withReason(text.eaten(eaten.amount.value.text), eaten.because?.value))
  if (pouredOff) {
    const what =
      pouredOff.kind === 'weighed'
        ? text.pouredOff(pouredOff.amount.value.text, pouredOff.what)
        : text.pouredOffLike(pouredOff.cooked.value)
    notes.push(withReason(what, pouredOff.because?.value))
  }
  if (line.simmeredMinutes) {
    notes.push(text.simmered(minutesText(line.simmeredMinutes.value, words)))
  }
  if (line.cooked) notes.push(text.cooked(line.cooked.value))
  if (line.trimmed) notes.push(text.trimmed(line.trimmed.value.text))
  if (role === 'uncounted') notes.push(text.uncounted(line.uncounted?.because.value ?? ''))
  if (role === 'optional') notes.push(text.optional)
  return notes

  function withReason(note: string, because: string | undefined): string {
    return because === undefined ? note : text.because(note, because)
  }
}
