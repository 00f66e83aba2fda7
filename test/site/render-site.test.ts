import {describe, expect, test} from 'vitest'
import {renderSite} from '../../src/site/render-site.ts'
import {siteInput} from '../templates/sample.ts'

describe('a site', () => {
  test('has a page for every recipe', () => {
    const paths = renderSite(siteInput()).map(({path}) => path)
    expect(paths).toContain('recipes/barley-pot/index.html')
    expect(paths).toContain('index.html')
  })
})
