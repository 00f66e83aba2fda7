import type {Element} from 'hast'
import {h, s} from 'hastscript'
import type {EnergyShare} from '../../src/nutrition/energy-shares.ts'
import {roundedText} from '../../src/units/format-figure.ts'
import type {Words} from '../words/en.ts'
import {hangsAt} from './hangs-at.ts'

/**
 * Shares of the energy as weights that hang from graduated beams, one beam a source: read like a
 * steelyard, in one ink. The drawing repeats the words beside it, so it is hidden from readers
 * who listen.
 */
export function energyBeams(shares: readonly EnergyShare[], words: Words): Element {
  return h(
    'figure',
    {className: ['beams']},
    h('figcaption', words.energy.title),
    h(
      'ul',
      shares.map(({source, ratio}) =>
        h(
          'li',
          h('span', words.energy.share(words.energy[source], roundedText(ratio * 100, 0))),
          ' ',
          beam(ratio),
        ),
      ),
    ),
  )
}

function beam(ratio: number): Element {
  return s(
    'svg',
    {ariaHidden: 'true', className: ['beam']},
    s('line', {x2: '100%'}),
    s('line', {x2: '100%', pathLength: 10, className: ['tenths']}),
    s(
      'svg',
      {x: hangsAt(ratio), className: ['weight-hung']},
      s('path', {d: 'M-1 2h2v10l6 18h-14l6-18z'}),
    ),
  )
}
