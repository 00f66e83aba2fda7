import {iconPath} from '../../templates/addresses.ts'
import {indexPage} from '../../templates/index.tsx'
import {markFile} from '../../templates/parts/mark.ts'
import {recipePage} from '../../templates/recipe.tsx'
import type {Page, RuleText, Site} from '../../templates/site.ts'
import {wordsFor} from '../../templates/words/words.ts'
import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Problem} from '../cookbook/problem.ts'
import type {SourceImage} from '../cookbook/sources.ts'
import type {Computed} from '../nutrition/computed.ts'
import {htmlText} from './html.ts'
import type {SiteFile} from './site-file.ts'

export interface SiteInput {
  readonly cookbook: Cookbook
  /** By slug. */
  readonly computed: ReadonlyMap<string, Computed>
  /** What the checks found and let pass. */
  readonly problems: readonly Problem[]
  readonly rules: readonly RuleText[]
  /** Below images/, with bytes; copied as they are. */
  readonly images: readonly SourceImage[]
  /** The compiled stylesheet and scripts: `readAssets()`. */
  readonly assets: readonly SiteFile[]
}

/** Every file of the site, in path order. Pure: the same cookbook gives the same bytes. */
export function renderSite(input: SiteInput): readonly SiteFile[] {
  const site = siteOf(input)
  const files: readonly SiteFile[] = [
    ...pages(site).map(pageFile),
    {path: iconPath, content: htmlText({type: 'root', children: [markFile()]})},
    ...input.images.map(({path, bytes}) => ({path: `images/${path}`, content: bytes})),
    ...input.assets,
  ]
  return files.toSorted((left, right) => (left.path < right.path ? -1 : 1))
}

function siteOf({cookbook, computed, problems, rules}: SiteInput): Site {
  const bySlug = new Map([...computed].sort(([left], [right]) => (left < right ? -1 : 1)))
  return {
    cookbook,
    computed: bySlug,
    users: usersOf(bySlug),
    problems,
    rules,
    words: wordsFor(cookbook.settings.language),
  }
}

/** The recipes that use each component. */
function usersOf(
  computed: ReadonlyMap<string, Computed>,
): ReadonlyMap<string, readonly Computed[]> {
  const users = new Map<string, Set<Computed>>()
  for (const user of computed.values()) {
    for (const {ingredient} of user.lines) {
      if (ingredient.kind !== 'component') continue
      const {slug} = ingredient.recipe
      users.set(slug, (users.get(slug) ?? new Set()).add(user))
    }
  }
  return new Map([...users].map(([slug, set]) => [slug, [...set]]))
}

function pages(site: Site): readonly Page[] {
  return [indexPage(site), ...[...site.computed.values()].map((one) => recipePage(site, one))]
}

function pageFile({path, tree}: Page): SiteFile {
  return {path, content: htmlText(tree)}
}
