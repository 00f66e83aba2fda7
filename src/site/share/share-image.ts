import {sharePath} from '../../../templates/addresses.ts'
import {basisText} from '../../../templates/parts/headline.tsx'
import {publishedFigures, publishedText} from '../../../templates/parts/published-figures.ts'
import type {Site} from '../../../templates/site.ts'
import type {Computed} from '../../nutrition/computed.ts'
import {mainNutrients} from '../../nutrition/published.ts'
import {once} from '../../units/remembered.ts'
import type {SiteFile} from '../site-file.ts'
import {Canvas} from './canvas.ts'
import {png} from './png.ts'
import {canWrite, type Point, type Strokes, textWidth} from './stroke-text.ts'
import {writeText} from './write-text.ts'

/** Near 1.91 to 1, which is how links are shown; wide enough to be shown large. */
const [width, height] = [800, 420]
const margin = 48
const paper = [252, 252, 250] as const
const ink = [27, 58, 107] as const

/** What stands for a recipe where its link is shown: its name and figures, on the house's enamel. */
export function shareImage(site: Site, computed: Computed): SiteFile {
  const canvas = enamel().copy()
  writeTitle(canvas, computed.recipe.title.value)
  writeFigures(canvas, site, computed)
  write(canvas, site.cookbook.settings.title, {x: margin, y: height - 30}, 16, 2.6)
  return {path: sharePath(computed.recipe.slug), content: png(canvas, paper, ink)}
}

/** What is the same on every picture: the blue rim, under it the graduated beam, and the pan. */
const enamel = once((): Canvas => {
  const canvas = new Canvas(width, height)
  canvas.fill(0, 0, width, 18)
  for (let x = margin; x <= width - margin; x += 16) {
    canvas.draw(upright(x, 18, (x - margin) % 80 === 0 ? 34 : 26), 2)
  }
  drawPan(canvas, width - margin - 40, height - 62)
  return canvas
})

function upright(x: number, top: number, bottom: number): Strokes {
  return [
    [
      {x, y: top},
      {x, y: bottom},
    ],
  ]
}

/** The largest of a few sizes at which the name fits on its lines. */
function writeTitle(canvas: Canvas, title: string): void {
  if (!canWrite(title)) return
  for (const [size, most] of [
    [56, 2],
    [44, 3],
    [34, 4],
  ] as const) {
    const lines = brokenLines(title, size)
    if (lines.length > most && size > 34) continue
    for (const [index, line] of lines.slice(0, most).entries()) {
      write(canvas, line, {x: margin, y: 54 + size + index * size * 1.45}, size, size / 7)
    }
    return
  }
}

function brokenLines(text: string, size: number): readonly string[] {
  const lines: string[] = []
  for (const word of text.split(/\s+/)) {
    const last = lines.at(-1)
    const longer = last === undefined ? word : `${last} ${word}`
    if (last !== undefined && textWidth(longer, size) <= width - 2 * margin) {
      lines.splice(-1, 1, longer)
    } else lines.push(word)
  }
  return lines
}

/** Four figures on a line, their names below, and what they are for. */
function writeFigures(canvas: Canvas, site: Site, computed: Computed): void {
  const {words, cookbook} = site
  const {figures} = publishedFigures(computed, cookbook.settings)
  const shown = mainNutrients.flatMap(
    (name) => figures.find(({nutrient}) => nutrient === name) ?? [],
  )
  const column = (width - 2 * margin) / mainNutrients.length
  for (const [index, figure] of shown.entries()) {
    const x = margin + index * column
    write(canvas, publishedText(figure, words), {x, y: 312}, 26, 4.6)
    write(canvas, words.nutrient[figure.nutrient], {x, y: 342}, 13, 2.2)
  }
  write(canvas, basisText(computed, words), {x: margin, y: 268}, 13, 2.2)
}

function write(canvas: Canvas, text: string, at: Point, size: number, thickness: number): void {
  if (canWrite(text)) writeText(canvas, text, at, {size, thickness})
}

/** The pan of a balance on its two cords, as in the mark of the house. */
function drawPan(canvas: Canvas, x: number, y: number): void {
  const cords = [
    [
      {x: x + 1, y: y + 10},
      {x: x + 20, y: y - 20},
      {x: x + 39, y: y + 10},
    ],
  ]
  canvas.draw(cords, 3)
  for (let row = 0; row < 18; row++) {
    const inset = 2 + 18 * (1 - Math.sqrt(1 - (row / 18) ** 2))
    canvas.draw(
      [
        [
          {x: x + inset, y: y + 12 + row},
          {x: x + 40 - inset, y: y + 12 + row},
        ],
      ],
      1.5,
    )
  }
}
