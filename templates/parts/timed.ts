import type {Element, ElementContent, Text} from 'hast'
import {h} from 'hastscript'
import {SKIP, visit} from 'unist-util-visit'
import {type DurationMention, durationsIn} from '../../src/cookbook/prose/durations.ts'

/** Longer than this nobody waits for with a timer on a page. */
const longestTimerMinutes = 12 * 60

/**
 * Marks the times that steps take, so that a script can put a timer to each. A time counts as the
 * checks read it: "every 5 minutes" and "keeps for 3 days" are none.
 */
export function timed(content: ElementContent[]): ElementContent[] {
  for (const node of content) {
    visit(node, 'element', (element) => {
      if (element.tagName !== 'li') return undefined
      markTimes(element)
      return undefined
    })
  }
  return content
}

/** A text node of a step, with where its characters stand in the step's whole text. */
interface Placed {
  readonly node: Text
  readonly parent: Element
  readonly from: number
}

function markTimes(step: Element): void {
  const texts: Placed[] = []
  let whole = ''
  visit(step, (node, _, parent) => {
    // A list within a step has steps of its own, and a link is pressed already.
    if (node !== step && node.type === 'element' && ['ol', 'ul', 'a'].includes(node.tagName)) {
      return SKIP
    }
    if (node.type !== 'text' || parent?.type !== 'element') return undefined
    texts.push({node, parent, from: whole.length})
    whole += node.value
    return undefined
  })
  const times = durationsIn(whole).filter(isTimed)
  for (const text of texts.toReversed()) splitAtTimes(text, times)
}

function isTimed({role, lowMinutes, highMinutes}: DurationMention): boolean {
  const takesTime = role === 'spent' || role === 'part'
  return takesTime && lowMinutes > 0 && highMinutes <= longestTimerMinutes
}

function splitAtTimes({node, parent, from}: Placed, times: readonly DurationMention[]): void {
  const {value} = node
  const here = times.filter((time) => time.from >= from && time.to <= from + value.length)
  if (here.length === 0) return
  const pieces: ElementContent[] = []
  let behind = 0
  for (const time of here) {
    if (time.from - from > behind) {
      pieces.push({type: 'text', value: value.slice(behind, time.from - from)})
    }
    const properties = {className: ['time'], dataMinutes: String(time.lowMinutes)}
    pieces.push(h('span', properties, time.text))
    behind = time.to - from
  }
  if (behind < value.length) pieces.push({type: 'text', value: value.slice(behind)})
  parent.children.splice(parent.children.indexOf(node), 1, ...pieces)
}
