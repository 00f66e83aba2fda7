import type {Root} from 'hast'
import {describe, expect, test} from 'vitest'
import {authored, imageHref, pageHref} from '../../templates/parts/authored.ts'

const source = 'recipes/pot.md'
const page = 'recipes/pot/index.html'

describe('a link the writer made', () => {
  test.each([
    ['stock.md', '../stock/index.html'],
    ['../pages/about.md', '../../pages/about/index.html'],
    ['../plans/sunday.md#list', '../../plans/sunday/index.html#list'],
    ['pot.md#section-later', '#section-later'],
    ['#pearl-barley', '#pearl-barley'],
    ['https://example.org/a?b=1', 'https://example.org/a?b=1'],
    ['mailto:cook@example.org', 'mailto:cook@example.org'],
  ])('%s leads to %s', (written, href) => {
    expect(pageHref(written, source, page)).toBe(href)
  })

  test.each([
    'javascript:alert(1)',
    'JaVaScRiPt:alert(1)',
    ' javascript:alert(1)',
    'java\nscript:alert(1)',
    'data:text/html,<script>alert(1)</script>',
    'vbscript:x',
    'file:///etc/passwd',
    '//example.org/x',
    '../../../../outside.md',
  ])('%j leads nowhere', (written) => {
    expect(pageHref(written, source, page)).toBeUndefined()
  })
})

describe('a picture', () => {
  test('stands where the cookbook has it', () => {
    expect(imageHref('../images/pot one.jpg', source, page)).toBe('../../images/pot%20one.jpg')
  })

  test.each([
    'https://example.org/x.jpg',
    'pot.jpg',
    'data:image/png;base64,AAAA',
    '../foods.yaml',
  ])('%s is none of the cookbook’s', (written) => {
    expect(imageHref(written, source, page)).toBeUndefined()
  })
})

describe('the writer’s text on a page', () => {
  const body: Root = {
    type: 'root',
    children: [
      {
        type: 'element',
        tagName: 'p',
        properties: {},
        children: [
          {
            type: 'element',
            tagName: 'a',
            properties: {href: 'javascript:alert(1)'},
            children: [{type: 'text', value: 'a link'}],
          },
          {
            type: 'element',
            tagName: 'img',
            properties: {src: 'https://example.org/x.jpg', alt: 'a pot'},
            children: [],
          },
        ],
      },
    ],
  }

  test('keeps the words of what is not let through', () => {
    expect(authored(body, source, page)).toEqual([
      {
        type: 'element',
        tagName: 'p',
        properties: {},
        children: [
          {
            type: 'element',
            tagName: 'a',
            properties: {},
            children: [{type: 'text', value: 'a link'}],
          },
          {type: 'text', value: 'a pot'},
        ],
      },
    ])
  })

  test('is not changed where it came from', () => {
    const before = structuredClone(body)
    authored(body, source, page)
    expect(body).toEqual(before)
  })
})
