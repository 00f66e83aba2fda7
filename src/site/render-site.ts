import {
  captionPath,
  cardPath,
  cardSheetsPath,
  cardsPath,
  cookbookHeadsPath,
  cookbookPath,
  csvPath,
  feedPath,
  figuresPath,
  foodsPath,
  iconPath,
  jsonLdPath,
  notFoundPath,
  offlinePath,
  planPath,
  recipePath,
  rulesPath,
  sharePath,
  shoppingPath,
  sitemapPath,
  stylePath,
  textPagePath,
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
import type {Page, PageToMake, Site} from '../../templates/site.ts'
import {stylePage} from '../../templates/style.tsx'
import {textPage} from '../../templates/text-page.tsx'
import {wordsFor} from '../../templates/words/words.ts'
import type {RuleText} from '../check/rule-texts.ts'
import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Problem} from '../cookbook/problem.ts'
import type {SourceImage} from '../cookbook/sources.ts'
import type {Computed} from '../nutrition/computed.ts'
import {shoppingData} from '../shopping/shopping-data.ts'
import {once} from '../units/remembered.ts'
import {feed} from './feed.ts'
import {htmlText} from './html.ts'
import {isKeptOffline, offlineWorker, workerAssetPath} from './offline.ts'
import {pictureSizes, withPlacedPictures} from './pictures/placed-pictures.ts'
import {withoutMetadata} from './pictures/without-metadata.ts'
import {shareImage} from './share/share-image.ts'
import type {FileToMake, SiteFile} from './site-file.ts'
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
export function* siteFiles(input: SiteInput, onPage?: (page: Page) => Page): Generator<SiteFile> {
  for (const {path, make} of filesToMake(input, onPage)) yield {path, content: make()}
}

/** The same files, each to be made when it is wanted. */
export function* filesToMake(
  input: SiteInput,
  onPage: (page: Page) => Page = (page) => page,
): Generator<FileToMake> {
  const site = siteOf(input)
  const sizes = pictureSizes(input.images)
  const paths: string[] = []
  const offline: FileToMake[] = []
  const index = recipeIndex(site)
  for (const {path, page} of pages(site, index.pages)) {
    const text = () => htmlText(onPage(withPlacedPictures(page(), sizes)).tree)
    const file = {path, make: isKeptOffline(path) ? once(text) : text}
    paths.push(path)
    if (isKeptOffline(path)) offline.push(file)
    yield file
  }
  for (const computed of site.computed.values()) yield* recipeFiles(site, computed)
  const {address} = input.cookbook.settings
  if (address !== undefined) {
    yield {path: feedPath, make: () => feed(site, address).content}
    yield {path: sitemapPath, make: () => sitemap(address, paths).content}
  }
  yield* index.files
  yield* shoppingFiles(site).map(made)
  yield {path: cookbookHeadsPath, make: () => cookbookHeads(site).content}
  yield* imageFiles(input).map(made)
  const worker = input.assets.find(({path}) => path === workerAssetPath)?.content
  const assets = [iconFile(), ...input.assets.filter(({path}) => path !== workerAssetPath)]
  yield* assets.map(made)
  // A site without scripts has no worker either.
  if (typeof worker !== 'string') return
  const kept = [...offline, ...assets.map(made).filter(({path}) => isKeptOffline(path))]
  yield {path: offlinePath, make: () => offlineWorker(kept, worker)}
}

/** A file that is made already. */
export function made({path, content}: SiteFile): FileToMake {
  return {path, make: () => content}
}

/** What a reader takes away from a recipe's page. */
function recipeFiles(site: Site, computed: Computed): readonly FileToMake[] {
  const {slug} = computed.recipe
  return [
    {path: captionPath(slug), make: () => captionText(site, computed)},
    {path: csvPath(slug), make: () => csvText(site, computed)},
    {path: jsonLdPath(slug), make: () => jsonLdText(site, computed)},
    // Nobody shows a link to a site that has no address yet.
    ...(site.cookbook.settings.address
      ? [{path: sharePath(slug), make: () => shareImage(site, computed).content}]
      : []),
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

function* pages(site: Site, index: readonly PageToMake[]): Generator<PageToMake> {
  const {plans, pages} = site.cookbook
  yield* index
  for (const computed of site.computed.values()) {
    const {slug} = computed.recipe
    yield {path: recipePath(slug), page: () => recipePage(site, computed)}
    yield {path: cardPath(slug), page: () => cardPage(site, computed)}
  }
  yield {path: cookbookPath, page: () => cookbookPage(site)}
  yield {path: cardsPath, page: () => cardsPage(site)}
  yield {path: cardSheetsPath, page: () => cardSheetsPage(site)}
  yield {path: shoppingPath, page: () => shoppingPage(site)}
  for (const plan of plans) yield {path: planPath(plan.slug), page: () => planPage(site, plan)}
  yield {path: figuresPath, page: () => figuresPage(site)}
  yield {path: foodsPath, page: () => foodsPage(site)}
  yield {path: rulesPath, page: () => rulesPage(site)}
  yield {path: stylePath, page: () => stylePage(site)}
  for (const page of pages) {
    yield {path: textPagePath(page.slug), page: () => textPage(site, page)}
  }
  yield {path: notFoundPath, page: () => notFoundPage(site)}
}
