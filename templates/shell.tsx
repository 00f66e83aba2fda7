import type {Element, Root} from 'hast'
import {h} from 'hastscript'
import type {Settings} from '../src/cookbook/cookbook.ts'
import {
  absoluteHref,
  cookbookPath,
  feedPath,
  figuresPath,
  foodsPath,
  iconPath,
  indexPath,
  relativeHref,
  rulesPath,
  scriptPath,
  shoppingPath,
  stylesheetPath,
  textPagePath,
} from './addresses.ts'
import type {Part} from './part.ts'
import type {Page, Site} from './site.ts'

export interface Shell {
  readonly path: string
  readonly title: string
  readonly description?: string
  /** Names of the compiled scripts the page takes, without `.js`. */
  readonly scripts?: readonly string[]
  /** Paths of further style sheets. */
  readonly stylesheets?: readonly string[]
  /** A JSON-LD block for the head. */
  readonly structured?: Element
  /** Path of the picture that stands for the page where its link is shown. */
  readonly image?: string
  /** A class on the body, for the parts that print differently. */
  readonly kind?: string
  readonly main: Part
}

/**
 * Nothing is inline and nothing is loaded from elsewhere, so the policy can forbid both. JSON
 * blocks are data, which a policy lets pass.
 */
const contentPolicy =
  "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'"

/** The page around a template's main part: head, header, footer. */
export function shell(site: Site, page: Shell): Page {
  const {settings} = site.cookbook
  const tree: Root = {
    type: 'root',
    children: [
      {type: 'doctype'},
      h(
        'html',
        {lang: settings.language, dir: direction(settings.language)},
        head(site, page),
        body(site, page),
      ),
    ],
  }
  return {path: page.path, tree}
}

/** Scripts that run from right to left (Unicode Standard; from memory), by their ISO 15924 codes. */
const rightToLeftScripts: ReadonlySet<string> = new Set([
  'adlm',
  'arab',
  'hebr',
  'nkoo',
  'syrc',
  'thaa',
])

/** Languages that are written in one of these, where their tag names no script (Unicode CLDR). */
const rightToLeft: ReadonlySet<string> = new Set('ar ckb dv fa he ks ps sd ug ur yi'.split(' '))

function direction(language: string): 'rtl' | undefined {
  const [primary = '', ...subtags] = language.toLowerCase().split('-')
  const script = subtags.find((subtag) => /^[a-z]{4}$/.test(subtag))
  const isRightToLeft =
    script === undefined ? rightToLeft.has(primary) : rightToLeftScripts.has(script)
  return isRightToLeft ? 'rtl' : undefined
}

function head(site: Site, page: Shell): Element {
  const {settings} = site.cookbook
  const isFirst = page.path === indexPath
  const description = page.description ?? settings.description
  const href = (to: string) => relativeHref(page.path, to)
  return h(
    'head',
    <meta charSet="utf-8" />,
    <title>{isFirst ? settings.title : `${page.title} – ${settings.title}`}</title>,
    <meta name="viewport" content="width=device-width, initial-scale=1" />,
    <meta httpEquiv="Content-Security-Policy" content={contentPolicy} />,
    description === '' ? undefined : <meta name="description" content={description} />,
    settings.address === undefined ? undefined : (
      <link rel="canonical" href={absoluteHref(settings.address, page.path)} />
    ),
    ...shownLink(page, settings),
    settings.address === undefined ? undefined : (
      <link
        rel="alternate"
        type="application/rss+xml"
        title={settings.title}
        href={href(feedPath)}
      />
    ),
    <link rel="icon" type="image/svg+xml" href={href(iconPath)} />,
    <link rel="stylesheet" href={href(stylesheetPath)} />,
    (page.stylesheets ?? []).map((path) => <link rel="stylesheet" href={href(path)} />),
    page.structured,
    (page.scripts ?? []).map((name) => <script src={href(scriptPath(name))} defer />),
  )
}

/**
 * How a link to the page is shown elsewhere: the Open Graph protocol (ogp.me). Its description is
 * the page's own, which readers of the protocol take (common practice, no source).
 */
function shownLink(page: Shell, {address, title, language}: Settings): Element[] {
  if (address === undefined) return []
  const entries: readonly (readonly [string, string | undefined])[] = [
    ['title', page.path === indexPath ? title : page.title],
    ['type', page.structured ? 'article' : 'website'],
    ['url', absoluteHref(address, page.path)],
    ['site_name', title],
    // A language with its territory, or nothing: `en` alone is no locale there.
    ['locale', language.includes('-') ? language.replace('-', '_') : undefined],
    ['image', page.image && absoluteHref(address, page.image)],
  ]
  return entries.flatMap(([name, content]) =>
    content === undefined ? [] : [h('meta', {property: `og:${name}`, content})],
  )
}

function body(site: Site, page: Shell): Element {
  const {words} = site
  return h(
    'body',
    {className: page.kind === undefined ? undefined : [page.kind]},
    <a class="skip" href="#main">
      {words.nav.skip}
    </a>,
    header(site, page.path),
    <main id="main">{page.main}</main>,
    footer(site, page.path),
  )
}

function header({cookbook, words}: Site, path: string): Part {
  const links: readonly (readonly [string, string])[] = [
    [indexPath, words.nav.recipes],
    [shoppingPath, words.nav.shopping],
    [figuresPath, words.nav.figures],
    [foodsPath, words.nav.foods],
    ...cookbook.pages.map(({slug, title}) => [textPagePath(slug), title.value] as const),
  ]
  return (
    <header class="rim">
      <a class="house" href={relativeHref(path, indexPath)}>
        <img class="mark" src={relativeHref(path, iconPath)} width="32" height="32" alt="" />
        <span>{cookbook.settings.title}</span>
      </a>
      <nav aria-label={words.nav.label}>
        <ul>
          {links.map(([to, text]) => (
            <li>{navLink(path, to, text)}</li>
          ))}
        </ul>
      </nav>
    </header>
  )
}

function navLink(path: string, to: string, text: string): Part {
  return (
    <a href={relativeHref(path, to)} aria-current={path === to ? 'page' : undefined}>
      {text}
    </a>
  )
}

function footer({words}: Site, path: string): Part {
  return (
    <footer class="foot">
      <p>{words.footer.caution}</p>
      <p>
        <a href={relativeHref(path, cookbookPath)}>{words.book.link}</a>
        {' · '}
        <a href={relativeHref(path, figuresPath)}>{words.footer.checked}</a>
        {' · '}
        <a href={relativeHref(path, rulesPath)}>{words.footer.rules}</a>
      </p>
    </footer>
  )
}
