import type {Element} from 'hast'
import {s} from 'hastscript'
import {correction, generate} from 'lean-qr'
import {remembered, rememberedText} from '../../src/units/remembered.ts'
import type {Site} from '../site.ts'

/** Modules of white around the code that a reader needs: ISO/IEC 18004, clause 9.1 (from memory). */
const quietModules = 4

/**
 * A QR code as one path of strokes, a run of dark modules each: a third of the size of one square
 * a module. Correction level M bears a crease.
 */
export function qrCode(site: Site, text: string, label: string): Element {
  const {size, path} = drawnFor(site)(text)
  const side = size + 2 * quietModules
  return s(
    'svg',
    {
      viewBox: `${-quietModules} ${-quietModules} ${side} ${side}`,
      className: ['qr'],
      role: 'img',
      ariaLabel: label,
      shapeRendering: 'crispEdges',
    },
    s('rect', {
      x: -quietModules,
      y: -quietModules,
      width: side,
      height: side,
      fill: '#fff',
    }),
    s('path', {d: path, stroke: '#000'}),
  )
}

interface DrawnCode {
  /** Modules on a side. */
  readonly size: number
  /** Of its dark modules. */
  readonly path: string
}

/** The code of a recipe stands on its own card and on two pages of cards. */
const drawnFor = remembered((_site: Site) => rememberedText(drawn, Number.POSITIVE_INFINITY))

function drawn(text: string): DrawnCode {
  const code = generate(text, {minCorrectionLevel: correction.M})
  return {size: code.size, path: strokes(code.size, (x, y) => code.get(x, y))}
}

function strokes(size: number, isDark: (x: number, y: number) => boolean): string {
  const runs: string[] = []
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      if (!isDark(x, y)) continue
      const start = x
      while (x + 1 < size && isDark(x + 1, y)) x++
      runs.push(`M${start} ${y + 0.5}h${x - start + 1}`)
    }
  }
  return runs.join('')
}
