import type {Site} from '../../templates/site.ts'
import {cookbookHeads, iconFile, imageFiles, type SiteInput} from '../site/render-site.ts'
import type {SiteFile} from '../site/site-file.ts'

/** All that a page loads when it is printed: style sheets, pictures, the sign in its head. */
export function documentFiles(
  input: Pick<SiteInput, 'assets' | 'images'>,
  site: Site,
): readonly SiteFile[] {
  return [...input.assets, ...imageFiles(input), cookbookHeads(site), iconFile()]
}
