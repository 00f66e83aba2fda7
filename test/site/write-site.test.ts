import {
  existsSync,
  mkdirSync,
  readFileSync,
  rmdirSync,
  statSync,
  symlinkSync,
  unlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import path from 'node:path'
import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import type {SiteFile} from '../../src/site/site-file.ts'
import {writeSite} from '../../src/site/write-site.ts'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'
import {siteTree, workNames} from './site-tree.ts'

function files(tree: Readonly<Record<string, string>>): SiteFile[] {
  return Object.entries(tree).map(([name, content]) => ({path: name, content}))
}

const first = {'index.html': 'one', 'recipes/pot.html': 'pot', 'style.css': 'css'}

describe('a first build', () => {
  test('makes the folder and writes every file, bytes included', async () => {
    const site = path.join(temporaryFolder(), 'public/site')
    const image = Uint8Array.of(0xff, 0xd8, 0x00)
    const result = await writeSite(site, [...files(first), {path: 'images/a.jpg', content: image}])
    expect(result).toEqual({written: 4, unchanged: 0, removed: 0, left: [], setAside: []})
    expect(siteTree(site)).toEqual({...first, 'images/a.jpg': '\xff\xd8\0'})
    expect(workNames(site)).toEqual(['manifest.json'])
  })

  test('files the writer keeps in the folder stay, hidden ones too', async () => {
    const own = {'.gitignore': '*', CNAME: 'kitchen.example', 'photos/crew.jpg': 'jpg'}
    const site = temporaryFolder(own)
    await writeSite(site, files(first))
    await writeSite(site, files({'index.html': 'two'}))
    expect(siteTree(site)).toEqual({...own, 'index.html': 'two'})
  })

  test('a file of somebody else in the way is refused, all of them named, nothing written', async () => {
    const site = temporaryFolder({'index.html': 'my own page', 'recipes/pot.html': 'mine'})
    const before = siteTree(site)
    await expect(writeSite(site, files(first))).rejects.toMatchObject({
      name: 'EnvironmentFailure',
      message:
        'In the site folder stand files that scalepan did not write: index.html, recipes/pot.html',
    })
    expect(siteTree(site)).toEqual(before)
    expect(existsSync(path.join(site, '.scalepan'))).toBe(false)
  })

  test('a file that is as it should be is taken for ours, so a lost manifest does no harm', async () => {
    const site = temporaryFolder(first)
    expect(await writeSite(site, files(first))).toMatchObject({written: 0, unchanged: 3})
    expect(await writeSite(site, files({...first, 'index.html': 'two'}))).toMatchObject({
      written: 1,
    })
  })
})

describe('a later build', () => {
  test('leaves unchanged files untouched on disk', async () => {
    const site = temporaryFolder()
    await writeSite(site, files(first))
    const longAgo = new Date('2001-02-03T04:05:06Z')
    const style = path.join(site, 'style.css')
    utimesSync(style, longAgo, longAgo)
    const result = await writeSite(site, files({...first, 'index.html': 'two'}))
    expect(result).toMatchObject({written: 1, unchanged: 2})
    expect(statSync(style).mtime).toEqual(longAgo)
  })

  test('removes what it no longer produces, and the folders that leaves empty', async () => {
    const site = temporaryFolder({'recipes-archive/mine.html': 'mine'})
    await writeSite(site, files({...first, 'recipes-archive/old.html': 'old'}))
    const result = await writeSite(site, files({'index.html': 'one', 'style.css': 'css'}))
    expect(result).toMatchObject({removed: 2, unchanged: 2})
    expect(existsSync(path.join(site, 'recipes'))).toBe(false)
    expect(siteTree(site)).toEqual({
      'index.html': 'one',
      'style.css': 'css',
      'recipes-archive/mine.html': 'mine',
    })
  })

  test('a page changed by hand is replaced and its copy kept, never over an earlier copy', async () => {
    const site = temporaryFolder()
    await writeSite(site, files(first))
    for (const [copy, name] of [
      ['first hand', '.scalepan/changed/index.html'],
      ['second hand', '.scalepan/changed/index.html.1'],
    ] as const) {
      writeFileSync(path.join(site, 'index.html'), copy)
      expect((await writeSite(site, files(first))).setAside).toEqual([name])
      expect(readFileSync(path.join(site, name), 'utf8')).toBe(copy)
    }
    expect(siteTree(site)).toEqual(first)
  })

  test('a page changed by hand that is needed no more stays, and is the writer’s from then on', async () => {
    const site = temporaryFolder()
    await writeSite(site, files(first))
    putFiles(site, {'recipes/pot.html': 'by hand'})
    const rest = files({'index.html': 'one', 'style.css': 'css'})
    expect(await writeSite(site, rest)).toMatchObject({removed: 0, left: ['recipes/pot.html']})
    expect(await writeSite(site, rest)).toMatchObject({removed: 0, left: []})
    expect(siteTree(site)).toEqual({...first, 'recipes/pot.html': 'by hand'})
  })

  test('a page deleted by hand comes back', async () => {
    const site = temporaryFolder()
    await writeSite(site, files(first))
    unlinkSync(path.join(site, 'recipes/pot.html'))
    expect(await writeSite(site, files(first))).toMatchObject({written: 1, unchanged: 2})
    expect(siteTree(site)).toEqual(first)
  })

  test('the same site twice leaves the manifest alone, byte for byte', async () => {
    const site = temporaryFolder()
    await writeSite(site, files(first))
    const manifest = path.join(site, '.scalepan/manifest.json')
    const [bytes, stats] = [readFileSync(manifest, 'utf8'), statSync(manifest)]
    await writeSite(site, files(first).toReversed())
    expect(readFileSync(manifest, 'utf8')).toBe(bytes)
    expect(statSync(manifest).ino).toBe(stats.ino)
  })

  test('whatever sites follow each other, the last one stands and own files stay', async () => {
    const name = fc.constantFrom('index.html', 'a/b.html', 'a/c.html', 'd/e/f.html', 'g.css')
    const tree = fc.dictionary(name, fc.constantFrom('1', '2', '3'))
    await fc.assert(
      fc.asyncProperty(fc.array(tree, {minLength: 1, maxLength: 5}), async (sites) => {
        const folder = temporaryFolder({'a/own.txt': 'own'})
        for (const site of sites) await writeSite(folder, files(site))
        expect(siteTree(folder)).toEqual({'a/own.txt': 'own', ...sites.at(-1)})
      }),
      {numRuns: 40},
    )
  })
})

describe('links and folders in the way', () => {
  test.each([
    ['a folder of the site', 'recipes', 'recipes (a link)'],
    ['a page', 'index.html', 'index.html (a link)'],
  ])('%s that is a link is not written through', async (_, link, named) => {
    const outside = temporaryFolder({'index.html': 'outside'})
    const site = temporaryFolder()
    const target = link === 'recipes' ? outside : path.join(outside, 'index.html')
    symlinkSync(target, path.join(site, link))
    await expect(writeSite(site, files(first))).rejects.toThrow(named)
    expect(siteTree(outside)).toEqual({'index.html': 'outside'})
  })

  test('nothing is removed behind a link that took a folder’s place', async () => {
    const outside = temporaryFolder({'pot.html': 'pot'})
    const site = temporaryFolder()
    await writeSite(site, files(first))
    unlinkSync(path.join(site, 'recipes/pot.html'))
    rmdirSync(path.join(site, 'recipes'))
    symlinkSync(outside, path.join(site, 'recipes'))
    const result = await writeSite(site, files({'index.html': 'one', 'style.css': 'css'}))
    expect(result.left).toEqual(['recipes/pot.html'])
    expect(siteTree(outside)).toEqual({'pot.html': 'pot'})
  })

  test('a folder where a page belongs is refused', async () => {
    const site = temporaryFolder({'index.html/mine.txt': 'mine'})
    await expect(writeSite(site, files(first))).rejects.toThrow('index.html (a folder)')
  })

  test('the work folder as a link is refused', async () => {
    const outside = temporaryFolder()
    const site = temporaryFolder()
    symlinkSync(outside, path.join(site, '.scalepan'))
    await expect(writeSite(site, files(first))).rejects.toThrow(/\.scalepan is not a folder/u)
    expect(siteTree(outside)).toEqual({})
  })

  test('the site folder itself may be a link', async () => {
    const real = temporaryFolder()
    const link = path.join(temporaryFolder(), 'site')
    symlinkSync(real, link)
    await writeSite(link, files(first))
    expect(siteTree(real)).toEqual(first)
  })

  test('a site folder that is a file is refused', async () => {
    const folder = temporaryFolder({site: 'a file'})
    await expect(writeSite(path.join(folder, 'site'), files(first))).rejects.toMatchObject({
      name: 'EnvironmentFailure',
    })
  })
})

describe('what a slip or an attacker might ask for', () => {
  test.each([
    '../out.html',
    'a/../../out.html',
    '/etc/passwd',
    'a//b.html',
    './index.html',
    'a\\b.html',
    'C:/x.html',
    'a\nb.html',
    'a\0b.html',
    '.scalepan/manifest.json',
    '.Scalepan/lock',
    '',
  ])('a page at %j is never written', async (name) => {
    const folder = temporaryFolder()
    const pages = [{path: name, content: 'x'}]
    await expect(writeSite(path.join(folder, 'site'), pages)).rejects.toThrow(/cannot hold a file/u)
    expect(siteTree(folder)).toEqual({})
  })

  test('two pages at one path are a slip', async () => {
    const twice = [...files({'index.html': 'a'}), ...files({'index.html': 'b'})]
    await expect(writeSite(temporaryFolder(), twice)).rejects.toThrow(/Two files/u)
  })

  test.each([
    ['no JSON', '{'],
    ['a path that climbs', '{"version":1,"files":{"../own.txt":"00"}}'],
    ['another shape', '[]'],
  ])('a manifest with %s is refused and nothing removed', async (_, text) => {
    const folder = temporaryFolder({'own.txt': 'own', 'site/.scalepan/manifest.json': text})
    const site = path.join(folder, 'site')
    await expect(writeSite(site, files(first))).rejects.toThrow(/cannot be understood/u)
    expect(siteTree(folder)).toMatchObject({'own.txt': 'own'})
    expect(existsSync(path.join(site, 'index.html'))).toBe(false)
  })

  test('a left-over change whose steps lead out of the site is refused', async () => {
    const folder = temporaryFolder({'own.txt': 'own'})
    const site = path.join(folder, 'site')
    const ready = path.join(site, '.scalepan/ready')
    mkdirSync(path.join(ready, 'new'), {recursive: true})
    putFiles(ready, {'new/0': 'theirs', 'steps.json': '[{"path":"../own.txt","now":"00"}]'})
    await expect(writeSite(site, files(first))).rejects.toThrow(/cannot be understood/u)
    expect(siteTree(folder)).toMatchObject({'own.txt': 'own'})
  })
})
