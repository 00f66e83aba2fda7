import {expect} from 'vitest'
import {build} from '../../src/build.ts'
import type {SourceText} from '../../src/cookbook/sources.ts'
import {readAssets} from '../../src/site/read-assets.ts'
import {type SiteOnDisk, siteOnWeb} from './browser.ts'

/** The site of a cookbook of a few texts that have no error in them, as a web server hands it out. */
export async function cookbookOnWeb(texts: readonly SourceText[]): Promise<SiteOnDisk> {
  const {files, problems} = build({sources: {texts, images: []}, problems: []}, await readAssets())
  expect(problems.filter(({severity}) => severity === 'error')).toEqual([])
  return siteOnWeb(files)
}
