import {readFileSync} from 'node:fs'
import {getDocument, type PDFDocumentProxy} from 'pdfjs-dist/legacy/build/pdf.mjs'

/** A printed file, read by a library that knows nothing of how it was made. */
export interface ReadPdf {
  readonly title: unknown
  readonly language: unknown
  readonly isTagged: boolean
  readonly pages: readonly PdfPage[]
  readonly bookmarks: readonly Bookmark[]
}

export interface PdfPage {
  /** Points of 1/72 in, whole. */
  readonly size: readonly [width: number, height: number]
  /** From the top down; pieces that stand on one line are joined. */
  readonly lines: readonly string[]
  /** Web addresses that the page links to. */
  readonly links: readonly string[]
}

export interface Bookmark {
  readonly title: string
  /** From 1. */
  readonly page: number
  /** Points above the lower edge. */
  readonly height: number
}

export async function readPdf(file: string): Promise<ReadPdf> {
  const task = getDocument({data: new Uint8Array(readFileSync(file)), verbosity: 0})
  const pdf = await task.promise
  const {info} = await pdf.getMetadata()
  const marks = await pdf.getMarkInfo()
  const pages = []
  for (let number = 1; number <= pdf.numPages; number++) pages.push(await readPage(pdf, number))
  const read = {
    title: Reflect.get(info, 'Title'),
    language: Reflect.get(info, 'Language'),
    isTagged: marks?.Marked === true,
    pages,
    bookmarks: await bookmarks(pdf, await pdf.getOutline()),
  }
  await task.destroy()
  return read
}

async function readPage(pdf: PDFDocumentProxy, number: number): Promise<PdfPage> {
  const page = await pdf.getPage(number)
  const [, , width = 0, height = 0] = page.view
  const {items} = await page.getTextContent()
  const lines = new Map<number, Piece[]>()
  for (const item of items) {
    if (!('str' in item) || item.str.trim() === '') continue
    const [, , , , left = 0, bottom = 0] = item.transform
    const near = [...lines.keys()].find((line) => Math.abs(line - bottom) < 2) ?? bottom
    lines.set(near, [...(lines.get(near) ?? []), {left, right: left + item.width, text: item.str}])
  }
  const annotations = await page.getAnnotations()
  return {
    size: [Math.round(width), Math.round(height)],
    lines: [...lines].sort(([left], [right]) => right - left).map(([, pieces]) => joined(pieces)),
    links: annotations.flatMap(({url, unsafeUrl}) => url ?? unsafeUrl ?? []),
  }
}

/** A run of glyphs; a ligature is one of its own. */
interface Piece {
  readonly left: number
  readonly right: number
  readonly text: string
}

/** A gap of a point or more is a space. */
function joined(pieces: readonly Piece[]): string {
  let text = ''
  let end = Number.POSITIVE_INFINITY
  for (const piece of pieces.toSorted((left, right) => left.left - right.left)) {
    text += `${piece.left - end > 1 ? ' ' : ''}${piece.text}`
    end = piece.right
  }
  return text.replaceAll(/\s+/gu, ' ').trim()
}

type Outline = Awaited<ReturnType<PDFDocumentProxy['getOutline']>>

async function bookmarks(pdf: PDFDocumentProxy, outline: Outline): Promise<Bookmark[]> {
  const all: Bookmark[] = []
  for (const {title, dest, items} of outline ?? []) {
    const place = typeof dest === 'string' ? await pdf.getDestination(dest) : dest
    if (place) {
      const [page, , , height] = place
      all.push({title, page: (await pdf.getPageIndex(page)) + 1, height: Number(height)})
    }
    all.push(...(await bookmarks(pdf, items)))
  }
  return all
}
