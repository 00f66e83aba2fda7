import {expect, test} from 'vitest'
import {renderSite} from '../../src/site/render-site.ts'
import {siteInput} from './sample.ts'

const files = renderSite(siteInput({address: 'https://boathouse.example/kitchen/'}))

/** Whole files, read like code when they change; an element a line, so that a change shows. */
test.each([
  'index.html',
  'recipes/barley-pot/index.html',
  'recipes/barley-pot/caption.txt',
  'recipes/brown-stock/card/index.html',
  'plans/sunday/index.html',
  'figures/index.html',
  'feed.xml',
  'sitemap.xml',
])('%s is as it was read and found good', async (path) => {
  const content = String(files.find((file) => file.path === path)?.content)
  const name = path.replaceAll('/', '-')
  await expect(content.replaceAll('><', '>\n<')).toMatchFileSnapshot(`../fixtures/pages/${name}`)
})
