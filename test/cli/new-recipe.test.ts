import {spawnSync} from 'node:child_process'
import {readFileSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import {describe, expect, test} from 'vitest'
import {askRecipe} from '../../src/cli/ask-recipe.ts'
import {understandCookbook} from '../../src/cookbook/understand.ts'
import {temporaryFolder} from '../temporary-folder.ts'
import {answering} from './answering.ts'
import {bundledCommand} from './command.ts'

const files = {
  'content/cookbook.yaml': 'title: Boathouse\n',
  'content/recipes/broth.md': `---
title: Green broth
yield: 900 g
ingredients:
  leek: 300 g
  water: 700 g
stated: { per: 100 g, energy: 20 kcal, protein: 0.5 g, carbohydrate: 4.1 g, fat: 0.1 g }
---

Simmer the leek in the water.
`,
  'content/recipes/dip.md': `---
title: Dip
serves: 2
ingredients:
  olive oil: 10 g
---

Pour the olive oil.
`,
}

const {cookbook} = understandCookbook({
  texts: Object.entries(files).map(([file, text]) => ({
    path: file.replace('content/', ''),
    text,
  })),
  images: [],
})

describe('the questions about a recipe', () => {
  test('give what it begins with', async () => {
    const {ask} = answering({
      Title: ['Leek pot'],
      Servings: ['3'],
      Ingredient: ['leek: 400 g', 'garlic: 9 g (3 cloves)', 'Green broth: 600 g', 'dip: ½ batch'],
      Weight: ['950 g'],
      Step: ['Simmer it all.'],
    })
    expect(await askRecipe(ask, {cookbook})).toEqual({
      title: 'Leek pot',
      serves: '3',
      yield: '950 g',
      lines: [
        {name: 'leek', amount: '400 g'},
        {name: 'garlic', amount: '9 g (3 cloves)'},
        {name: 'Green broth', amount: '600 g', recipe: 'broth'},
        {name: 'dip', amount: '½ batch', recipe: 'dip'},
      ],
      steps: ['Simmer it all.'],
    })
  })

  test('passed over leave the example', async () => {
    const {ask, questions} = answering({})
    const start = await askRecipe(ask, {title: 'Pot', cookbook})
    expect(start).toMatchObject({title: 'Pot', serves: '4', yield: '1150 g'})
    expect(questions).toEqual(['Servings (4): ', 'Ingredient, such as `pearl barley: 180 g` (1): '])
  })

  test.each([
    ['perl barley: 100 g', /a food that is known, such as `pearl barley`/u],
    ['pearl barley', /name, colon and amount/u],
    ['pearl barley: some', /a number first/u],
    ['pearl barley: 3 slices', /grams: `3 slices` has no known weight/u],
    ['pearl barley: ½ batch', /grams: `½ batch` has no known weight/u],
    ['dip: 10 g', /a share such as `½ batch`, for that batch was not weighed/u],
    ['broth: 1 cup', /a weight, or a share/u],
    ['Leek: 5 g', /one line for `Leek`/u],
  ])('are asked again where no recipe could have it: %s', async (line, expected) => {
    const {ask, questions} = answering({Title: ['Pot'], Ingredient: ['leek: 300 g', line, '']})
    const {lines} = await askRecipe(ask, {cookbook})
    expect(lines).toEqual([{name: 'leek', amount: '300 g'}])
    expect(questions.filter((question) => question.startsWith('  Expected'))).toEqual([
      expect.stringMatching(expected),
    ])
  })
})

describe('new recipe', () => {
  const {run, entry} = bundledCommand()

  function started(...args: readonly string[]) {
    const cwd = temporaryFolder(files)
    return {cwd, ended: run(['new', 'recipe', ...args], {cwd})}
  }

  test('takes it all from the call, and what it writes passes', () => {
    const {cwd, ended} = started(
      ...['Leek pot: mild', '--serves', '3', '--yield', '950 g', '--summary', 'Mild; and quick.'],
      ...['--ingredient', 'leek: 400 g', '--ingredient', 'garlic: 9 g (3 cloves)'],
      ...['--ingredient', 'green broth: 600 g'],
    )
    expect(ended).toMatchObject({code: 0, stderr: ''})
    expect(ended.stdout).toContain('It passes its checks as it is; go on writing')
    const file = 'content/recipes/leek-pot-mild.md'
    const text = readFileSync(path.join(cwd, file), 'utf8')
    expect(text).toContain('title: "Leek pot: mild"\nsummary: "Mild; and quick."\nserves: 3\n')
    expect(text).toContain('  green broth: { amount: 600 g, recipe: broth }\n')
    expect(text).toContain('the [leek](#leek), the [garlic](#garlic), the [green broth]')
    const checked = run(['check', '--format', 'json', file], {cwd})
    expect(JSON.parse(checked.stdout)).toMatchObject({
      recipes: [{serves: 3, batchGrams: 950, verdicts: {energy: 'agrees', protein: 'agrees'}}],
      messages: [],
    })
  })

  test('without a weight leaves its place open, and passes', () => {
    const {cwd, ended} = started('Pot', '--ingredient', 'leek: 400 g', '--step', 'Boil the leek.')
    expect(ended.code).toBe(0)
    const text = readFileSync(path.join(cwd, 'content/recipes/pot.md'), 'utf8')
    expect(text).toContain('\n# yield: 1150 g ')
    expect(text).toContain('\n1. Boil the leek.\n')
    expect(run(['check'], {cwd}).code).toBe(0)
  })

  test.each([
    [['Pot', '--serves', 'four'], /number of servings is `four`, expected a whole number/u],
    [['Pot', '--yield', 'much'], /yield is `much`, expected/u],
    [['Pot', '--ingredient', 'leak: 1 g'], /ingredient is `leak: 1 g`, expected .*`leek`/u],
    [['Pot', '--ingredient', 'leek: 1 g', '--ingredient', 'leek: 2 g'], /one line for `leek`/u],
    [[], /A recipe wants a title, and there is no terminal/u],
  ])('%j is refused, and nothing written', (args, says) => {
    const {ended} = started(...args)
    expect(ended).toMatchObject({code: 2, stdout: ''})
    expect(ended.stderr).toMatch(says)
  })

  // A terminal to ask on, where the system has one for tests (util-linux, "script").
  const hasScript = spawnSync('script', ['--version'], {encoding: 'utf8'}).stdout?.includes(
    'util-linux',
  )
  test.skipIf(!hasScript)('asks on a terminal', () => {
    const cwd = temporaryFolder(files)
    const call = `'${process.execPath}' '${entry()}' new recipe`
    const {stdout} = spawnSync('script', ['-qec', call, '/dev/null'], {
      cwd,
      input: 'Leek pot\n2\nleak: 1 g\nleek: 400 g\n\n\n\n',
      encoding: 'utf8',
    })
    expect(stdout).toContain('Expected a food that is known, such as `leek`')
    expect(stdout).toContain('Wrote content/recipes/leek-pot.md')
    expect(readFileSync(path.join(cwd, 'content/recipes/leek-pot.md'), 'utf8')).toContain(
      'serves: 2\n',
    )
  })
})
