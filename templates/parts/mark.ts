import type {Element} from 'hast'
import {s} from 'hastscript'

/** The pan of a kitchen balance, hung by two cords from its hook: the sign of the house. */
function strokes(): Element[] {
  return [
    s('circle', {cx: 16, cy: 4.5, r: 2.5, fill: 'none', strokeWidth: 2}),
    s('path', {d: 'M14.6 6.8 5 19M17.4 6.8 27 19', fill: 'none', strokeWidth: 1.6}),
    s('path', {d: 'M2 19h28', fill: 'none', strokeWidth: 2.4, strokeLinecap: 'round'}),
    s('path', {d: 'M4.5 20.5c1.6 5.4 6.1 8.5 11.5 8.5s9.9-3.1 11.5-8.5z', stroke: 'none'}),
  ]
}

/** The mark in the head of a page, in the colour of the text; said by the words beside it. */
export function mark(): Element {
  return s(
    'svg',
    {
      viewBox: '0 0 32 32',
      width: 32,
      height: 32,
      ariaHidden: 'true',
      className: ['mark'],
      stroke: 'currentColor',
      fill: 'currentColor',
    },
    strokes(),
  )
}

/** The mark as a file of its own: light strokes on a dark desk, dark on a light one. */
export function markFile(): Element {
  return s(
    'svg',
    {xmlns: 'http://www.w3.org/2000/svg', viewBox: '0 0 32 32'},
    s(
      'style',
      'g{fill:#1b3a6b;stroke:#1b3a6b}@media(prefers-color-scheme:dark){g{fill:#a9c4f2;stroke:#a9c4f2}}',
    ),
    s('g', strokes()),
  )
}
