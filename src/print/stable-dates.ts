/**
 * The PDF with the dates of its making set, so that the same cookbook gives the same bytes. The
 * text keeps its length: the file's table of offsets stays right.
 */
export function stableDates(pdf: Buffer, date: Date): Buffer {
  const digits = date.toISOString().replaceAll(/\D/g, '').slice(0, 14)
  const text = pdf
    .toString('latin1')
    .replaceAll(/\/(CreationDate|ModDate) \(D:\d{14}/g, `/$1 (D:${digits}`)
  return Buffer.from(text, 'latin1')
}
