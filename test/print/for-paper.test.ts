import {h} from 'hastscript'
import {expect, test} from 'vitest'
import {forPaper} from '../../src/print/for-paper.ts'
import {htmlText} from '../../src/site/html.ts'

function printedLink(href: string, address?: string): string {
  const tree = {type: 'root' as const, children: [h('a', {href}, 'there')]}
  return htmlText(forPaper({path: 'cookbook/index.html', tree}, address).tree).trim()
}

test('a link within the document and one to the web stay', () => {
  expect(printedLink('#recipe-soup')).toBe('<a href="#recipe-soup">there</a>')
  expect(printedLink('https://example.org/a')).toBe('<a href="https://example.org/a">there</a>')
})

test('a link to another page leads to the published site', () => {
  const address = 'https://boathouse.example/kitchen/'
  expect(printedLink('../plans/sunday/index.html#list', address)).toBe(
    '<a href="https://boathouse.example/kitchen/plans/sunday/#list">there</a>',
  )
})

test('without a published address its words are left', () => {
  expect(printedLink('../plans/sunday/index.html')).toBe('<a>there</a>')
})
