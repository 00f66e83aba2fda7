import {runInNewContext} from 'node:vm'
import {describe, expect, test} from 'vitest'
import {siteOf} from '../../src/site/render-site.ts'
import {recipeIndex} from '../../templates/index.tsx'
import {dataScript} from '../../templates/parts/data-script.ts'
import {shoppingFiles, shoppingPage} from '../../templates/shopping.tsx'
import {crookedTitle, manyRecipes} from './many.ts'
import {sampleSite} from './sample.ts'
import {byClass, byId, byTag, elements, rowsOf, textOf} from './tree.ts'

/** What a data file leaves in a browser. */
function dataOf(path: string, content: string): unknown {
  const scope: {self?: unknown; scalepanData?: unknown} = {}
  scope.self = scope
  runInNewContext(content, scope)
  return Reflect.get(Object(scope.scalepanData), path)
}

const many = siteOf(manyRecipes(500, 250))
const {files, ...index} = recipeIndex(many)
const pages = index.pages.map(({page}) => page())
/** By name; three of the sample's dishes stand before them. */
const pots = Array.from({length: 500}, (_, index) => `Pot ${index}`).toSorted()

describe('a table of more recipes than a browser shows at once', () => {
  test('goes on on pages of their own', () => {
    expect(pages.map(({path}) => path)).toEqual([
      'index.html',
      'dishes/2/index.html',
      'dishes/3/index.html',
      'components/2/index.html',
    ])
  })

  test('has every recipe once, by name, with its figures', () => {
    const rows = pages.flatMap(({tree}) => byTag(tree, 'tbody').flatMap(rowsOf))
    expect(rows).toHaveLength(many.computed.size)
    const titles = [...many.computed.values()].map(({recipe}) => recipe.title.value)
    const shown = rows.map(([title = '']) => title)
    expect(shown.toSorted()).toEqual(
      titles.map((title) => title.replaceAll(/\s+/g, ' ')).toSorted(),
    )
    expect(rows.every(([, energy]) => energy !== '')).toBe(true)
  })

  test('links each part to every other by the names it begins and ends with', () => {
    for (const {path, tree} of pages.slice(0, 3)) {
      const [links] = byTag(tree, 'nav').filter((nav) => textOf(nav).includes('Pot'))
      expect(links && byTag(links, 'a').map(textOf)).toEqual([
        `Barley pot with lemon chicken – ${pots[196]}`,
        `${pots[197]} – ${pots[396]}`,
        `${pots[397]} – ${pots[499]}`,
      ])
      const here = links && elements(links, ({properties}) => properties.ariaCurrent === 'page')
      expect([path, here?.length]).toEqual([path, 1])
    }
  })

  test('leads from a later part to its recipes', () => {
    const [, second] = pages
    const [link] = second ? byTag(byId(second.tree, 'recipe-table'), 'a') : []
    expect(link?.properties.href).toBe(
      `../../recipes/dish-${pots[197]?.replace('Pot ', '')}/index.html`,
    )
  })

  test('is searched by data in a file that the first page names and does not hold', () => {
    const [first] = pages
    const finder = first && byId(first.tree, 'finder')
    expect(finder?.properties.dataSource).toBe('dishes/finding.js')
    expect(finder && byTag(finder, 'script')).toEqual([])
    expect(files.map(({path}) => path)).toEqual(['dishes/finding.js'])
    const data = dataOf('dishes/finding.js', files[0]?.make() ?? '')
    expect(Reflect.get(Object(data), 'titles')).toHaveLength(503)
    expect(Reflect.get(Object(data), 'titles')).toContain(crookedTitle)
  })
})

test('a table that fits on a page is whole, with what is searched in it', () => {
  const whole = recipeIndex(sampleSite())
  expect(whole.files).toEqual([])
  const [first, ...others] = whole.pages.map(({page}) => page())
  expect(others).toEqual([])
  const finder = first && byId(first.tree, 'finder')
  expect(finder?.properties.dataSource).toBeUndefined()
  expect(finder && byTag(finder, 'script')).toHaveLength(1)
})

test.each([[crookedTitle], ['plain'], ["'"], ['\\'], ['\\\\"\n\r\u2029']])(
  'data files give back what was put into them: %j',
  (text) => {
    const value = {[text]: [text, 1.5, null, {text}]}
    expect(dataOf('some/file.js', dataScript('some/file.js', value))).toEqual(value)
  },
)

describe('a shopping list for more recipes than have a field each', () => {
  const {tree} = shoppingPage(many)
  const own = shoppingFiles(many)

  test('holds none of them', () => {
    const [choose] = byClass(tree, 'choose')
    expect(choose && byTag(choose, 'input')).toEqual([])
    expect(JSON.stringify(byId(tree, 'shopping-data'))).not.toContain('Pot 17')
  })

  test('has a file of names, and the recipes in parts of a few dozen', () => {
    const [names, ...parts] = own.map(({path, content}) => dataOf(path, content))
    expect(Reflect.get(Object(names), 'titles')).toHaveLength(many.computed.size)
    const sizes = parts.map((part) => Array.from(Reflect.get(Object(part), 'recipes')).length)
    expect(sizes).toHaveLength(32)
    expect(sizes.reduce((sum, size) => sum + size)).toBe(many.computed.size)
    expect(Math.max(...sizes)).toBeLessThan(60)
  })

  test('is whole where they are few', () => {
    expect(shoppingFiles(sampleSite())).toEqual([])
  })
})
