/** The page of the site that explains every rule, each under its id. */
export const rulesPagePath = 'rules/index.html'

/**
 * Where a rule is explained.
 * @param address of the published site, ending in `/`
 * @returns an absolute URL, or the path within the site where the cookbook has no address yet
 */
export function ruleUrl(ruleId: string, address?: string): string {
  // On the web the folder stands for its index.html.
  const page =
    address === undefined
      ? rulesPagePath
      : new URL(rulesPagePath.replace(/index\.html$/, ''), address).href
  return `${page}#${ruleId}`
}
