import type {Element, ElementContent, Text} from 'hast'
import {h} from 'hastscript'
import {type DurationMention, durationsIn} from '../../src/cookbook/prose/durations.ts'
import {withElements} from './with-elements.ts'

/** Longer than this nobody waits for with a timer on a page. */
const longestTimerMinutes = 12 * 60

/**
 * Marks the times that steps take, so that a script can put a timer to each. A time counts as the
 * checks read it: "every 5 minutes" and "keeps for 3 days" are none.
 */
export function timed(content: readonly ElementContent[]): ElementContent[] {
  return withElements(content, (element) =>
    element.tagName === 'li' ? withTimes(element) : element,
  )
}

function withTimes(step: Element): Element {
  const texts = textsOf(step)
  const times = durationsIn(texts.map(({value}) => value).join('')).filter(isTimed)
  if (times.length === 0) return step
  const pieces = new Map<Text, readonly ElementContent[]>()
  let from = 0
  for (const text of texts) {
    pieces.set(text, splitAtTimes(text.value, from, times))
    from += text.value.length
  }
  return withTexts(step, pieces)
}

/** A list within a step has steps of its own, and a link is pressed already. */
function isApart({tagName}: Element): boolean {
  return tagName === 'ol' || tagName === 'ul' || tagName === 'a'
}

function textsOf({children}: Element): readonly Text[] {
  return children.flatMap((child) => {
    if (child.type === 'text') return [child]
    return child.type === 'element' && !isApart(child) ? textsOf(child) : []
  })
}

function withTexts(
  element: Element,
  pieces: ReadonlyMap<Text, readonly ElementContent[]>,
): Element {
  const children = element.children.flatMap((child) => {
    if (child.type === 'text') return pieces.get(child) ?? [child]
    return child.type === 'element' && !isApart(child) ? [withTexts(child, pieces)] : [child]
  })
  return {...element, children}
}

function isTimed({role, lowMinutes, highMinutes}: DurationMention): boolean {
  const takesTime = role === 'spent' || role === 'part'
  return takesTime && lowMinutes > 0 && highMinutes <= longestTimerMinutes
}

/** @param from where the text begins in the step's whole text */
function splitAtTimes(
  value: string,
  from: number,
  times: readonly DurationMention[],
): readonly ElementContent[] {
  const pieces: ElementContent[] = []
  let behind = 0
  for (const time of times) {
    if (time.from < from || time.to > from + value.length) continue
    if (time.from - from > behind) {
      pieces.push({type: 'text', value: value.slice(behind, time.from - from)})
    }
    const properties = {className: ['time'], dataMinutes: String(time.lowMinutes)}
    pieces.push(h('span', properties, time.text))
    behind = time.to - from
  }
  if (behind < value.length) pieces.push({type: 'text', value: value.slice(behind)})
  return pieces
}
