import type {Element} from 'hast'
import {h} from 'hastscript'
import type {Verdict} from '../../src/check/verdict.ts'
import type {Words} from '../words/en.ts'

/** A verdict in words; the style sheet puts the pointer of a balance beside it, in one ink. */
export function verdictMark(verdict: Verdict, words: Words): Element {
  return h('span', {className: ['verdict', `is-${verdict}`]}, words.verdict[verdict])
}
