import type {Element} from 'hast'
import {h, s} from 'hastscript'
import type {EnergyShare} from '../../src/nutrition/energy-shares.ts'
import {roundedText} from '../../src/units/format-figure.ts'
import type {Words} from '../words/en.ts'

/** Marks on a beam, every tenth of the whole. */
const tenths = Array.from({length: 11}, (_, index) => index)

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
    s('line', {x1: 0, x2: '100%', y1: 6, y2: 6}),
    tenths.map((tenth) => {
      const x = `${tenth * 10}%`
      return s('line', {x1: x, x2: x, y1: 6, y2: tenth % 5 === 0 ? 14 : 10})
    }),
    s(
      'svg',
      {x: `${roundedText(ratio * 100, 1)}%`, className: ['weight-hung']},
      s('path', {d: 'M-1 2h2v10l6 18h-14l6-18z'}),
    ),
  )
}
