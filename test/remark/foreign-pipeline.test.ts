import {VFile} from 'vfile'
import {reporter} from 'vfile-reporter'
import {describe, expect, test} from 'vitest'
import {examine} from '../../src/build.ts'
import {readCookbook} from '../../src/cookbook/read-folder.ts'
import {cookbookOf, foreignPipeline, run} from './pipeline.ts'

/** Round figures, so that what must come out can be worked out by hand. */
const foods = `
test oats:
  label: { per: 100 g, energy: 400 kcal, protein: 10 g, carbohydrate: 60 g, fat: 10 g }
  contains: [oats]
test milk:
  label: { per: 100 g, energy: 50 kcal, protein: 3 g, carbohydrate: 5 g, fat: 2 g }
  contains: [milk]
`
const settings = 'title: The training table\naddress: https://rowing.example/table/\n'
const stock =
  '---\ntitle: Oat milk\nyield: 400 g\ningredients: { test oats: 50 g, test milk: 350 g }\n---\n'
const cookbook = cookbookOf({
  'cookbook.yaml': settings,
  'foods.yaml': foods,
  'recipes/oat-milk.md': stock,
})

const porridge = (stated: string, method: string) => `---
title: Porridge
serves: 2
yield: 500 g
ingredients:
  test oats: 100 g
  test milk: { amount: 400 g }
stated: { ${stated} }
---

${method}
`
const method = 'Stir the [oats](#test-oats) into the [milk](#test-milk).'
const agreeing = 'energy: 300 kcal, protein: 11 g, carbohydrate: 40 g, fat: 9 g'

function found({messages, value}: VFile, text = String(value)) {
  return messages.map(({ruleId, place}) => {
    const range = place && 'start' in place ? place : undefined
    return [ruleId, text.slice(range?.start.offset, range?.end.offset)]
  })
}

describe('in somebody else’s pipeline', () => {
  test('a figure that drifts is a message on its place, with all that a message has', () => {
    const text = porridge(agreeing.replace('11 g', '19 g'), method)
    const file = run(cookbook, text)
    expect(found(file, text)).toEqual([['stated-macros', '19 g']])
    const [message] = file.messages
    expect(message).toMatchObject({
      ruleId: 'stated-macros',
      source: 'scalepan',
      fatal: true,
      line: 8,
      actual: '19 g',
      expected: ['11 g'],
      url: 'https://rowing.example/table/rules/#stated-macros',
    })
    expect(message?.reason).toContain('Stated protein `19 g` per serving, expected `11')
    expect(message?.note).toContain('Write `protein: 11 g`')
    expect(reporter(file)).toContain('notes/barley-pot.md')
  })

  test('figures that follow from the ingredients bring no message, and are on the file', () => {
    const file = run(cookbook, porridge(agreeing, method))
    expect(file.messages.map(String)).toEqual([])
    expect(file.data.recipe?.title.value).toBe('Porridge')
    expect(file.data.recipe?.slug).toBe('barley-pot')
    // (100 g × 400 + 400 g × 50) kcal ÷ 100 ÷ 2
    expect(file.data.computed?.perServing?.energy.value).toBeCloseTo(300, 9)
    expect([...(file.data.computedRecipes?.keys() ?? [])]).toEqual(['oat-milk', 'barley-pot'])
  })

  test('links to ingredients become amounts, and the figures follow at the end', () => {
    const html = String(
      run(
        cookbook,
        porridge(agreeing, 'Soak [*the* oats](#test-oats) in [][m].\n\n[m]: #test-milk'),
      ),
    )
    expect(html).toContain(
      '<p>Soak <em>the</em> oats (<span class="amount" data-anchor="test-oats" data-grams="100">100 g</span>) in test milk (<span class="amount" data-anchor="test-milk" data-grams="400">400 g</span>).</p>',
    )
    expect(html).toMatch(/<p><strong>Per serving \(250 g\)<\/strong><\/p>\s*<ul>/)
    expect(html).toMatch(/<li>energy: 300 ± \d+ kcal<\/li>/)
    expect(html).toMatch(/<li>protein: 11\.0 ± 0\.\d+ g<\/li>/)
  })

  test('a figure that nobody knows is not told as one', () => {
    const text = porridge(`${agreeing}, fibre: 4 g`, 'Stir.')
    expect(String(run(cookbook, text))).toContain('<li>fibre: unknown</li>')
  })

  test('what is wrong in the front matter and in the method is told in one go', () => {
    const text = porridge(agreeing, 'Soak [x](#test-oast) <b>well</b>.').replace('title', 'tite')
    expect(found(run(cookbook, text), text).map(([, words]) => words)).toEqual(
      expect.arrayContaining(['tite']),
    )
    const file = run(
      cookbook,
      porridge(`${agreeing}, zest: 3 g`, 'Soak [x](#test-oast) <b>well</b>.'),
    )
    const ids = file.messages.map(({ruleId}) => ruleId)
    expect(ids).toContain('known-key')
    expect(ids).toContain('unknown-ingredient-link')
    expect(ids.filter((id) => id === 'no-raw-html')).toHaveLength(2)
    expect(file.data.recipe).toBeUndefined()
  })

  test('a warning is no error, and a note neither', () => {
    const text = porridge(agreeing, 'Stir. ![](../images/x.png)').replace(/stated: .*\n/, '')
    const fatal = Object.fromEntries(
      run(cookbook, text).messages.map((message) => [message.ruleId, message.fatal]),
    )
    expect(fatal).toMatchObject({'image-alternative': false, 'missing-stated': undefined})
    expect(Object.keys(fatal)).toContain('missing-stated')
  })

  test('front matter that never closes is one message, and nothing is made up', () => {
    const file = run(cookbook, '---\ntitle: Porridge\n\nStir.\n')
    expect(file.messages.map(({ruleId, line}) => [ruleId, line])).toEqual([
      ['front-matter-present', 1],
    ])
    expect(file.data).toEqual({})
  })

  test('a byte order mark, line ends and blanks behind the fence move no place', () => {
    const text = porridge(agreeing.replace('11 g', '19 g'), 'Soak [x](#oast).')
    const variants = [text, text.replaceAll('\n', '\r\n'), text.replace('---\n', '--- \t\n')]
    for (const variant of variants) {
      const expected = found(run(cookbook, variant), variant)
      expect(expected).toContainEqual(['unknown-ingredient-link', '#oast'])
      expect(found(run(cookbook, `\uFEFF${variant}`), variant)).toEqual(expected)
    }
  })

  test('a cookbook without an address gives messages without one', () => {
    const file = run(cookbookOf({'foods.yaml': foods}), porridge('energy: 900 kcal', 'Stir.'))
    expect(file.messages.length).toBeGreaterThan(0)
    expect(file.messages.map(({url}) => url)).toEqual(file.messages.map(() => undefined))
  })
})

