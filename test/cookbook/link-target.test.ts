import {describe, expect, test} from 'vitest'
import {hrefFrom, linkTarget} from '../../src/cookbook/link-target.ts'

const source = 'recipes/barley-pot.md'

describe('links that lead somewhere', () => {
  test.each([
    ['brown-stock.md', 'recipes/brown-stock.md'],
    ['./brown-stock.md', 'recipes/brown-stock.md'],
    ['../recipes/brown-stock.md', 'recipes/brown-stock.md'],
    ['../pages/about.md', 'pages/about.md'],
    ['../images/the%20rack.jpg', 'images/the rack.jpg'],
    ['../images/the rack.jpg', 'images/the rack.jpg'],
    ['..\\images\\rack.jpg', 'images/rack.jpg'],
    ['../images/50%.jpg', 'images/50%.jpg'],
    ['brühe.md?draft', 'recipes/brühe.md'],
  ])('%s is a file of the cookbook', (written, path) => {
    expect(linkTarget(written, source)).toEqual({kind: 'file', path})
  })

  test('an anchor in another file is kept', () => {
    const target = {kind: 'file', path: 'recipes/stock.md', anchor: 'für das Öl'}
    expect(linkTarget('stock.md#f%C3%BCr das Öl', source)).toEqual(target)
  })

  test.each([
    ['#pearl-barley', 'pearl-barley'],
    ['#b%C3%A9chamel', 'béchamel'],
    ['#50%', '50%'],
    ['#', ''],
  ])('%s stays on the page', (written, anchor) => {
    expect(linkTarget(written, source)).toEqual({kind: 'anchor', anchor})
  })

  test.each([
    ['https://example.org/a b', 'https://example.org/a%20b'],
    ['HTTP://EXAMPLE.org', 'http://example.org/'],
    ['mailto:cook@example.org', 'mailto:cook@example.org'],
    ['https://example.org/"><script>', 'https://example.org/%22%3E%3Cscript%3E'],
  ])('%s is an address', (written, href) => {
    expect(linkTarget(written, source)).toEqual({kind: 'address', href})
  })
})

// How a browser reads these is said by the WHATWG URL standard, section 4.4 (basic URL parser):
// leading blanks and controls, tabs and line ends are dropped, a backslash is a slash.
describe('links that are refused', () => {
  test.each([
    'javascript:alert(1)',
    'JaVaScRiPt:alert(1)',
    ' javascript:alert(1)',
    '\u0001javascript:alert(1)',
    'java\nscript:alert(1)',
    'java\tscript:alert(1)',
    'vbscript:msgbox(1)',
    'data:text/html,<script>alert(1)</script>',
    'file:///etc/passwd',
    'blob:https://example.org/1',
    'ftp://example.org/',
    'tel:123',
    'C:\\recipes\\a.md',
    '//example.org/x',
    '\\\\example.org/x',
    '/etc/passwd',
    '../../secret.md',
    '../../../../etc/passwd',
    '%2e%2e/%2e%2e/secret.md',
    'http://[',
  ])('%j', (written) => {
    expect(linkTarget(written, source).kind).toBe('refused')
  })

  test('a web address without its slashes is a file, as the page that shows it has no scheme', () => {
    const target = {kind: 'file', path: 'recipes/example.org'}
    expect(linkTarget('https:example.org', source)).toEqual(target)
  })

  test.each([
    ['javascript:alert(1)', 'has the scheme `javascript:`'],
    ['../../secret.md', 'leads out of the cookbook'],
    ['//example.org', 'leads out of the cookbook'],
    ['http://[', 'is no address'],
  ])('%s: the message says why', (written, fault) => {
    expect(linkTarget(written, source)).toEqual({kind: 'refused', fault})
  })
})

test('the way to a file starts from the folder of the other', () => {
  expect(hrefFrom('recipes/a.md', 'images/the rack#1.jpg')).toBe('../images/the%20rack%231.jpg')
  expect(hrefFrom('recipes/a.md', 'recipes/b.md', 'für das')).toBe('../recipes/b.md#f%C3%BCr%20das')
  expect(hrefFrom('a.md', 'b.md')).toBe('b.md')
})

test('the way back is the way there, whatever the file is called', () => {
  for (const path of ['recipes/a b.md', 'images/50 %.jpg', 'pages/#1?.md', 'images/ü\\x.png']) {
    expect(linkTarget(hrefFrom(source, path), source)).toEqual({kind: 'file', path})
  }
})
