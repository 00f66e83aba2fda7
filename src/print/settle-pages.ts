import type {PageOf} from '../../templates/book/book.ts'
import {type Destinations, pdfDestinations} from './pdf-destinations.ts'

/** Three are usual; more mean that a number moves what it counts. */
const mostPasses = 6

/** As wide as most numbers, so that the first pass breaks like the last. */
const notYetKnown = '00'

/**
 * Prints until the page numbers in the document are those on which things stand.
 * @param print makes the PDF of the document with the numbers given
 */
export async function settlePages(print: (pageOf: PageOf) => Promise<Buffer>): Promise<Buffer> {
  let landed: Destinations = new Map()
  let isAsked = false
  for (let pass = 1; pass <= mostPasses; pass++) {
    const before = landed
    const pdf = await print((id) => {
      isAsked = true
      return `${before.get(id) ?? notYetKnown}`
    })
    if (!isAsked) return pdf
    landed = pdfDestinations(pdf)
    if (isSame(before, landed)) return pdf
  }
  throw new Error(`the page numbers still moved after ${mostPasses} prints`)
}

function isSame(left: Destinations, right: Destinations): boolean {
  return left.size === right.size && [...left].every(([id, page]) => right.get(id) === page)
}
