import {h} from 'hastscript'
import {describe, expect, test} from 'vitest'
import {runningHeads} from '../../templates/book/running-heads.ts'
import {cookbookPage, headedParts} from '../../templates/cookbook.tsx'
import {inDocument} from '../../templates/parts/in-document.ts'
import {at, cookbook, recipe, sampleSite} from './sample.ts'
import {byClass, byId, byTag, rowsOf, textOf} from './tree.ts'

const site = sampleSite()
const book = cookbookPage(site).tree
const numbered = cookbookPage(site, {
  pageOf: (id) => (id === 'recipe-barley-pot' ? '17' : '4'),
  isClose: (id) => id === 'recipe-barley-pot',
}).tree

describe('the cookbook as one document', () => {
  test('holds every recipe once, in sections by what their first tag says', () => {
    const titles = byTag(book, 'h3').map(textOf)
    for (const {recipe} of site.computed.values()) {
      expect(titles.filter((title) => title === recipe.title.value)).toHaveLength(1)
    }
    const sections = byTag(book, 'h2').map(textOf)
    expect(sections[0]).toBe('Contents')
    expect(sections).toContain('Made ahead')
  })

  test('has no id twice, and every link within it leads to one', () => {
    const ids = [book].flatMap((tree) =>
      ['h1', 'h2', 'h3', 'h4', 'h5', 'li', 'header', 'section'].flatMap((tag) =>
        byTag(tree, tag).flatMap(({properties: {id}}) => (typeof id === 'string' ? id : [])),
      ),
    )
    expect(ids.length).toBeGreaterThan(20)
    expect(new Set(ids).size).toBe(ids.length)
    const anchors = byTag(book, 'a').flatMap(({properties: {href}}) =>
      typeof href === 'string' && href.startsWith('#') ? href.slice(1) : [],
    )
    expect(anchors).toContain('recipe-brown-stock')
    for (const anchor of anchors) expect([...ids, 'main']).toContain(anchor)
  })

  test('names no page before it is printed, and recipes in its index', () => {
    expect(byClass(book, 'page')).toEqual([])
    const [index] = byClass(book, 'index').slice(-1)
    expect(index && textOf(index)).toMatch(/pearl barley .*Barley pot/)
  })

  test('names the pages once they are known', () => {
    const [line] = byClass(numbered, 'contents-line').filter((one) => /Barley/.test(textOf(one)))
    expect(line && textOf(line)).toMatch(/17$/)
    const [index] = byClass(numbered, 'index').slice(-1)
    expect(index && textOf(index)).toMatch(/pearl barley 4, 17|pearl barley 17/)
  })

  test('names in a recipe the page of what it is made from, and in the table those of all', () => {
    const uses = byTag(numbered, 'a').filter(({properties}) =>
      `${properties.href}`.endsWith('#recipe-brown-stock'),
    )
    expect(uses.map(textOf)).toContain('brown stock (page 4)')
    expect(byTag(book, 'a').map(textOf)).toContain('brown stock')
    const [table] = byClass(numbered, 'recipes')
    const [head = [], ...rows] = table ? rowsOf(table) : []
    expect(head.at(-1)).toBe('Page')
    expect(rows.find(([title]) => title?.startsWith('Barley pot'))?.at(-1)).toBe('17')
  })

  test('sets closer what would else not end on its page', () => {
    expect(byClass(book, 'close')).toEqual([])
    const [close, ...others] = byClass(numbered, 'close')
    expect(others).toEqual([])
    expect(close && textOf(close)).toContain('Barley pot with lemon chicken')
  })

  test('shows the pictures of its recipes', () => {
    const file = {path: 'bowl.jpg', alt: 'A deep bowl'}
    const pictured = recipe('pictured', {serves: at(2), image: at(file)})
    const site = sampleSite({}, {recipes: new Map([[pictured.slug, pictured]])})
    const [picture] = byClass(cookbookPage(site).tree, 'picture')
    expect(picture?.properties).toMatchObject({src: '../images/bowl.jpg', alt: 'A deep bowl'})
  })

  test('marks in its table what a dish contains by the law of the cookbook', () => {
    const [table] = byClass(book, 'allergens')
    const [head = [], ...rows] = table ? rowsOf(table) : []
    const pot = rows.find(([title]) => title?.startsWith('Barley pot')) ?? []
    const told = head.filter((_, column) => pot[column] === 'c')
    const {rules} = site.cookbook.settings
    expect(head).toHaveLength(rules === 'eu' ? 15 : 10)
    expect(told.length).toBeGreaterThan(0)
  })
})

