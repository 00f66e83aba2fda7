/** Where the linked ids of a document landed, by number of the page, from 1. */
export type Destinations = ReadonlyMap<string, number>

/**
 * Reads the named destinations of a PDF as Chromium writes it: objects in the open, names without
 * escapes for ids of letters, digits and hyphens. Only ids that a link names are there.
 * PDF 1.7 (ISO 32000-1:2008), 7.7.3.2 (page tree) and 12.3.2.3 (named destinations).
 */
export function pdfDestinations(pdf: Buffer): Destinations {
  const text = pdf.toString('latin1')
  if (text.includes('/ObjStm'))
    throw new Error('the objects of this PDF are packed, expected open ones')
  const objects = new Map<number, string>()
  for (const [, number, body = ''] of text.matchAll(/(?:^|\n)(\d+) 0 obj\s*([\s\S]*?)endobj/g)) {
    objects.set(Number(number), body.split('stream')[0] ?? '')
  }
  const catalog = [...objects.values()].find((body) => /\/Type\s*\/Catalog/.test(body)) ?? ''
  const pages = pageObjects(objects, reference(catalog, 'Pages'))
  const named = objects.get(reference(catalog, 'Dests') ?? Number.NaN) ?? ''
  return new Map(
    [...named.matchAll(/\/([^\s/[\]()<>]+)\s*\[\s*(\d+) 0 R/g)].map(([, name = '', page]) => [
      name,
      pages.indexOf(Number(page)) + 1,
    ]),
  )
}

function reference(body: string, key: string): number | undefined {
  const [, number] = new RegExp(`/${key}\\s+(\\d+) 0 R`).exec(body) ?? []
  return number === undefined ? undefined : Number(number)
}

/** The page objects below a node of the page tree, in order. */
function pageObjects(
  objects: ReadonlyMap<number, string>,
  number: number | undefined,
): readonly number[] {
  const body = number === undefined ? undefined : objects.get(number)
  if (number === undefined || body === undefined) return []
  const [, kids] = /\/Type\s*\/Pages\b/.test(body) ? (/\/Kids\s*\[([^\]]*)\]/.exec(body) ?? []) : []
  if (kids === undefined) return [number]
  return [...kids.matchAll(/(\d+) 0 R/g)].flatMap(([, kid]) => pageObjects(objects, Number(kid)))
}
