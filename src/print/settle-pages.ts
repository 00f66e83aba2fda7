import type {Layout} from '../../templates/book/book.ts'
import {type Destinations, pdfDestinations} from './pdf-destinations.ts'

/** Three are usual; more mean that a number moves what it counts. */
const mostPasses = 8

/** As wide as most numbers, so that the first pass breaks like the last. */
const notYetKnown = '00'

/**
 * Prints until the page numbers in the document are those on which things stand. Parts that may be
 * set closer are, where that makes them end on the page on which they begin.
 * @param print makes the PDF of the document as the layout has it
 */
export async function settlePages(print: (layout: Layout) => Promise<Buffer>): Promise<Buffer> {
  let landed: Destinations = new Map()
  /** Parts that may be set closer, and whether they are; one that it did not help is no more. */
  const closeness = new Map<string, 'not yet' | 'close' | 'in vain'>()
  const numbered = new Set<string>()
  for (let pass = 1; pass <= mostPasses; pass++) {
    const before = landed
    const pdf = await print({
      pageOf: (id) => {
        numbered.add(id)
        return `${before.get(id) ?? notYetKnown}`
      },
      isClose: (id) => {
        if (!closeness.has(id)) closeness.set(id, 'not yet')
        return closeness.get(id) === 'close'
      },
    })
    if (numbered.size === 0) return pdf
    landed = pdfDestinations(pdf)
    const starts = [...numbered].flatMap((id) => landed.get(id) ?? [])
    let isMoved = false
    for (const [id, state] of closeness) {
      if (state === 'in vain' || pagesOf(landed.get(id), starts) <= 1) continue
      closeness.set(id, state === 'close' ? 'in vain' : 'close')
      isMoved = true
    }
    if (!isMoved && isSame(before, landed)) return pdf
  }
  throw new Error(`the page numbers still moved after ${mostPasses} prints`)
}

/** How many pages a part takes: up to where the next one starts. */
function pagesOf(own: number | undefined, starts: readonly number[]): number {
  if (own === undefined) return 0
  const later = starts.filter((page) => page > own)
  return later.length === 0 ? 1 : Math.min(...later) - own
}

function isSame(left: Destinations, right: Destinations): boolean {
  return left.size === right.size && [...left].every(([id, page]) => right.get(id) === page)
}
