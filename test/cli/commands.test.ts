import {execFileSync, spawnSync} from 'node:child_process'
import {chmodSync, existsSync, readFileSync, rmSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import {describe, expect, test} from 'vitest'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand, everyByte} from './command.ts'
import {everySiteByte} from './site-bytes.ts'

const {entry, run} = bundledCommand()

const soup = 'content/recipes/red-lentil-soup.md'

function newCookbook(): string {
  const folder = temporaryFolder()
  expect(run(['new', 'cookbook', '.'], {cwd: folder}).code).toBe(0)
  return folder
}

function change(folder: string, from: string, to: string): void {
  const text = readFileSync(path.join(folder, soup), 'utf8')
  expect(text).toContain(from)
  putFiles(folder, {[soup]: text.replace(from, to)})
}

describe('scalepan', () => {
  test('alone in an empty folder says what to do next', () => {
    const ended = run([], {cwd: temporaryFolder()})
    expect(ended).toMatchObject({code: 0, stderr: ''})
    expect(ended.stdout).toContain('scalepan new cookbook DIR')
  })

  test('alone beside a cookbook says what can be done with it', () => {
    const ended = run([], {cwd: newCookbook()})
    expect(ended).toMatchObject({code: 0, stderr: ''})
    expect(ended.stdout).toContain('scalepan build')
  })

  test.each(['--version', '-V'])('%s is the version of the package', (flag) => {
    const {version} = JSON.parse(readFileSync('package.json', 'utf8'))
    expect(run([flag], {cwd: temporaryFolder()})).toEqual({
      code: 0,
      stdout: `${version}\n`,
      stderr: '',
    })
  })

  test('the version loads next to nothing', () => {
    const loaded = new Set<string>()
    const load = (file: string) => {
      if (loaded.has(file)) return
      loaded.add(file)
      for (const [, name = ''] of readFileSync(file, 'utf8').matchAll(
        /(?:from|import) "(\.\/.+?)";/g,
      )) {
        load(path.join(path.dirname(file), name))
      }
    }
    load(entry())
    const bytes = [...loaded].reduce((sum, file) => sum + readFileSync(file).length, 0)
    expect(loaded.size).toBeGreaterThan(1)
    expect(bytes).toBeLessThan(10_000)
  })

  test.each([[[]], [['build']], [['check']], [['explain']], [['new']], [['new', 'recipe']]])(
    '%j --help explains itself, with an example',
    (command) => {
      const ended = run([...command, '--help'], {cwd: temporaryFolder()})
      expect(ended).toMatchObject({code: 0, stderr: ''})
      expect(ended.stdout).toMatch(/Usage: scalepan/u)
      expect(ended.stdout).toMatch(/Examples:\n {2}scalepan /u)
    },
  )

  test.each([
    [['biuld'], 'Did you mean build?'],
    [['chekc'], 'Did you mean check?'],
    [['build', '--sitee', 'x'], 'Did you mean --site?'],
    [['new', 'recip', 'x'], 'Did you mean recipe?'],
    [['check', '--format', 'yaml'], 'Allowed choices are text, json, github, sarif, junit'],
    [['explain'], "missing required argument 'recipe'"],
    [['build', 'extra'], 'too many arguments'],
    [['new', 'recipe', '--content'], 'argument missing'],
  ])('%j is a slip: code 2, on standard error', (args, says) => {
    const ended = run(args, {cwd: newCookbook()})
    expect(ended).toMatchObject({code: 2, stdout: ''})
    expect(ended.stderr).toContain(says)
  })
})

