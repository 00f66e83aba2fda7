/** What an SVG may not hold on a site, and where in its text. */
export interface SvgFault {
  readonly start: number
  readonly end: number
  /** As written: `<script>`, `onload`. */
  readonly what: string
}

/**
 * Looks for whatever in an SVG could run, move, load or lead somewhere. A page shows pictures in a
 * mode where nothing of it does (SVG 2, section 2.7, secure static mode); a reader who opens the
 * file itself has no such shelter. So only what is known to be still passes, and a file that does
 * not read as the plainest XML does not.
 * @returns the first fault
 */
export function svgFault(text: string): SvgFault | undefined {
  let isInStyle = false
  for (const {0: piece, index: start} of text.matchAll(pieces)) {
    const isMarkup = piece.startsWith('<')
    // A comment or a reference within a style would hide what the two sides of it make together.
    const what = isInStyle && !piece.startsWith('</') ? styleFault(piece) : fault(piece, start)
    if (what !== undefined) return {start, end: start + piece.length, what}
    if (isMarkup) isInStyle = /^<style\b/.test(piece) && !piece.endsWith('/>')
  }
  return undefined
}

/** Comments, tags and whatever else opens with `<`, and the text between. */
const pieces = /<!--(?!-?>)(?:[^-]|-(?!-))*-->|<[^<>]*>?|[^<]+/g

function fault(piece: string, start: number): string | undefined {
  if (!piece.startsWith('<') || comment.test(piece) || endTag.test(piece)) return undefined
  if (start === 0 && xmlDeclaration.test(piece)) return undefined
  const [, name = '', attributes = ''] = startTag.exec(piece) ?? []
  if (!stillElements.has(name)) return shownStart(piece)
  for (const [, key = '', doubly, singly] of attributes.matchAll(attribute)) {
    if (!isStill(name, key, decoded(doubly ?? singly ?? ''))) return key
  }
  return undefined
}

const comment = /^<!--(?!-?>)[\s\S]*-->$/
const endTag = /^<\/[\w:.-]+\s*>$/
const xmlDeclaration =
  /^<\?xml\s+version="1\.0"(?:\s+encoding="utf-8")?(?:\s+standalone="\w+")?\s*\?>$/i
const startTag = /^<([\w:.-]+)((?:\s+[\w:.-]+\s*=\s*(?:"[^"]*"|'[^']*'))*)\s*\/?>$/
const attribute = /([\w:.-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g

/** Elements of SVG 1.1 and 2 that draw, group or describe. No links, scripts, animation, HTML. */
const stillElements: ReadonlySet<string> = new Set(
  `svg g defs symbol use switch title desc path rect circle ellipse line polyline polygon text tspan
  textPath image style linearGradient radialGradient stop pattern clipPath mask marker filter
  feBlend feColorMatrix feComponentTransfer feComposite feConvolveMatrix feDiffuseLighting
  feDisplacementMap feDistantLight feDropShadow feFlood feFuncA feFuncB feFuncG feFuncR
  feGaussianBlur feMerge feMergeNode feMorphology feOffset fePointLight feSpecularLighting
  feSpotLight feTile feTurbulence`.split(/\s+/),
)

function isStill(element: string, key: string, value: string): boolean {
  if (/^(?:on|xml:base$)/i.test(key)) return false
  // Only elements without a prefix pass, so that other namespaces name attributes at most.
  if (key === 'xmlns') return value === 'http://www.w3.org/2000/svg'
  if (key.startsWith('xmlns:')) return true
  if (/(?:^|:)href$/i.test(key)) {
    return value.startsWith('#') || (element === 'image' && embeddedPicture.test(value))
  }
  return !loads.test(value)
}

const embeddedPicture = /^data:image\/(?:png|jpeg|gif|webp);base64,[\w+/=\s]*$/

/** References that hide a sign, and values that name anything but a part of the same picture. */
const loads = /[\\&]|url\((?!\s*["']?#)|(?:image-set|image|src)\(/i

function styleFault(piece: string): string | undefined {
  if (piece.startsWith('<')) return shownStart(piece)
  const [rule] = /@[\w-]*/.exec(piece) ?? loads.exec(piece) ?? []
  return rule
}

/** The five references every XML file may use; any other stays as it is, and is refused. */
function decoded(value: string): string {
  return value.replace(/&(amp|lt|gt|quot|apos);/g, (_, name: string) => references[name] ?? '')
}

// An ampersand that was written as a reference begins no other.
const references: Readonly<Record<string, string>> = {
  amp: ' ',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
}

const mostShown = 30

function shownStart(piece: string): string {
  const [start = ''] = /^<[!?/]?[\w:.-]*/.exec(piece) ?? []
  return start.slice(0, mostShown)
}
