/** One element of a feed or a site map: text and attributes are escaped here. */
export interface XmlElement {
  readonly name: string
  readonly attributes?: Readonly<Record<string, string>>
  readonly children: readonly (XmlElement | string)[]
}

export function xml(
  name: string,
  children: XmlElement['children'],
  attributes: Readonly<Record<string, string>> = {},
): XmlElement {
  return {name, attributes, children}
}

/** The whole document as text. */
export function xmlText(root: XmlElement): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${elementText(root)}\n`
}

function elementText({name, attributes = {}, children}: XmlElement): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(value)}"`)
  const inner = children.map((child) =>
    typeof child === 'string' ? escaped(child) : elementText(child),
  )
  return `<${name}${written.join('')}>${inner.join('')}</${name}>`
}

const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
}

/** Text for XML 1.0, which has no way at all to say most control characters: those go. */
function escaped(text: string): string {
  return (
    text
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what has to go
      .replaceAll(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
      .replaceAll(/[&<>"]/g, (sign) => escapes[sign] ?? sign)
  )
}
