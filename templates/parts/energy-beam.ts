import type {Element} from 'hast'
import {h, s} from 'hastscript'
import type {EnergyShare} from '../../src/nutrition/energy-shares.ts'
import {roundedText} from '../../src/units/format-figure.ts'
import type {Words} from '../words/en.ts'
import {hangsAt} from './hangs-at.ts'

/** Marks on a beam of 100, every tenth of the whole. */
const marks = Array.from(
  {length: 11},
  (_, tenth) => `M${tenth * 10} 6v${tenth % 5 === 0 ? 8 : 4}`,
).join('')

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
    {width: '100%', height: 34, ariaHidden: 'true', className: ['beam']},
    s(
      'svg',
      {viewBox: '0 0 100 34', height: 34, preserveAspectRatio: 'none'},
      s('path', {d: `M0 6H100${marks}`, vectorEffect: 'non-scaling-stroke'}),
    ),
    s(
      'svg',
      {x: hangsAt(ratio), className: ['weight-hung']},
      s('path', {d: 'M-1 2h2v10l6 18h-14l6-18z'}),
    ),
  )
}
