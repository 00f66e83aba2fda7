/**
 * The PDF as it would be whenever it is made, so that the same cookbook gives the same bytes: the
 * dates of its making are the one given, and the numbers that Chromium hands out as it goes to
 * parts of its structure count from 1. Each text keeps its length, so the file's table of offsets
 * stays right; the numbers keep their order, so its sorted trees do too.
 */
export function reproducible(pdf: Buffer, date: Date): Buffer {
  const digits = date.toISOString().replaceAll(/\D/g, '').slice(0, 14)
  const text = pdf.toString('latin1')
  const ids = [...new Set(Array.from(text.matchAll(nodeId), ([id]) => id))].sort()
  const ranks = new Map(ids.map((id, index) => [id, `(node${`${index + 1}`.padStart(8, '0')})`]))
  return Buffer.from(
    text
      .replaceAll(/\/(CreationDate|ModDate) \(D:\d{14}/g, `/$1 (D:${digits}`)
      .replaceAll(nodeId, (id) => ranks.get(id) ?? id),
    'latin1',
  )
}

const nodeId = /\(node\d{8}\)/g
