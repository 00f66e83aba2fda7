import {readdirSync, readFileSync} from 'node:fs'
import {expect, test} from 'vitest'
import {svgFault} from '../../src/cookbook/still-svg.ts'

const svg = (inner: string, attributes = '') =>
  `<svg xmlns="http://www.w3.org/2000/svg"${attributes}>${inner}</svg>`

/** What was found, as it stands in the text. */
function found(text: string): string | undefined {
  const fault = svgFault(text)
  return fault && text.slice(fault.start, fault.end)
}

test.each([
  ['a shape', svg('<rect width="1" height="1" fill="#f00"/>')],
  [
    'a declaration and comments',
    `<?xml version="1.0" encoding="UTF-8"?>\n<!-- a - b -->${svg('')}`,
  ],
  ['text with any sign but two', svg('<text x="1">a > b &amp; c &#8211; d "e"</text>')],
  [
    'a gradient and its use',
    svg('<g fill="url(#a)" style="mask: url( \'#b\' )"/><use href="#c"/>'),
  ],
  ['a style', svg('<style type="text/css">.a { fill: url(#b) } /* c */</style><style/><g/>')],
  ['a font in quotes', svg('<text style="font-family: &quot;Sans&quot;, serif">x</text>')],
  ['a photograph in it', svg('<image href="data:image/png;base64,iVBO\nRw=="/>')],
  ['names of a drawing program', svg('<g xmlns:a="https://a.example/" a:label="x"/>')],
])('%s passes', (_, text) => {
  expect(found(text)).toBeUndefined()
})

test('the pictures of the demo pass', () => {
  const folder = new URL('../../content/images/', import.meta.url)
  const names = readdirSync(folder).filter((name) => name.endsWith('.svg'))
  expect(names).not.toEqual([])
  for (const name of names)
    expect(found(readFileSync(new URL(name, folder), 'utf8'))).toBeUndefined()
})

const xhtml = 'xmlns:h="http://www.w3.org/1999/xhtml"'

test.each([
  ['<script>', svg('<script>alert(1)</script>'), '<script>'],
  ['<script/>', svg('<script href="x.js"/>'), '<script'],
  [
    '<s:script>',
    svg('<s:script>alert(1)</s:script>', ' xmlns:s="http://www.w3.org/2000/svg"'),
    '<s:',
  ],
  ['<h:img>', svg('<h:img src="x" onerror="alert(1)"/>', ` ${xhtml}`), '<h:img'],
  ['<foreignObject>', svg('<foreignObject><p/></foreignObject>'), '<foreignObject>'],
  ['onload', svg('', ' onload="alert(1)"'), 'svg'],
  ['OnClick', svg('', " OnClick='alert(1)'"), 'svg'],
  ['<a>', svg('<a href="javascript:alert(1)"><text>x</text></a>'), '<a href'],
  ['<animate>', svg('<animate attributeName="href" values="javascript:alert(1)"/>'), '<animate'],
  ['<set>', svg('<set attributeName="onload" to="alert(1)"/>'), '<set'],
  ['xlink:href', svg('<use xlink:href="https://a.example/x.svg#y"/>'), '<use'],
  ['data SVG', svg('<image href="data:image/svg+xml;base64,PHN2Zz4="/>'), '<image'],
  ['image elsewhere', svg('<image href="https://a.example/x.png"/>'), '<image'],
  ['feImage', svg('<filter><feImage href="https://a.example/x.png"/></filter>'), '<feImage'],
  ['xml:base', svg('<g xml:base="https://a.example/"><use href="#x"/></g>'), '<g'],
  ['fill elsewhere', svg('<g fill="url(https://a.example/x)"/>'), '<g'],
  ['quoted URL', svg('<g style="fill: url(&quot;//a.example&quot;)"/>'), '<g'],
  ['CSS escape', svg('<g style="fill: \\75rl(//a.example)"/>'), '<g'],
  ['reference in a value', svg('<g style="fill: &#117;rl(//a.example)"/>'), '<g'],
  ['reference to a reference', svg('<g style="fill: &amp;#117;rl(//a.example)"/>'), undefined],
  ['image-set', svg('<g style="mask: image-set(&quot;//a.example&quot; 1x)"/>'), '<g'],
  ['@import', svg('<style>@import "//a.example";</style>'), '@import'],
  ['a rule cut in two', svg('<style>@im<!-- -->port "//a.example"</style>'), '@im'],
  ['a URL cut in two', svg('<style>g { fill: ur<!-- -->l(//a.example) }</style>'), '<!-- -->'],
  ['CDATA', svg('<style><![CDATA[ g {} ]]></style>'), '<![CDATA['],
  ['a document type', '<!DOCTYPE svg [<!ENTITY a "<script/>">]><svg>&a;</svg>', '<!DOCTYPE'],
  ['a style sheet', `<?xml-stylesheet href="//a.example/x.css"?>${svg('')}`, '<?xml-stylesheet'],
  ['another encoding', `<?xml version="1.0" encoding="UTF-7"?>${svg('')}`, '<?xml'],
  ['HTML', '<html xmlns="http://www.w3.org/1999/xhtml"><body/></html>', '<html'],
  ['another language', '<svg xmlns="http://www.w3.org/1999/xhtml"/>', '<svg'],
  ['a comment closed early', '<!--><script>alert(1)</script>-->', '<!-->'],
  ['a comment with two hyphens', '<!-- a -- ><script>alert(1)</script>-->', '<!--'],
  ['a tag that never ends', '<svg', '<svg'],
  ['a quote that never ends', '<svg a="><script>alert(1)</script>', '<svg'],
  ['a value without quotes', '<svg a=1>', '<svg'],
])('%s is found', (_, text, begins) => {
  if (begins === undefined) expect(found(text)).toBeUndefined()
  else expect(found(text)).toMatch(new RegExp(`^<?${begins.replaceAll(/[[\]?!]/g, '\\$&')}`))
})