describe('scalepan build', () => {
  test('prints a summary that fits on one screen, and nothing else', () => {
    const folder = newCookbook()
    const ended = run(['build'], {cwd: folder})
    expect(ended).toMatchObject({code: 0, stderr: ''})
    const lines = ended.stdout.split('\n')
    expect(lines.length).toBeLessThan(24)
    expect(lines.every((line) => line.length <= 80)).toBe(true)
    expect(ended.stdout).toMatch(/^Our cookbook\n {2}recipes {3}1, 0 of them components\n/u)
    expect(ended.stdout).toMatch(/foods {5}6 used: 0 labels, 6 from tables/u)
    expect(ended.stdout).toMatch(/figures {3}4 stated: 4 agree, 0 tolerated, 0 drift/u)
    expect(ended.stdout).toMatch(/time {6}\d+\.\d\d s/u)
    expect(existsSync(path.join(folder, 'site/index.html'))).toBe(true)
  })

  test('again changes nothing', () => {
    const folder = newCookbook()
    run(['build'], {cwd: folder})
    const before = everyByte(path.join(folder, 'site'))
    expect(run(['build'], {cwd: folder}).stdout).toMatch(/: 0 written, \d+ unchanged, 0 removed/u)
    expect(everyByte(path.join(folder, 'site'))).toEqual(before)
  })

  test('writes the same bytes in another folder, time zone and language', () => {
    const sites = [
      {TZ: 'UTC', LANG: 'C'},
      {TZ: 'Pacific/Kiritimati', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8'},
    ].map((env) => {
      const folder = newCookbook()
      expect(run(['build'], {cwd: folder, env}).code).toBe(0)
      return everySiteByte(path.join(folder, 'site'))
    })
    expect(sites[1]).toEqual(sites[0])
  })

  test('takes folders of other names', () => {
    const folder = newCookbook()
    const ended = run(['build', '--content', 'content', '--site', 'public/www'], {cwd: folder})
    expect(ended.code).toBe(0)
    expect(ended.stdout).toContain(path.join('public/www', 'index.html'))
    expect(existsSync(path.join(folder, 'public/www/index.html'))).toBe(true)
  })

  test('a changed amount stops it at the line that states what no longer follows', () => {
    const folder = newCookbook()
    run(['build'], {cwd: folder})
    const before = everyByte(path.join(folder, 'site'))
    change(folder, 'red lentils: 220 g', 'red lentils: 320 g')
    const ended = run(['build'], {cwd: folder})
    expect(ended).toMatchObject({code: 1, stdout: ''})
    expect(ended.stderr).toMatch(
      /^content\/recipes\/red-lentil-soup\.md:16:19 {2}error {2}Stated energy `268 kcal`/u,
    )
    expect(ended.stderr).toMatch(/\n\n4 errors: nothing was written, site is as it was\.\n$/u)
    expect(everyByte(path.join(folder, 'site'))).toEqual(before)
  })

  test('warnings are told and let it pass', () => {
    const folder = newCookbook()
    putFiles(folder, {'content/recipes/leek.markdown': 'x'})
    const ended = run(['build'], {cwd: folder})
    expect(ended.code).toBe(0)
    expect(ended.stderr).toMatch(/leek\.markdown:1:1 {2}warning {2}.* is not read/u)
    expect(ended.stdout).toMatch(/findings {2}0 errors, 1 warning, 0 notes/u)
  })

  test('a page changed by hand is replaced, and where its copy is is told', () => {
    const folder = newCookbook()
    run(['build'], {cwd: folder})
    putFiles(folder, {'site/index.html': 'by hand'})
    const ended = run(['build'], {cwd: folder})
    const copy = path.join('site', '.scalepan/changed/index.html')
    expect(ended.stdout).toContain(copy)
    expect(readFileSync(path.join(folder, copy), 'utf8')).toBe('by hand')
  })
})

describe('scalepan check', () => {
  test('writes nothing and ends with a summary line', () => {
    const fresh = newCookbook()
    const before = everyByte(fresh)
    expect(run(['check'], {cwd: fresh})).toEqual({
      code: 0,
      stderr: '',
      stdout:
        '0 errors, 0 warnings, 0 notes in 1 recipe; 4 stated figures: 4 agree, 0 tolerated, 0 drift\n',
    })
    expect(everyByte(fresh)).toEqual(before)
  })

  test('prints a block a finding, in order, and the summary', () => {
    const fresh = newCookbook()
    change(fresh, 'protein: 14 g', 'protein: 41 g')
    putFiles(fresh, {'content/plans/week.txt': ''})
    const {code, stdout, stderr} = run(['check'], {cwd: fresh})
    expect([code, stderr]).toEqual([1, ''])
    expect(stdout.split('\n')).toEqual([
      'content/plans/week.txt:1:1  warning  `plans/week.txt` is not read, expected a name that ends in `.md`  file-name',
      'content/recipes/red-lentil-soup.md:16:38  error  Stated protein `41 g` per serving, expected `13.8 ± 0.1 g` from the ingredients  stated-macros',
      '    Write `protein: 14 g`, or mend the ingredient that is wrong.',
      expect.stringMatching(/^ {4}Most of it: red lentils 13 g/u),
      '',
      '1 error, 1 warning, 0 notes in 1 recipe; 4 stated figures: 3 agree, 0 tolerated, 1 drift',
      '',
    ])
  })

  test('prints figures and findings as JSON, and only that on standard output', () => {
    const fresh = newCookbook()
    change(fresh, 'protein: 14 g', 'protein: 41 g')
    const {code, stdout, stderr} = run(['check', '--format', 'json'], {cwd: fresh})
    expect([code, stderr]).toEqual([1, ''])
    const report = JSON.parse(stdout)
    expect(Object.keys(report)).toEqual(['recipes', 'messages'])
    expect(report.recipes).toHaveLength(1)
    expect(report.recipes[0]).toMatchObject({
      slug: 'red-lentil-soup',
      file: soup,
      serves: 4,
      batchGrams: 1300,
      portionGrams: 325,
      perServing: {
        energy: {value: expect.any(Number), uncertainty: expect.any(Number), unit: 'kcal'},
        vitaminD: {unit: 'µg'},
        water: {unit: 'g'},
      },
      per100g: {protein: {unit: 'g'}},
      stated: {protein: {value: 41, unit: 'g'}},
      verdicts: {energy: 'agrees', protein: 'drift', carbohydrate: 'agrees', fat: 'agrees'},
    })
    expect(report.messages).toEqual([
      {
        file: soup,
        line: 16,
        column: 38,
        endLine: 16,
        endColumn: 42,
        rule: 'stated-macros',
        severity: 'error',
        reason: expect.stringContaining('Stated protein `41 g`'),
        actual: '41 g',
        expected: ['14 g'],
        note: expect.any(String),
        fix: {line: 16, column: 38, endLine: 16, endColumn: 42, text: '14 g'},
        url: 'rules/index.html#stated-macros',
      },
    ])
  })

  test('reports on the files named, by any way to write them', () => {
    const fresh = newCookbook()
    change(fresh, 'protein: 14 g', 'protein: 41 g')
    for (const file of [soup, `./${soup}`, path.join(fresh, soup)]) {
      expect(run(['check', file], {cwd: fresh})).toMatchObject({code: 1})
    }
    const other = run(['check', 'content/foods.yaml', '--format', 'json'], {cwd: fresh})
    expect(other.code).toBe(0)
    expect(JSON.parse(other.stdout)).toEqual({recipes: [], messages: []})
  })

  test('counts what it reports on, with the recipes that it could not understand', () => {
    const fresh = newCookbook()
    change(fresh, 'protein: 14 g', 'protein: 41 g')
    putFiles(fresh, {'content/recipes/tea.md': '---\ntitel: Tea\n---\n'})
    const last = (args: readonly string[]) =>
      run(['check', ...args], {cwd: fresh})
        .stdout.trimEnd()
        .split('\n')
        .at(-1)
    expect(last([])).toBe(
      '4 errors, 0 warnings, 0 notes in 2 recipes, 1 of them not understood; 4 stated figures: 3 agree, 0 tolerated, 1 drift',
    )
    expect(last([soup])).toBe(
      '1 error, 0 warnings, 0 notes in 1 recipe; 4 stated figures: 3 agree, 0 tolerated, 1 drift',
    )
    expect(last(['content/foods.yaml'])).toMatch(/^0 errors, 0 warnings, 0 notes in 1 file;/u)
  })

  test.each(['content/recipes/red-lentl-soup.md', 'red-lentil-soup', 'red-lentil-soup.md'])(
    '%s is none of the cookbook’s files: a slip, with a suggestion',
    (name) => {
      expect(run(['check', name], {cwd: newCookbook()})).toEqual({
        code: 2,
        stdout: '',
        stderr: `scalepan: ${name} is no file of the cookbook\n  Did you mean ${soup}?\n`,
      })
    },
  )
})

describe('scalepan explain', () => {
  test.each(['red-lentil-soup', soup, 'Red lentil soup', 'red lentil SOUP'])(
    'knows a recipe by %s',
    (name) => {
      const ended = run(['explain', name], {cwd: newCookbook()})
      expect(ended).toMatchObject({code: 0, stderr: ''})
      expect(ended.stdout).toMatch(/^Red lentil soup {2}content\/recipes\/red-lentil-soup\.md\n/u)
      expect(ended.stdout).toMatch(/^red lentils +220 +197 kcal +73 % /mu)
      expect(ended.stdout).toMatch(/^ +\d+ % {2}weighing of olive oil$/mu)
    },
  )

  test('suggests the recipe that was meant', () => {
    expect(run(['explain', 'red-lentl-soup'], {cwd: newCookbook()})).toEqual({
      code: 2,
      stdout: '',
      stderr: 'scalepan: No recipe is called red-lentl-soup\n  Did you mean red-lentil-soup?\n',
    })
  })

  test('suggests the only recipe that has a part of the name, and none of several', () => {
    const folder = newCookbook()
    const {stderr} = run(['explain', 'lentil'], {cwd: folder})
    expect(stderr).toContain('Did you mean red-lentil-soup?')
    expect(run(['new', 'recipe', 'Lentil salad'], {cwd: folder}).code).toBe(0)
    expect(run(['explain', 'lentil'], {cwd: folder}).stderr).toContain('There are 2;')
  })

  test('as JSON adds lines and budget to the report', () => {
    const ended = run(['explain', 'red-lentil-soup', '--format', 'json'], {cwd: newCookbook()})
    const explanation = JSON.parse(ended.stdout)
    expect(explanation).toMatchObject({
      slug: 'red-lentil-soup',
      per: 'serving',
      verdicts: {energy: 'agrees'},
      lines: expect.arrayContaining([expect.objectContaining({name: 'red lentils', grams: 220})]),
    })
    const shares = explanation.budget.energy.map(({share}: {share: number}) => share)
    expect(shares.reduce((sum: number, share: number) => sum + share, 0)).toBeCloseTo(1, 9)
  })

  test('says what keeps a recipe from being computed', () => {
    const fresh = newCookbook()
    change(fresh, 'red lentils: 220 g', 'red lentlis: 220 g')
    const ended = run(['explain', 'red-lentil-soup'], {cwd: fresh})
    expect(ended).toMatchObject({code: 1, stdout: ''})
    expect(ended.stderr).toMatch(/unknown-food[\s\S]*cannot be computed until this is mended/u)
  })
})

describe('scalepan new', () => {
  test('cookbook: what it writes builds, without a warning', () => {
    const folder = temporaryFolder()
    expect(run(['new', 'cookbook', 'our kitchen'], {cwd: folder})).toMatchObject({
      code: 0,
      stderr: '',
      stdout: expect.stringContaining('cd our kitchen'),
    })
    const inside = path.join(folder, 'our kitchen')
    expect(run(['check'], {cwd: inside}).stdout).toMatch(
      /^0 errors, 0 warnings, 0 notes in 1 recipe/u,
    )
    expect(run(['build'], {cwd: inside}).code).toBe(0)
    expect(readFileSync(path.join(inside, 'site/.gitignore'), 'utf8')).toBe('*\n!.gitignore\n')
  })

  test('cookbook: overwrites nothing, and then writes nothing at all', () => {
    const folder = temporaryFolder({'content/foods.yaml': 'mine: {}'})
    const ended = run(['new', 'cookbook', '.'], {cwd: folder})
    expect(ended).toMatchObject({code: 2, stdout: ''})
    expect(ended.stderr).toContain(path.join('content', 'foods.yaml'))
    expect([...everyByte(folder).keys()]).toEqual(['content/foods.yaml'])
  })

  test.each([
    ['Barley pot with lemon', 'barley-pot-with-lemon'],
    ['Crème brûlée: the light one', 'creme-brulee-the-light-one'],
    ['"Half" & half, 50 %', 'half-half-50'],
    ['Yes', 'yes'],
    ['12', '12'],
    ['# 1', '1'],
    ['- list', 'list'],
    ['餃子', 'recipe'],
  ])('recipe %s: what it writes passes', (title, slug) => {
    const folder = newCookbook()
    const file = path.join('content', `recipes/${slug}.md`)
    expect(run(['new', 'recipe', '--', title], {cwd: folder})).toMatchObject({
      code: 0,
      stderr: '',
      stdout: expect.stringContaining(file),
    })
    const ended = run(['check', '--format', 'json', file], {cwd: folder})
    expect(JSON.parse(ended.stdout)).toMatchObject({
      recipes: [{slug, verdicts: {energy: 'agrees', protein: 'agrees'}}],
      messages: [],
    })
    expect(run(['explain', '--', title], {cwd: folder}).stdout.startsWith(`${title}  `)).toBe(true)
  })

  test('recipe: follows the rules and foods of its cookbook', () => {
    const folder = newCookbook()
    putFiles(folder, {
      'content/cookbook.yaml': 'title: T\nrules: us\ntolerance: strict\n',
      'content/foods.yaml':
        'pearl barley: { label: { per: 100 g, energy: 500 kcal, protein: 50 g, carbohydrate: 50 g, fat: 10 g, rules: us } }\n',
    })
    rmSync(path.join(folder, soup))
    expect(run(['new', 'recipe', 'Pot'], {cwd: folder}).code).toBe(0)
    const {stdout} = run(['check', '--format', 'json'], {cwd: folder})
    const [recipe] = JSON.parse(stdout).recipes
    expect(recipe.verdicts).toMatchObject({energy: 'agrees', protein: 'agrees'})
    expect(recipe.perServing.protein.value).toBeGreaterThan(22)
  })

  test('recipe: never overwrites', () => {
    const folder = newCookbook()
    const before = everyByte(folder)
    expect(run(['new', 'recipe', 'Red lentil soup'], {cwd: folder})).toMatchObject({
      code: 2,
      stdout: '',
      stderr: expect.stringContaining('There is already content/recipes/red-lentil-soup.md'),
    })
    expect(everyByte(folder)).toEqual(before)
  })

  test.each([
    ['', 'empty'],
    ['x'.repeat(81), 'expected one line'],
    ['a\nb', 'expected one line'],
  ])('recipe: the title %j is refused', (title, says) => {
    const ended = run(['new', 'recipe', title], {cwd: newCookbook()})
    expect(ended.code).toBe(2)
    expect(ended.stderr).toContain(says)
  })

  test('recipe: without a cookbook says how to start one', () => {
    expect(run(['new', 'recipe', 'Pot'], {cwd: temporaryFolder()})).toMatchObject({
      code: 2,
      stderr: expect.stringContaining('scalepan new cookbook DIR'),
    })
  })

  test.skipIf(process.platform === 'win32')('recipe: a folder that refuses is told', () => {
    const folder = newCookbook()
    chmodSync(folder, 0o755)
    chmodSync(path.join(folder, 'content/recipes'), 0o555)
    expect(run(['new', 'recipe', 'Pot'], {cwd: folder, asNobody: true})).toMatchObject({
      code: 2,
      stderr: 'scalepan: Cannot write content/recipes/pot.md: permission denied\n',
    })
  })
})

describe('manners', () => {
  test('colour only on demand where nobody looks, and never against NO_COLOR', () => {
    const folder = newCookbook()
    change(folder, 'protein: 14 g', 'protein: 41 g')
    const colours = (env: Record<string, string>, ...flags: string[]) =>
      run(['check', ...flags], {cwd: folder, env}).stdout.includes('\u001B[')
    expect(colours({})).toBe(false)
    expect(colours({CI: '1'})).toBe(false)
    expect(colours({FORCE_COLOR: '1'})).toBe(true)
    expect(colours({FORCE_COLOR: '0'})).toBe(false)
    expect(colours({FORCE_COLOR: '1', NO_COLOR: '1'})).toBe(false)
    expect(colours({FORCE_COLOR: '1', NO_COLOR: ''})).toBe(true)
    expect(colours({FORCE_COLOR: '1'}, '--no-color')).toBe(false)
  })

  test.skipIf(process.platform === 'win32')('a reader that leaves early ends it quietly', () => {
    const folder = newCookbook()
    const many = Object.fromEntries(
      Array.from({length: 300}, (_, n) => [`content/recipes/sub${n}/x.md`, '']),
    )
    putFiles(folder, many)
    const command = `"${process.execPath}" "${entry()}" check | head -n 1`
    const ended = spawnSync('bash', ['-c', command], {cwd: folder, encoding: 'utf8'})
    expect(ended.stderr).toBe('')
    expect(ended.stdout.split('\n')).toHaveLength(2)
  })

  test.skipIf(process.platform === 'win32')('Ctrl-C ends it with 130', () => {
    const folder = newCookbook()
    const command = `"${process.execPath}" "${entry()}" check --format json < /dev/null > /dev/null & sleep 0.1; kill -INT $!; wait $!; echo $?`
    // A shell without job control starts what runs beside it deaf to Ctrl-C: -m lets it hear.
    const code = execFileSync('bash', ['-mc', command], {cwd: folder, encoding: 'utf8'})
    expect(code.trim().split('\n').at(-1)).toBe('130')
  })
})
