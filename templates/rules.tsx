import type {RuleExample} from '../src/check/rule-example.ts'
import type {RuleText} from '../src/check/rule-texts.ts'
import {overviewStylesheetPath, relativeHref, rulesPath, stylePath} from './addresses.ts'
import type {Part} from './part.ts'
import {checksLanguage} from './parts/checks-language.ts'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'

/** What is checked, why, and on whose word; a message names its rule by the anchor. */
export function rulesPage(site: Site): Page {
  const {words} = site
  return shell(site, {
    path: rulesPath,
    title: words.rulesPage.title,
    stylesheets: [overviewStylesheetPath],
    main: (
      <>
        <h1>{words.rulesPage.title}</h1>
        <p>{words.rulesPage.intro}</p>
        {site.rules.map((rule) => ruleSection(rule, words))}
        <p class="ways-on">
          <a href={relativeHref(rulesPath, stylePath)}>{words.stylePage.title}</a>
        </p>
      </>
    ),
  })
}

function ruleSection(rule: RuleText, words: Site['words']): Part {
  const {id, severity, summary, why, source, example} = rule
  return (
    <section aria-labelledby={id} class="rule" lang={checksLanguage(words)}>
      <h2 id={id}>{id}</h2>
      <p>
        {summary} <span class="note">{words.severity[severity]}</span>
      </p>
      <p>{why}</p>
      {source === undefined ? undefined : (
        <p class="note">{`${words.rulesPage.source}: ${source}`}</p>
      )}
      {example === undefined ? undefined : exampleParts(example, words)}
    </section>
  )
}

/** A slip, what is told of it, and the same files without it. */
function exampleParts({files, reason}: RuleExample, words: Site['words']): Part {
  const {example, fails, passes} = words.rulesPage
  const listings = (side: 'fails' | 'passes') =>
    files
      .filter((file) => file[side] !== '')
      .map((file) => (
        <figure>
          <figcaption>{file.path}</figcaption>
          <pre>
            <code>{file[side]}</code>
          </pre>
        </figure>
      ))
  return (
    <details>
      <summary>{example}</summary>
      <p>{`${fails}: ${reason}`}</p>
      {listings('fails')}
      <p>{passes}</p>
      {listings('passes')}
    </details>
  )
}