describe('with components', () => {
  const using = (component: string) =>
    `---\ntitle: Bowl\nserves: 1\nyield: 200 g\ningredients: { ${component}: { amount: 200 g, recipe: ${component} } }\n---\n\nStir.\n`

  test('they come from the cookbook', () => {
    const file = run(cookbook, using('oat-milk'))
    // Half of (50 g × 400 + 350 g × 50) kcal ÷ 100
    expect(file.data.computed?.batch.energy.value).toBeCloseTo(187.5, 9)
  })

  test('one that is not there is told with the nearest name', () => {
    const file = run(cookbook, using('oat-mlik'))
    expect(file.messages.map(({ruleId, expected}) => [ruleId, expected])).toEqual([
      ['unknown-component', ['oat-milk']],
    ])
    expect(file.data.computed).toBeUndefined()
  })

  test('the file at hand stands for the recipe of its name: a loop through it is found', () => {
    const looping = using('bowl').replace('title: Bowl', 'title: Oat milk')
    const withBowl = cookbookOf({
      'foods.yaml': foods,
      'recipes/oat-milk.md': stock,
      'recipes/bowl.md': using('oat-milk'),
    })
    const file = run(withBowl, looping, 'elsewhere/oat-milk.md')
    expect(file.messages.map(({ruleId, fatal}) => [ruleId, fatal])).toEqual([
      ['component-loop', true],
    ])
    expect(file.messages[0]?.reason).toBe(
      'In `recipes/bowl.md`: Component `oat-milk` contains itself: `oat-milk → bowl → oat-milk`, expected a chain that ends',
    )
    expect(file.messages[0]?.place).toBeUndefined()
    expect(file.data.computed).toBeUndefined()
  })

  test('one that cannot be computed says so in the recipe that needs it', () => {
    const withFault = cookbookOf({
      'foods.yaml': foods,
      'recipes/oat-milk.md': stock.replace('test oats', 'test oast'),
    })
    const file = run(withFault, using('oat-milk'))
    expect(file.messages.map(({ruleId}) => ruleId)).toEqual(['unknown-food'])
    expect(file.messages[0]?.reason).toMatch(
      /^In `recipes\/oat-milk\.md`: Food `test oast` is unknown, expected `test oats`/,
    )
  })

  test('one that could not be read keeps the recipe from passing in silence', () => {
    const withFault = cookbookOf({
      'foods.yaml': foods,
      'recipes/oat-milk.md': stock.replace('title', 'tilte'),
    })
    const file = run(withFault, using('oat-milk'))
    expect(file.messages.map(({ruleId, fatal}) => [ruleId, fatal])).toEqual([
      ['recipe-computed', true],
    ])
  })
})

test('every recipe of the demo gets the messages that a build gives it', async () => {
  const {sources} = await readCookbook('content')
  // An energy that no dish has, so that there is something to tell.
  const texts = sources.texts.map(({path, text}) => ({
    path,
    text: text.replace(/energy: \d+ kcal/, 'energy: 4321 kcal'),
  }))
  const {cookbook, problems} = examine({sources: {...sources, texts}, problems: []})
  const processor = foreignPipeline(cookbook)
  const recipes = texts.filter(({path}) => path.startsWith('recipes/'))
  expect(recipes.length).toBeGreaterThanOrEqual(12)
  for (const {path, text} of recipes) {
    const {messages} = processor.processSync(new VFile({path, value: text}))
    const expected = problems.filter(({file}) => file === path)
    expect(messages.map(summary).toSorted()).toEqual(expected.map(summary).toSorted())
  }
  expect(problems.filter(({ruleId}) => ruleId === 'stated-macros').length).toBeGreaterThan(11)
})

/** A message or a problem in one line, to compare one with the other. */
function summary({ruleId, place, reason}: Told): string {
  return `${ruleId} ${JSON.stringify(place)} ${reason}`
}

interface Told {
  readonly ruleId?: string | undefined
  readonly place?: unknown
  readonly reason: string
}
