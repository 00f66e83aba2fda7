import {describe, expect, test} from 'vitest'
import {temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand} from './command.ts'

const {run} = bundledCommand()

const files = {
  'content/cookbook.yaml': 'title: Boathouse kitchen\nrules: us\n',
  'content/foods.yaml': `plain curd:
  sold: { aisle: dairy }
  label: { per: 100 g, energy: 62 kcal, protein: 11 g, fat: 0.2 g, carbohydrate: 4 g, salt: 0.1 g, read: 2026-10-03 }
  contains: [milk]
soured cream: { same as: usda/01056, sold: { weight: 200 g, price: 1.49 } }
jarred dressing:
  sold: { aisle: condiments }
  label: { per: 100 g, energy: 65 kcal, protein: 10 g, fat: 0.5 g, carbohydrate: 5 g, salt: 1.1 g, read: 2026-10-03 }
  contains: [egg]
  may contain: [mustard]
market dressing:
  sold: { aisle: condiments }
  label: { per: 100 g, energy: 62 kcal, protein: 10 g, fat: 0.2 g, carbohydrate: 5 g, read: 2026-10-03 }
`,
  'content/recipes/dressing.md': `---
title: Curd dressing
yield: 200 g
ingredients:
  plain curd: 190 g
  lemon juice: 10 g
---

Stir.
`,
  'content/recipes/bowl.md': `---
title: Barley bowl
serves: 2
ingredients:
  pearl barley: 120 g
  cold dressing: { amount: 100 g, recipe: dressing }
  butter: { amount: 10 g, instead: { olive oil: 8 g } }
  For serving:
    bay leaf: { amount: 2 leaves, counted: false, because: taken out }
    butter: 14 g
    leek: { amount: 30 g, optional: true }
---

Cook the barley.
`,
  'content/recipes/pan.md': `---
title: Pan
serves: 1
ingredients:
  jarred dressing: 20 g
  butter: { amount: 30 g, poured off: { amount: 5 g, what: fat } }
  for the rim: { amount: 3 g, food: usda/01001, optional: true }
---

Melt, and pour the rest off.
`,
  'content/recipes/raw.md':
    '---\ntitle: Raw\nserves: 1\ningredients:\n  stardust: 5 g\n---\n\nStir.\n',
}

function like(...args: readonly string[]) {
  return run(['foods', 'like', ...args], {cwd: temporaryFolder(files)})
}

function asked(...args: readonly string[]): unknown {
  const {code, stdout, stderr} = like(...args, '--format', 'json')
  expect({code, stderr}).toEqual({code: 0, stderr: ''})
  return JSON.parse(stdout)
}

const condiments = ['--in', 'bowl', '--aisle', 'condiments', '--most', '2'] as const

