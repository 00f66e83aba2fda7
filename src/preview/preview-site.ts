import {type Circumstances, examine, siteInput} from '../build.ts'
import type {Problem} from '../cookbook/problem.ts'
import type {ReadCookbook} from '../cookbook/sources.ts'
import {htmlText} from '../site/html.ts'
import {filesToMake, made} from '../site/render-site.ts'
import type {SiteFile} from '../site/site-file.ts'
import {LazyFiles, type PreviewFiles} from './lazy-files.ts'
import {pageFindings} from './page-findings.ts'
import {missingPage, previewedPage} from './previewed-page.ts'

/** A cookbook as a preview serves it: whatever could be made of it, with what was found. */
export interface PreviewSite {
  /** Names the state of the cookbook: pages of another one are out of date. */
  readonly generation: string
  /** By path, relative to the site. */
  readonly files: PreviewFiles
  /** The page that stands where there is none. */
  readonly missing: string
  readonly problems: readonly Problem[]
}

export interface PreviewAssets {
  /** What every site has. */
  readonly site: readonly SiteFile[]
  /** The preview's own script and style sheet. */
  readonly own: readonly SiteFile[]
}

/**
 * Examines a cookbook and makes its pages, with errors too: a recipe that could not be computed
 * has no page, every other one shows what was found. Pure.
 */
export function previewSite(
  read: ReadCookbook,
  assets: PreviewAssets,
  {generation, ...circumstances}: Circumstances & {readonly generation: string},
): PreviewSite {
  const examined = examine(read, circumstances)
  const findings = pageFindings(examined)
  const input = siteInput(examined, read, assets.site)
  const files = filesToMake(input, (page) => previewedPage(page, findings, generation))
  return {
    generation,
    files: new LazyFiles([...files, ...assets.own.map(made)]),
    missing: htmlText(missingPage(findings, generation)),
    problems: examined.problems,
  }
}
