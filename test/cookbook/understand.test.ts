import {describe, expect, test} from 'vitest'
import type {SourceText} from '../../src/cookbook/sources.ts'
import {understandCookbook} from '../../src/cookbook/understand.ts'

/** Understands a cookbook of texts by path. */
function understand(files: Readonly<Record<string, string>>, images: readonly string[] = []) {
  const texts: readonly SourceText[] = Object.entries(files)
    .map(([path, text]) => ({path, text}))
    .toSorted((left, right) => (left.path < right.path ? -1 : 1))
  const {cookbook, problems} = understandCookbook({
    texts,
    images: images.map((path) => ({path, bytes: new Uint8Array()})),
  })
  const told = problems.map(
    ({file, place, reason}) =>
      `${file}:${place?.start.line ?? 0}:${place?.start.column ?? 0} ${reason}`,
  )
  return {cookbook, problems, told}
}

const soup =
  '---\ntitle: Soup\nserves: 2\ningredients: { pearl barley: 180 g }\n---\n\nStir the [barley](#pearl-barley).\n'
const stock = '---\ntitle: Stock\nyield: 900 g\ningredients: { onion: 180 g }\n---\n'

test('A cookbook of every kind of file is understood', () => {
  const {cookbook, told} = understand(
    {
      'cookbook.yaml': 'title: The training table\nrules: us',
      'foods.yaml':
        'whey:\n  label: { per: 30 g, energy: 120 kcal, protein: 24 g, carbohydrate: 2 g, fat: 2 g }\n  contains: [milk]\n  measures: { scoop: 30 g }\n',
      'recipes/soup.md': soup,
      'recipes/shake.md': '---\ntitle: Shake\nserves: 1\ningredients: { whey: 2 scoops }\n---\n',
      'recipes/stock.md': stock,
      'plans/week.md':
        '---\ntitle: The week\nsummary: Six bowls\nservings: { soup: 6, shake: 0.5 }\n---\n\nStart early.\n',
      'pages/about.md': '---\ntitle: About\n---\n\n# How\n\nWe weigh.\n',
    },
    ['soup.jpg', 'steps/one.jpg'],
  )
  expect(told).toEqual([])
  expect(cookbook.settings.title).toBe('The training table')
  expect([...cookbook.recipes.keys()]).toEqual(['shake', 'soup', 'stock'])
  expect(cookbook.recipes.get('soup')?.path).toBe('recipes/soup.md')
  expect(cookbook.recipes.get('soup')?.method.ingredientLinks).toMatchObject([
    {anchor: 'pearl-barley'},
  ])
  expect(cookbook.recipes.get('shake')?.groups[0]?.lines[0]?.amount.value).toMatchObject({
    kind: 'count',
    measure: 'scoop',
  })
  expect(cookbook.foods.own.map(({name}) => name)).toEqual(['whey'])
  expect(cookbook.plans).toMatchObject([
    {
      slug: 'week',
      summary: {value: 'Six bowls'},
      servings: [
        {recipe: {value: 'soup'}, servings: 6},
        {recipe: {value: 'shake'}, servings: 0.5},
      ],
    },
  ])
  expect(cookbook.pages).toMatchObject([{slug: 'about', title: {value: 'About'}}])
  expect([...cookbook.images]).toEqual(['soup.jpg', 'steps/one.jpg'])
  expect(cookbook.refusedRecipes.size).toBe(0)
})

test('An empty cookbook is understood as one', () => {
  const {cookbook, told} = understand({})
  expect(told).toEqual([])
  expect(cookbook.recipes.size).toBe(0)
})

describe('A file that cannot be understood is left out and told; the others are read', () => {
  test('a recipe with a slip in its front matter', () => {
    const {cookbook, told} = understand({
      'recipes/soup.md': soup.replace('serves: 2', 'serves: two'),
      'recipes/stock.md': stock,
    })
    expect(told).toEqual([
      'recipes/soup.md:3:9 `serves` is `two`, expected a whole number from `1` to `10000`',
    ])
    expect([...cookbook.recipes.keys()]).toEqual(['stock'])
    expect([...cookbook.refusedRecipes]).toEqual(['soup'])
  })

  test('but not for a slip in the method, whose figures stand', () => {
    const {cookbook, problems} = understand({
      'recipes/soup.md': soup.replace('#pearl-barley', '#perl-barley'),
    })
    expect(problems.map(({ruleId}) => ruleId)).toEqual(['unknown-ingredient-link'])
    expect([...cookbook.recipes.keys()]).toEqual(['soup'])
  })

  test('unreadable YAML, no front matter, front matter that never closes', () => {
    const {cookbook, told} = understand({
      'recipes/a.md': '---\ntitle: Pot: the second\n---\n',
      'recipes/b.md': 'Stir.\n',
      'recipes/c.md': '---\ntitle: Pot\n',
      'recipes/d.md': '',
      'plans/e.md': '---\n[\n---\n',
    })
    expect(told.map((line) => line.replace(/,.*/, ''))).toEqual([
      'recipes/a.md:2:8 A second `key: value` begins on this line',
      'recipes/b.md:1:1 The file has no front matter',
      'recipes/c.md:1:1 The `---` on the first line opens front matter that never closes',
      'recipes/d.md:1:1 The file has no front matter',
      'plans/e.md:2:1 `[` opens here and never closes',
    ])
    expect(cookbook.recipes.size).toBe(0)
    expect(cookbook.plans).toEqual([])
  })

  test('names that are no address, or climb out of the folder', () => {
    const {cookbook, told} = understand({
      'recipes/Leek Soup.md': soup,
      'recipes/../../soup.md': soup,
      'pages/Über uns.md': '---\ntitle: x\n---\n',
    })
    expect(told).toHaveLength(3)
    expect(cookbook.recipes.size).toBe(0)
    expect(cookbook.pages).toEqual([])
  })

  test('an alias bomb', () => {
    const bomb = Array.from({length: 20}, (_, level) =>
      level === 0 ? 'a0: &a0 [x, x]' : `a${level}: &a${level} [*a${level - 1}, *a${level - 1}]`,
    ).join('\n')
    const {problems} = understand({'recipes/bomb.md': `---\n${bomb}\n---\n`})
    expect(problems.some(({ruleId}) => ruleId === 'no-alias')).toBe(true)
  })
})

