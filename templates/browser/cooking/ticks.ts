import type {CookingData} from '../../parts/cooking-data.ts'
import {fill} from '../../words/fill.ts'
import {element} from '../page/element.ts'
import {all} from '../page/query.ts'

/**
 * A box at every ingredient and every step, for what is done.
 * @param ticked keys of those that were ticked before
 * @param changed is told the keys of all that are
 */
export function addTicks(
  {lines, words}: CookingData,
  ticked: ReadonlySet<string>,
  changed: (ticked: readonly string[]) => void,
): {clear(): void} {
  const steps = all('.method > ol > li')
  const places = [
    ...lines.map(({anchor}) => ({key: anchor, place: document.getElementById(anchor)})),
    ...[...steps].map((place, index) => ({key: `step ${index + 1}`, place})),
  ]
  const boxes = places.flatMap(({key, place}) => {
    if (place === null) return []
    const name = place.querySelector('.name') ?? place
    const box = element('input', '')
    box.type = 'checkbox'
    box.ariaLabel = fill(words.tick, {what: firstWords(name.textContent ?? '')})
    box.checked = ticked.has(key)
    place.classList.toggle('ticked', box.checked)
    place.append(element('label', 'tick', box))
    box.addEventListener('change', () => {
      place.classList.toggle('ticked', box.checked)
      changed(boxes.filter(({box}) => box.checked).map(({key}) => key))
    })
    return [{key, box, place}]
  })
  return {
    clear() {
      for (const {box, place} of boxes) {
        box.checked = false
        place.classList.remove('ticked')
      }
    },
  }
}

/** Enough of a step to tell it by. */
function firstWords(text: string): string {
  return text.trim().split(/\s+/).slice(0, 6).join(' ')
}
