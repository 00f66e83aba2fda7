import {expect, test} from 'vitest'
import {xml, xmlText} from '../../src/site/xml.ts'

// XML 1.0 (fifth edition): 2.4 for the escapes, 2.2 for characters a document may not hold at all.
test('text and attributes are escaped, and what XML cannot say is left out', () => {
  expect(xmlText(xml('a', ['1 < 2 & "x"\u0000\u001b\n'], {b: '"<&>'}))).toBe(
    '<?xml version="1.0" encoding="UTF-8"?>\n<a b="&quot;&lt;&amp;&gt;">1 &lt; 2 &amp; &quot;x&quot;\n</a>\n',
  )
})

test('elements nest', () => {
  expect(xmlText(xml('a', [xml('b', ['c']), xml('d', [])]))).toContain('<a><b>c</b><d></d></a>')
})
