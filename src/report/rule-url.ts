import {absoluteHref, rulesPath} from '../../templates/addresses.ts'

/**
 * Where a rule is explained.
 * @param address of the published site
 * @returns an absolute URL, or the path within the site where the cookbook has no address yet
 */
export function ruleUrl(ruleId: string, address?: string): string {
  const page = address === undefined ? rulesPath : absoluteHref(address, rulesPath)
  return `${page}#${ruleId}`
}
