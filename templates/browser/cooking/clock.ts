import type {CookingData} from '../../parts/cooking-data.ts'
import {fill} from '../../words/fill.ts'
import {element} from '../page/element.ts'
import {keep, kept} from '../page/kept.ts'
import {all, one} from '../page/query.ts'
import {putBack, rewrite} from '../page/written.ts'

const dayMinutes = 24 * 60
const minuteMilliseconds = 60_000

/** Makes clock times of the timetable, from a start or from when it is to be ready. */
export function addClock({slug, words}: CookingData): void {
  const form = one('#clock')
  const [start, ready] = form?.querySelectorAll('input') ?? []
  const status = form?.querySelector('[role]')
  if (!form || !start || !ready || !status) return
  const name = `scalepan clock ${slug}`
  const head = one('.timetable th')
  const places = all('.timetable [data-at]')
  const total = Math.max(...places.map(({dataset}) => Number(dataset.at)))

  /** @param by what the reader set; its day is the one that the others are told from */
  const show = (by: HTMLInputElement, other: HTMLInputElement) => {
    const asked = by.valueAsNumber / minuteMilliseconds
    keep(name, {[by === start ? 'start' : 'ready']: by.value})
    if (Number.isNaN(asked)) {
      for (const place of [head, status, ...places]) putBack(place)
      other.value = ''
      return
    }
    const from = by === ready ? asked - total : asked
    const ofDay = ((by === ready ? from : from + total) % dayMinutes) + dayMinutes
    other.valueAsNumber = (ofDay % dayMinutes) * minuteMilliseconds
    rewrite(head, words.clock)
    for (const place of places) {
      const {at, to} = place.dataset
      const ends = [at, to].flatMap((end) => (end ? [from + Number(end)] : []))
      rewrite(place, ...clockNodes(ends))
    }
    const [first, last] = [from, from + total].map((end) => clockTexts(end).join(' ').trim())
    rewrite(status, fill(words.startToReady, {start: first ?? '', ready: last ?? ''}))
  }

  form.addEventListener('input', ({target}) => {
    if (target === start) show(start, ready)
    else show(ready, start)
  })
  form.hidden = false
  const before = Object(kept(name))
  start.value = String(before.start ?? '')
  ready.value = String(before.ready ?? '')
  if (start.value) show(start, ready)
  else if (ready.value) show(ready, start)
}

/** One time with its day below it, or the two that a wait lies between. */
function clockNodes(ends: readonly number[]): (Node | string)[] {
  if (ends.length > 1) return [ends.map((end) => clockTexts(end)[0]).join('–')]
  return ends.flatMap((end) => {
    const [text, day] = clockTexts(end)
    return day === '' ? [text] : [text, element('small', '', ` ${day}`)]
  })
}

/**
 * A time as the reader's device writes it, and its day beside the one that was set: `−1 day`.
 * @param minutes since the midnight that the set day began with
 */
function clockTexts(minutes: number): readonly [time: string, day: string] {
  const text = new Date(0, 0, 1, 0, minutes).toLocaleTimeString([], {timeStyle: 'short'})
  const days = Math.floor(minutes / dayMinutes)
  if (days === 0) return [text, '']
  const counted = {style: 'unit', unit: 'day', unitDisplay: 'long', signDisplay: 'always'} as const
  return [text, days.toLocaleString(document.documentElement.lang, counted)]
}
