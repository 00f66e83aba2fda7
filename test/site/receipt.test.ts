/** What a build may believe of the site that stands; more is in test/cli/nothing-to-do.test.ts. */

import {copyFileSync, rmSync, statSync, utimesSync} from 'node:fs'
import path from 'node:path'
import {expect, test} from 'vitest'
import {siteStanding, writeSite} from '../../src/site/write-site.ts'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'
import {siteTree, workNames} from './site-tree.ts'

const pages = {'index.html': 'one', 'recipes/pot.html': 'pot'}
const receipt = {key: 'the same', outcome: {title: 'Galley'}}

async function written(site: string, tree: Readonly<Record<string, string>>, left = {}) {
  const files = Object.entries(tree).map(([name, content]) => ({path: name, content}))
  return writeSite(site, files, {...receipt, ...left})
}

async function builtSite(): Promise<string> {
  const site = temporaryFolder()
  await written(site, pages)
  expect(siteStanding(site, 'the same')).toEqual({outcome: {title: 'Galley'}, files: 2})
  return site
}

const manifestOf = (site: string) => path.join(site, '.scalepan/manifest.json')
const receiptOf = (site: string) => path.join(site, '.scalepan/receipt.json')

test('a receipt speaks of its own sources alone', async () => {
  expect(siteStanding(await builtSite(), 'other')).toBeUndefined()
})

test('a later change that left no receipt, or only added a file, ends the older one', async () => {
  const site = await builtSite()
  const older = path.join(temporaryFolder(), 'receipt.json')
  copyFileSync(receiptOf(site), older)
  await written(site, {...pages, 'more.html': 'more'}, {key: 'more'})
  // As a build leaves it that was killed behind its change, before its own receipt.
  copyFileSync(older, receiptOf(site))
  expect(siteStanding(site, 'the same')).toBeUndefined()
})

test('without the manifest there is work to do, which puts it back', async () => {
  const site = await builtSite()
  rmSync(manifestOf(site))
  expect(siteStanding(site, 'the same')).toBeUndefined()
  await written(site, pages)
  expect(siteStanding(site, 'the same')).toBeDefined()
})

test('the receipt of another folder, copied along, is not believed', async () => {
  const [site, other] = [await builtSite(), temporaryFolder()]
  await written(other, {...pages, 'index.html': 'two'})
  copyFileSync(receiptOf(site), receiptOf(other))
  expect(siteStanding(other, 'the same')).toBeUndefined()
})

test('on a disk whose clock tells whole seconds no receipt is left', async () => {
  const site = await builtSite()
  rmSync(receiptOf(site))
  const all = [...Object.keys(pages).map((name) => path.join(site, name)), manifestOf(site)]
  const second = Math.floor(statSync(manifestOf(site)).mtimeMs / 1000)
  for (const file of all) utimesSync(file, second, second)
  await written(site, pages)
  expect(workNames(site)).toEqual(['manifest.json'])
})

test('a receipt that cannot be written does not fail the build, whose site stands', async () => {
  const site = temporaryFolder()
  putFiles(site, {'.scalepan/receipt.json/in-the-way': ''})
  expect(await written(site, pages)).toMatchObject({written: 2})
  expect(siteTree(site)).toEqual(pages)
})