test('sections stand in the order the cookbook names, then in that of the alphabet', () => {
  const dish = (slug: string, ...tags: string[]) =>
    recipe(slug, {title: at(slug), serves: at(2), tags: tags.map((tag) => at(tag))})
  const recipes = [dish('broth', 'hot', 'soup'), dish('cake', 'sweet'), dish('apple', 'fruit')]
  const site = sampleSite(
    {print: {paper: 'A4', cards: 'A6', sections: ['soup', 'sweet', 'nothing']}},
    {recipes: new Map(recipes.map((one) => [one.slug, one]))},
  )
  const sections = headedParts(site).map(({title}) => title)
  expect(sections.slice(1, 4)).toEqual(['Soup', 'Sweet', 'Fruit'])
  expect(sections).not.toContain('Nothing')
})

describe('running heads', () => {
  test('have a page for each part, on the paper of the cookbook', () => {
    const css = runningHeads(sampleSite({print: {paper: 'A5', cards: 'A6'}}), [
      {id: 'section-1', title: 'Soups'},
    ])
    expect(css).toContain('@page{size:148mm 210mm')
    expect(css).toContain('.chapter-section-1{page:section-1}')
    expect(css).toContain('@top-right{content:"Soups"}')
  })

  test('keep a hostile title within its string', () => {
    const title = 'a"}*{display:none}\\\n</style>'
    const css = runningHeads(sampleSite({title}), [{id: 'x', title}])
    expect(css).not.toContain('a"}')
    expect(css).not.toContain('</style>')
    // CSS Syntax Level 3, 4.3.7: a backslash, a number, one space.
    expect(css).toContain('a\\22 }*{display:none}\\5c \\a \\3c /style\\3e ')
  })

  test('are there for the sections and every chapter', () => {
    const tagged = recipe('broth', {title: at('Broth'), serves: at(2), tags: [at('soup')]})
    const recipes = new Map([...cookbook.recipes, [tagged.slug, tagged]])
    const titles = headedParts(sampleSite({}, {recipes})).map((part) => part.title)
    expect(titles[0]).toBe('Contents')
    expect(titles).toContain('Soup')
    expect(titles.at(-1)).toBe('Index of ingredients')
  })
})

test('parts of pages become parts of a document', () => {
  const parts = [
    h('section', {ariaLabelledBy: 'part-a'}, [h('h2', {id: 'part-a'}, 'A')]),
    h('a', {href: '#part-a'}, 'here'),
    h('a', {href: '../soup/index.html#leek'}, 'held'),
    h('a', {href: '../../foods/index.html#leek'}, 'outside'),
    h('a', {href: 'https://example.org/'}, 'elsewhere'),
  ]
  const placed = inDocument(parts, {
    from: 'recipes/pot/index.html',
    to: 'cookbook/index.html',
    id: 'recipe-pot',
    deeper: 2,
    places: new Map([['recipes/soup/index.html', 'recipe-soup']]),
  })
  const tree = {type: 'root' as const, children: placed}
  expect(byId(tree, 'recipe-pot--part-a').tagName).toBe('h4')
  expect(byTag(tree, 'section')[0]?.properties.ariaLabelledBy).toEqual(['recipe-pot--part-a'])
  expect(byTag(tree, 'a').map(({properties}) => properties.href)).toEqual([
    '#recipe-pot--part-a',
    '#recipe-soup--leek',
    '../foods/index.html#leek',
    'https://example.org/',
  ])
})
