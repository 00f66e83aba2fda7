import {
  captionPath,
  cookbookHeadsPath,
  csvPath,
  iconPath,
  jsonLdPath,
} from '../../templates/addresses.ts'
import {runningHeads} from '../../templates/book/running-heads.ts'
import {captionText} from '../../templates/caption.ts'
import {cardPage} from '../../templates/card.tsx'
import {cardSheetsPage, cardsPage} from '../../templates/cards.tsx'
import {cookbookPage, headedParts} from '../../templates/cookbook.tsx'
import {figuresPage} from '../../templates/figures.tsx'
import {foodsPage} from '../../templates/foods.tsx'
import {recipeIndex} from '../../templates/index.tsx'
import {notFoundPage} from '../../templates/not-found.tsx'
import {markFile} from '../../templates/parts/mark.ts'
import {planPage} from '../../templates/plan.tsx'
import {recipePage} from '../../templates/recipe.tsx'
import {csvText, jsonLdText} from '../../templates/recipe-files.ts'
import {rulesPage} from '../../templates/rules.tsx'
import {shoppingFiles, shoppingPage} from '../../templates/shopping.tsx'
import type {Page, Site} from '../../templates/site.ts'
import {stylePage} from '../../templates/style.tsx'
import {textPage} from '../../templates/text-page.tsx'
import {wordsFor} from '../../templates/words/words.ts'
import type {RuleText} from '../check/rule-texts.ts'
import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Problem} from '../cookbook/problem.ts'
import type {SourceImage} from '../cookbook/sources.ts'
import type {Computed} from '../nutrition/computed.ts'
import {shoppingData} from '../shopping/shopping-data.ts'
import {feed} from './feed.ts'
import {htmlText} from './html.ts'
import {isKeptOffline, offlineWorker, workerAssetPath} from './offline.ts'
import {pictureSizes, withPlacedPictures} from './pictures/placed-pictures.ts'
import {withoutMetadata} from './pictures/without-metadata.ts'
import {shareImage} from './share/share-image.ts'
import type {SiteFile} from './site-file.ts'
import {sitemap} from './sitemap.ts'

export interface SiteInput {
  readonly cookbook: Cookbook
  /** By slug. */
  readonly computed: ReadonlyMap<string, Computed>
  /** What the checks found and let pass. */
  readonly problems: readonly Problem[]
  readonly rules: readonly RuleText[]
  /** Below images/, with bytes. */
  readonly images: readonly SourceImage[]
  /** The compiled stylesheet and scripts: `readAssets()`. */
  readonly assets: readonly SiteFile[]
}

/**
 * Every file of the site, in path order. Pure: the same cookbook gives the same bytes.
 * @param onPage changes a page before it becomes text
 */
export function renderSite(input: SiteInput, onPage?: (page: Page) => Page): readonly SiteFile[] {
  return [...siteFiles(input, onPage)].toSorted((left, right) => order(left.path, right.path))
}

/** The same files, made as they are taken, so that a large site need not stand in memory. */
export function* siteFiles(
  input: SiteInput,
  onPage: (page: Page) => Page = (page) => page,
): Generator<SiteFile> {
  const site = siteOf(input)
  const sizes = pictureSizes(input.images)
  const paths: string[] = []
  const offline: SiteFile[] = []
  const index = recipeIndex(site)
  for (const page of pages(site, index.pages)) {
    const file = pageFile(onPage(withPlacedPictures(page, sizes)))
    paths.push(file.path)
    if (isKeptOffline(file)) offline.push(file)
    yield file
  }
  for (const computed of site.computed.values()) yield* recipeFiles(site, computed)
  const {address} = input.cookbook.settings
  if (address !== undefined) yield* [feed(site, address), sitemap(address, paths)]
  yield* index.files
  yield* shoppingFiles(site)
  yield cookbookHeads(site)
  yield* imageFiles(input)
  const worker = input.assets.find(({path}) => path === workerAssetPath)?.content
  const assets = [iconFile(), ...input.assets.filter(({path}) => path !== workerAssetPath)]
  yield* assets
  // A site without scripts has no worker either.
  if (typeof worker !== 'string') return
  yield offlineWorker([...offline, ...assets.filter(isKeptOffline)], worker)
}

/** What a reader takes away from a recipe's page. */
function recipeFiles(site: Site, computed: Computed): readonly SiteFile[] {
  const {slug} = computed.recipe
  return [
    {path: captionPath(slug), content: captionText(site, computed)},
    {path: csvPath(slug), content: csvText(site, computed)},
    {path: jsonLdPath(slug), content: jsonLdText(site, computed)},
    // Nobody shows a link to a site that has no address yet.
    ...(site.cookbook.settings.address ? [shareImage(site, computed)] : []),
  ]
}

/** The style sheet with what stands in the margins of the printed cookbook. */
export function cookbookHeads(site: Site): SiteFile {
  return {path: cookbookHeadsPath, content: runningHeads(site, headedParts(site))}
}

/** The sign of the house, for the head of every page. */
export function iconFile(): SiteFile {
  return {path: iconPath, content: htmlText({type: 'root', children: [markFile()]})}
}

/** The pictures, where pages look for them, without what cameras wrote into them. */
export function imageFiles({images}: Pick<SiteInput, 'images'>): readonly SiteFile[] {
  return images.map(({path, bytes}) => ({
    path: `images/${path}`,
    content: withoutMetadata(bytes),
  }))
}

/** What every template sees, from what the stages before give. */
export function siteOf({cookbook, computed, problems, rules}: SiteInput): Site {
  const inOrder = [...computed.values()].sort((left, right) =>
    order(titleKey(left), titleKey(right)),
  )
  const bySlug = new Map(inOrder.map((one) => [one.recipe.slug, one]))
  return {
    cookbook,
    computed: bySlug,
    users: usersOf(bySlug),
    shopping: shoppingData(bySlug),
    problems,
    rules,
    words: wordsFor(cookbook.settings.language),
  }
}

/** Title without case and accents, then the slug, so that no two are alike; no machine's locale. */
function titleKey({recipe: {title, slug}}: Computed): string {
  const plain = title.value
    .normalize('NFKD')
    .replaceAll(/\p{Mark}/gu, '')
    .toLowerCase()
  return `${plain} ${slug}`
}

function order(left: string, right: string): number {
  return left < right ? -1 : left > right ? 1 : 0
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

function* pages(site: Site, index: Iterable<Page>): Generator<Page> {
  const {plans, pages} = site.cookbook
  yield* index
  for (const computed of site.computed.values()) {
    yield recipePage(site, computed)
    yield cardPage(site, computed)
  }
  yield cookbookPage(site)
  yield cardsPage(site)
  yield cardSheetsPage(site)
  yield shoppingPage(site)
  for (const plan of plans) yield planPage(site, plan)
  yield figuresPage(site)
  yield foodsPage(site)
  yield rulesPage(site)
  yield stylePage(site)
  for (const page of pages) yield textPage(site, page)
  yield notFoundPage(site)
}

function pageFile({path, tree}: Page): SiteFile {
  return {path, content: htmlText(tree)}
}
