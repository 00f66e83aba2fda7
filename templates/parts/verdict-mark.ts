import type {Element} from 'hast'
import {h, s} from 'hastscript'
import type {Verdict} from '../../src/check/verdict.ts'
import type {Words} from '../words/en.ts'

/** The pointer of a balance: at rest, a little off, hard over, or no pointer at all. */
const pointer: Readonly<Record<Verdict, string>> = {
  agrees: 'M8 13V3',
  tolerated: 'M8 13 10.5 4',
  drift: 'M8 13 14.5 7',
  unknown: 'M6 8h4',
}

/** A verdict in words, with the pointer of a balance beside it; neither needs colour. */
export function verdictMark(verdict: Verdict, words: Words): Element {
  return h(
    'span',
    {className: ['verdict', `is-${verdict}`]},
    s(
      'svg',
      {viewBox: '0 0 16 16', ariaHidden: 'true', className: ['pointer']},
      s('path', {d: 'M1.5 13a6.5 6.5 0 0 1 13 0z'}),
      s('path', {d: pointer[verdict]}),
    ),
    ' ',
    words.verdict[verdict],
  )
}
