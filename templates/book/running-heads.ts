import type {Settings} from '../../src/cookbook/cookbook.ts'
import type {Site} from '../site.ts'
import type {Chapter} from './contents.tsx'

interface Paper {
  readonly size: string
  /** Above and below, at the spine, at the fore-edge: mm. */
  readonly margins: readonly [number, number, number]
}

/** ISO 216 and ANSI/ASME Y14.1 sizes in full: not every browser knows every name. */
const papers: Readonly<Record<Settings['print']['paper'], Paper>> = {
  A4: {size: '210mm 297mm', margins: [22, 25, 20]},
  Letter: {size: '8.5in 11in', margins: [22, 25, 20]},
  A5: {size: '148mm 210mm', margins: [15, 17, 13]},
}

/**
 * What stands in the margins of the printed book: its title on the left page, the part on the
 * right, page numbers outside. A style sheet of its own, because a page box takes its words from
 * nowhere else; no browser fills them from the text.
 */
export function runningHeads({cookbook: {settings}}: Site, parts: readonly Chapter[]): string {
  const {size, margins} = papers[settings.print.paper]
  const [ends, spine, edge] = margins
  const rules = parts.flatMap(({id, title}) => [
    `.chapter-${id}{page:${id}}`,
    `@page ${id}:left{@top-left{content:${cssString(settings.title)}}@bottom-left{content:counter(page)}}`,
    `@page ${id}:right{@top-right{content:${cssString(title)}}@bottom-right{content:counter(page)}}`,
  ])
  return `${[
    `@page{size:${size};margin:${ends}mm ${edge}mm}`,
    `@page:left{margin-right:${spine}mm}`,
    `@page:right{margin-left:${spine}mm}`,
    ...rules,
  ].join('\n')}\n`
}

/** A string of CSS Syntax Level 3, 4.3.5: what could end it is written as its number. */
function cssString(text: string): string {
  const safe = text.replaceAll(
    /["\\<>\p{Cc}]/gu,
    (sign) => `\\${sign.codePointAt(0)?.toString(16)} `,
  )
  return `"${safe}"`
}