describe('foods like --in', () => {
  test('shows bought dressings by the amount the bowl uses, and what each changes', () => {
    const {code, stdout} = like('cold-dressing', ...condiments)
    expect(code).toBe(0)
    const [title, , heading, wanted, market, jarred, , each, now, ...swaps] = stdout.split('\n')
    expect(title).toBe('Barley bowl: Curd dressing, 100 g')
    expect(heading).toMatch(/^in the recipe +id +amount +energy +protein +carbohydrate +fat +salt$/)
    expect(wanted).toMatch(/^Curd dressing +100 g +\d/)
    expect(market).toMatch(/^market dressing +own\/market dressing +100 g +62 kcal/)
    expect(jarred).toMatch(/^jarred dressing +own\/jarred dressing +100 g +65 kcal/)
    expect(each).toMatch(/^a serving +energy .* apart +allergens$/)
    expect(now).toMatch(/^with Curd dressing +\d+ kcal/)
    expect(swaps[0]).toMatch(/^with market dressing .* unknown +\d\.\d kcal +not stated$/)
    expect(swaps[1]).toMatch(/^with jarred dressing .* egg, traces of mustard$/)
    expect(stdout).toContain('read it')
  })

  test('as JSON: a swap for two servings, worked by hand', () => {
    // 190 g of curd in 200 g of dressing, 50 g of it a serving: 47.5 g of curd and 2.5 g of juice,
    // SR28 (2015) 09152, 0.24 g fat and 0.35 g protein in 100 g. The jar: 50 g of it.
    const bowl = asked('dressing', ...condiments)
    const fat = 0.5 * 0.5 - (0.475 * 0.2 + 0.025 * 0.24)
    const protein = 0.5 * 10 - (0.475 * 11 + 0.025 * 0.35)
    expect(bowl).toMatchObject({
      recipe: {slug: 'bowl', title: 'Barley bowl'},
      per: 'serving',
      wanted: {name: 'Curd dressing', lines: ['cold dressing'], aside: [], grams: 100},
      foods: [
        {id: 'own/market dressing', allergensUnknown: true, brings: []},
        {
          id: 'own/jarred dressing',
          grams: 100,
          adds: {energy: {value: 65, unit: 'kcal'}},
          change: {fat: expect.closeTo(fat, 6), protein: expect.closeTo(protein, 6)},
          brings: ['egg'],
          mayBring: ['mustard'],
        },
      ],
    })
    const [market, jarred] = Object(bowl).foods
    expect(market.change).not.toHaveProperty('salt')
    expect(market.apart).toBeLessThan(jarred.apart)
  })

  test('sums the lines of a food, and says so', () => {
    const butter = ['butter', '--in', 'bowl', '--most', '1']
    expect(like(...butter).stdout).toContain('butter, 24 g, in 2 lines\n')
    expect(asked(...butter)).toMatchObject({wanted: {grams: 24, lines: ['butter', 'butter']}})
  })

  test('an optional line counts as added', () => {
    expect(like('leek', '--in', 'bowl', '--most', '1').stdout).toContain(
      'optional: counted as added',
    )
    expect(asked('leek', '--in', 'Barley bowl')).toMatchObject({
      wanted: {optional: true, grams: 30},
    })
  })

  test('says that another is counted whole, and which line stays', () => {
    const butter = ['butter', '--in', 'pan', '--aisle', 'condiments', '--most', '99']
    const {stdout} = like(...butter)
    expect(stdout).toMatch(/^Pan: butter, 30 g; left as it is: 1 line that no figure counts$/mu)
    expect(stdout).toContain('each is counted whole')
    expect(like('lemon juice', '--in', 'dressing').stdout).not.toContain('counted whole')
    const report = asked(...butter)
    expect(report).toMatchObject({wanted: {aside: ['for the rim']}})
    const ofJar = Object(report).foods.find(({id}: {readonly id: string}) => id.includes('jarred'))
    // The pan has a dressing from that jar already.
    expect(ofJar).toMatchObject({brings: [], mayBring: [], countedWhole: true})
  })

  test('takes the batch where nobody said how many it serves', () => {
    expect(like('lemon juice', '--in', 'dressing', '--most', '1').stdout).toMatch(/^the batch /mu)
    expect(asked('lemon juice', '--in', 'dressing')).toMatchObject({per: 'batch'})
  })

  test('the food itself is left out, and no food is shown twice', () => {
    const report = asked('plain curd', '--in', 'dressing', '--aisle', 'dairy', '--most', '50')
    const ids = Object(report).foods.map(({id}: {readonly id: string}) => id)
    expect(ids).not.toContain('own/plain curd')
    expect(ids).toContain('usda/01056')
    expect(new Set(ids).size).toBe(50)
  })
})

describe('foods like --in refuses', () => {
  const refusals: readonly (readonly [string, string, string, string])[] = [
    ['a recipe nobody knows', 'butter', 'bowel', 'Did you mean bowl?'],
    ['what is not in it', 'quince', 'bowl', 'It has pearl barley; cold dressing'],
    ['a slip of the pen', 'pearl barly', 'bowl', 'Did you mean pearl barley?'],
    ['what comes through a component', 'plain curd', 'bowl', 'ask with --in dressing'],
    ['an alternative', 'olive oil', 'bowl', 'instead of butter'],
    ['what is left uncounted', 'bay leaf', 'bowl', 'would change no figure'],
  ]
  test.each(refusals)('%s', (_, name, recipe, hint) => {
    const {code, stdout, stderr} = like(name, '--in', recipe)
    expect({code, stdout}).toEqual({code: 2, stdout: ''})
    expect(stderr).toContain(hint)
  })

  test('a recipe that cannot be computed, with its finding', () => {
    const {code, stdout, stderr} = like('stardust', '--in', 'raw')
    expect({code, stdout}).toEqual({code: 1, stdout: ''})
    expect(stderr).toContain('`stardust` is unknown')
  })

  test('a folder that is not there', () => {
    const {code, stderr} = run(['foods', 'like', 'leek', '--in', 'bowl'], {
      cwd: temporaryFolder({}),
    })
    expect(code).toBe(2)
    expect(stderr).toContain('content is missing')
  })
})
