/**
 * What two spellings of one name share: case, outer and repeated blanks, the form of accented
 * letters (Unicode NFC) and the shape of the apostrophe do not count.
 */
export function nameKey(name: string): string {
  // Most names of the table are plain already, and it has to be ready in milliseconds.
  if (/^[a-z0-9,.%&'/-]+(?: [a-z0-9,.%&'/-]+)*$/.test(name)) return name
  return name.normalize('NFC').toLowerCase().replaceAll('’', "'").replace(/\s+/g, ' ').trim()
}
