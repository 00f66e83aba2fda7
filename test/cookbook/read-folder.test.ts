import {execFileSync} from 'node:child_process'
import {
  appendFileSync,
  mkdirSync,
  statSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs'
import path from 'node:path'
import {describe, expect, test} from 'vitest'
import {EnvironmentFailure} from '../../src/cookbook/environment-failure.ts'
import {limits} from '../../src/cookbook/limits.ts'
import {readCookbook, readFolder} from '../../src/cookbook/read-folder.ts'
import {inReportOrder} from '../../src/cookbook/report-order.ts'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'

const recipe = {'recipes/pot.md': '---\ntitle: Pot\n---\n'}

async function reasons(folder: string): Promise<string[]> {
  const {problems} = await readFolder(folder)
  return inReportOrder(problems).map(({severity, reason}) => `${severity}: ${reason}`)
}

describe('what is read', () => {
  test('every kind of file, in path order, pictures by their path below images/', async () => {
    const folder = temporaryFolder({
      'recipes/b.md': 'b',
      'recipes/a.md': '\uFEFFa',
      'recipes/B.md': 'B',
      'cookbook.yaml': 'title: T',
      'foods.yaml': '',
      'tables/national.tsv': 'id\tname',
      'plans/week.md': 'w',
      'pages/about.md': 'p',
      'images/pots/one.jpg': Uint8Array.of(1, 2),
      'images/cover.png': Uint8Array.of(3),
      'drafts/x.md': 'a folder of the writer’s own',
      'recipes/.pot.md.swp': 'an editor’s own file',
      'recipes/pot.md~': 'an editor’s own file',
    })
    const {sources, problems} = await readFolder(folder)
    expect(problems).toEqual([])
    expect(sources.texts.map((source) => source.path)).toEqual([
      'cookbook.yaml',
      'foods.yaml',
      'pages/about.md',
      'plans/week.md',
      'recipes/B.md',
      'recipes/a.md',
      'recipes/b.md',
      'tables/national.tsv',
    ])
    expect(sources.texts.find((source) => source.path === 'recipes/a.md')?.text).toBe('a')
    expect(sources.images.map(({path: name, bytes}) => [name, ...bytes])).toEqual([
      ['cover.png', 3],
      ['pots/one.jpg', 1, 2],
    ])
  })

  test('a file that looks meant but is not read is told', async () => {
    const folder = temporaryFolder({
      ...recipe,
      'cookbook.yml': '',
      'recipes/leek.markdown': '',
      'recipes/soups/barley.md': '',
      'tables/foods.csv': '',
    })
    expect(await reasons(folder)).toEqual([
      'warning: `cookbook.yml` is not read, expected `cookbook.yaml`',
      'warning: `recipes/leek.markdown` is not read, expected a name that ends in `.md`',
      'warning: `recipes/soups` is not read, expected the files directly in `recipes/`',
      'warning: `tables/foods.csv` is not read, expected a name that ends in `.tsv`',
    ])
  })
})

describe('what cannot be a text', () => {
  test('a picture renamed .md, at the byte that gives it away', async () => {
    const folder = temporaryFolder({
      ...recipe,
      'recipes/photo.md': Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0),
    })
    const {sources, problems} = await readFolder(folder)
    expect(sources.texts.map((source) => source.path)).toEqual(['recipes/pot.md'])
    expect(problems).toMatchObject([
      {
        ruleId: 'utf8-text',
        severity: 'error',
        file: 'recipes/photo.md',
        place: {start: {line: 1, column: 1}},
        reason: '`recipes/photo.md` holds the byte `89`, expected plain text in UTF-8',
      },
    ])
  })

  test('a text of exactly the limit is read, one byte more is refused', async () => {
    const most = 'x'.repeat(limits.textFileBytes)
    const folder = temporaryFolder({'recipes/most.md': most, 'recipes/over.md': `${most}x`})
    const {sources, problems} = await readFolder(folder)
    expect(sources.texts.map((source) => source.path)).toEqual(['recipes/most.md'])
    expect(problems).toMatchObject([
      {file: 'recipes/over.md', reason: expect.stringContaining('expected `1.0 MB` at most')},
    ])
  })

  test.each([
    ['tables/national.tsv', limits.tableFileBytes, '67.1 MB'],
    ['images/pot.jpg', limits.imageFileBytes, '33.6 MB'],
    ['images/pot.svg', limits.svgFileBytes, '1.0 MB'],
  ])(
    '%s of exactly its limit is read, one byte more is refused unread',
    async (file, most, told) => {
      const folder = temporaryFolder({
        ...recipe,
        [file]: '<svg xmlns="http://www.w3.org/2000/svg"/>',
      })
      const full = path.join(folder, file)
      // Blank, and not noughts, which are no text.
      appendFileSync(full, ' '.repeat(most - statSync(full).size))
      expect((await readFolder(folder)).problems).toEqual([])
      appendFileSync(full, ' ')
      const {sources, problems} = await readFolder(folder)
      expect(problems).toMatchObject([
        {
          ruleId: 'file-size',
          severity: 'error',
          file,
          reason: `\`${file}\` has \`${told}\`, expected \`${told}\` at most`,
        },
      ])
      expect([...sources.texts, ...sources.images]).toHaveLength(1)
    },
  )

  test.each(['recipes', 'images'])(
    'as many files in %s as the limit are read, one more is refused',
    async (name) => {
      const folder = temporaryFolder(recipe)
      const ending = name === 'recipes' ? 'md' : 'png'
      mkdirSync(path.join(folder, name), {recursive: true})
      const there = name === 'recipes' ? 1 : 0
      for (let n = there; n < limits.folderFiles; n++) {
        writeFileSync(path.join(folder, name, `dish-${n}.${ending}`), '')
      }
      const {sources, problems} = await readFolder(folder)
      expect(problems).toEqual([])
      expect(sources.texts.length + sources.images.length).toBe(limits.folderFiles + 1 - there)
      putFiles(folder, {[`${name}/one-more.${ending}`]: ''})
      const more = await readFolder(folder)
      expect(more.problems).toMatchObject([
        {
          ruleId: 'cookbook-size',
          severity: 'error',
          file: name,
          reason: `Files in \`${name}/\`: \`10001\`, expected \`10000\` at most`,
        },
      ])
    },
  )

  test('pictures that do not fit into memory together are refused unread', async () => {
    const folder = temporaryFolder(recipe)
    const files = Math.ceil(limits.allImagesBytes / limits.imageFileBytes) + 1
    for (let n = 0; n < files; n++) {
      const image = `images/${n}.jpg`
      putFiles(folder, {[image]: ''})
      truncateSync(path.join(folder, image), limits.imageFileBytes)
    }
    const {sources, problems} = await readFolder(folder)
    expect(sources.images).toEqual([])
    expect(problems).toMatchObject([{ruleId: 'file-size', file: 'images'}])
  })
})