test('Two files with one slug are told', () => {
  const {problems} = understandCookbook({
    texts: [
      {path: 'recipes/soup.md', text: soup},
      {path: 'recipes/soup.md', text: soup},
    ],
    images: [],
  })
  expect(problems).toMatchObject([
    {
      ruleId: 'one-file-a-slug',
      reason: 'Slug `soup` belongs to `recipes/soup.md` already, expected one file a slug',
    },
  ])
})

describe('A plan', () => {
  test('names recipes of the cookbook', () => {
    const {told} = understand({
      'recipes/soup.md': soup,
      'recipes/stock.md': stock.replace('yield', 'yeild'),
      'plans/week.md': '---\ntitle: x\nservings: { soup: 2, sup: 2, stock: 1 }\n---\n',
    })
    expect(told.at(-1)).toBe('plans/week.md:3:22 Plan names `sup`, expected `soup`')
    expect(told.filter((line) => line.startsWith('plans'))).toHaveLength(1)
  })

  test.each([
    [
      'title: x',
      '`servings` is missing: how many servings of which recipes, such as `servings: { barley-pot: 8 }`?',
    ],
    [
      'title: x\nservings: {}',
      '`servings` is empty, expected servings by recipe such as `{ barley-pot: 8 }`',
    ],
    ['title: x\nservings: { soup: 0 }', '`soup` in `servings` is `0`, expected a number above `0`'],
    [
      'title: x\nservings: { soup: .inf }',
      '`soup` in `servings` is `.inf`, expected a number above `0`',
    ],
    ['servings: { soup: 1 }', '`title` is missing: what is the plan called?'],
  ])('%j is refused', (frontMatter, reason) => {
    const {told} = understand({
      'recipes/soup.md': soup,
      'plans/week.md': `---\n${frontMatter}\n---\n`,
    })
    expect(told.map((line) => line.slice(line.indexOf(' ') + 1))).toEqual([reason])
  })
})

test('A page needs nothing but a title', () => {
  expect(understand({'pages/about.md': '---\nsubtitle: x\n---\n'}).told).toEqual([
    'pages/about.md:2:1 Unknown key `subtitle`, expected `title`',
    'pages/about.md:2:1 `title` is missing: what is the page called?',
  ])
})

describe('What a text shows or links to is there', () => {
  const pot = (head: string, body: string) =>
    `---\ntitle: Pot\nserves: 2\ningredients: { pearl barley: 180 g }\n${head}---\n\n${body}\n`

  test('pictures of a recipe, and in texts', () => {
    const {told} = understand(
      {
        'recipes/pot.md': pot(
          'image: { file: pot.jgp, alt: A pot }\n',
          '![Steam](../images/steps/steam.jpg) ![Lid](../images/lid.jpg)',
        ),
        'pages/about.md': '---\ntitle: About\n---\n\n![Us](../images/us.jpg)\n',
      },
      ['pot.jpg', 'steps/steam.jpg'],
    )
    expect(told).toEqual([
      'recipes/pot.md:5:16 Picture `pot.jgp` is not in images/, expected `pot.jpg`',
      'recipes/pot.md:8:44 Picture `lid.jpg` is not in images/, expected a file of that name',
      'pages/about.md:5:7 Picture `us.jpg` is not in images/, expected a file of that name',
    ])
  })

  test('recipes, plans and pages that are linked to, even those that are being mended', () => {
    const {told} = understand({
      'recipes/pot.md': pot(
        '',
        '[a](soup.md) [b](broken.md) [c](../pages/about.md) [d](sup.md) [e](pots.md)',
      ),
      'recipes/soup.md': soup,
      'recipes/broken.md': 'Stir.',
      'pages/about.md': '---\ntitle: About\n---\n\n[list](../shopping/index.html)\n',
    })
    expect(told.filter((line) => !line.startsWith('recipes/broken'))).toEqual([
      'recipes/pot.md:7:56 Link to `recipes/sup.md` leads to no file of the cookbook, expected `recipes/soup.md`',
      // Never the file itself, however like it is.
      'recipes/pot.md:7:68 Link to `recipes/pots.md` leads to no file of the cookbook, expected `recipes/soup.md`',
    ])
  })
})