describe('links', () => {
  test('a link to a file inside the folder is that file; every other is refused', async () => {
    const outside = temporaryFolder({'secret.md': 'outside', 'photos/a.jpg': 'outside'})
    const folder = temporaryFolder({...recipe, 'images/a.jpg': 'inside'})
    symlinkSync('pot.md', path.join(folder, 'recipes/inside.md'))
    symlinkSync(path.join(outside, 'secret.md'), path.join(folder, 'recipes/out.md'))
    symlinkSync('nowhere.md', path.join(folder, 'recipes/dead.md'))
    symlinkSync('circle.md', path.join(folder, 'recipes/circle.md'))
    symlinkSync('..', path.join(folder, 'images/up'))
    symlinkSync(path.join(outside, 'photos'), path.join(folder, 'images/photos'))
    symlinkSync('images', path.join(folder, 'pages'))
    const {sources, problems} = await readFolder(folder)
    expect(sources.texts.map((source) => source.path)).toEqual([
      'recipes/inside.md',
      'recipes/pot.md',
    ])
    expect(sources.images.map((image) => image.path)).toEqual(['a.jpg'])
    expect(inReportOrder(problems).map(({reason}) => reason.split(', ')[0])).toEqual([
      '`images/photos` is a link that leads out of the cookbook folder',
      '`images/up` is a link to a folder',
      '`pages` is a link to a folder',
      '`recipes/circle.md` is a link that leads in a circle',
      '`recipes/dead.md` is a link that leads nowhere',
      '`recipes/out.md` is a link that leads out of the cookbook folder',
    ])
    expect(problems.every((problem) => problem.severity === 'error')).toBe(true)
  })

  test('the cookbook folder itself may be a link', async () => {
    const folder = temporaryFolder(recipe)
    const link = path.join(temporaryFolder(), 'book')
    symlinkSync(folder, link)
    expect((await readFolder(link)).sources.texts).toHaveLength(1)
  })

  test.skipIf(process.platform === 'win32')(
    'a pipe named .md is refused, not waited for',
    async () => {
      const folder = temporaryFolder(recipe)
      execFileSync('mkfifo', [path.join(folder, 'recipes/pipe.md')])
      expect(await reasons(folder)).toEqual([
        'error: `recipes/pipe.md` is neither a file nor a folder, expected a file of the cookbook folder',
      ])
    },
  )
})

describe('what stops the command', () => {
  test('no folder: what to do next', async () => {
    const missing = path.join(temporaryFolder(), 'content')
    await expect(readFolder(missing)).rejects.toThrow(EnvironmentFailure)
    await expect(readFolder(missing)).rejects.toMatchObject({
      message: `No cookbook here: the folder ${missing} is missing`,
      hint: expect.stringContaining('scalepan new cookbook'),
    })
  })

  test('a file where the folder should be', async () => {
    const folder = temporaryFolder({content: 'text'})
    await expect(readFolder(path.join(folder, 'content'))).rejects.toThrow(/is a file, expected/u)
  })

  test('a folder without recipes: what to do next', async () => {
    await expect(readCookbook(temporaryFolder({'cookbook.yaml': ''}))).rejects.toMatchObject({
      message: expect.stringContaining('No recipes in'),
      hint: expect.stringContaining('scalepan new recipe'),
    })
  })
})
