import {judge} from '../src/check/verdict.ts'
import type {Problem} from '../src/cookbook/problem.ts'
import type {Computed} from '../src/nutrition/computed.ts'
import {
  figuresPath,
  overviewStylesheetPath,
  recipePath,
  relativeHref,
  rulesPath,
} from './addresses.ts'
import type {Part} from './part.ts'
import {checksLanguage} from './parts/checks-language.ts'
import {basisText} from './parts/headline.tsx'
import {statedHead, statedRow} from './parts/stated-table.tsx'
import {verdictMark} from './parts/verdict-mark.ts'
import {shell} from './shell.tsx'
import type {Page, Site} from './site.ts'

/** How the numbers were checked: every stated figure beside the computed one. */
export function figuresPage(site: Site): Page {
  const {words} = site
  const judged = [...site.computed.values()].filter(({recipe}) => recipe.stated)
  const others = [...site.computed.values()].filter(({recipe}) => !recipe.stated)
  return shell(site, {
    path: figuresPath,
    title: words.figuresPage.title,
    stylesheets: [overviewStylesheetPath],
    main: (
      <>
        <h1>{words.figuresPage.title}</h1>
        <p>{words.figuresPage.intro}</p>
        {verdictLegend(site)}
        {judged.length > 0 ? (
          <div class="stated-all">
            <table class="wide stated">
              <thead>{statedHead(words)}</thead>
              {judged.map((computed) => recipeRows(site, computed))}
            </table>
          </div>
        ) : undefined}
        {others.length > 0 ? computedOnly(site, others) : undefined}
        {openProblems(site)}
      </>
    ),
  })
}

/** What each verdict means, and by which tolerance. */
export function verdictLegend({words, cookbook}: Site): Part {
  return (
    <section aria-labelledby="part-legend">
      <h2 id="part-legend">{words.figuresPage.legend}</h2>
      <dl class="legend">
        {(['agrees', 'tolerated', 'drift', 'unknown'] as const).map((verdict) => (
          <div>
            <dt>{verdictMark(verdict, words)}</dt>
            <dd>{words.verdictMeaning[verdict]}</dd>
          </div>
        ))}
      </dl>
      <p>{words.figuresPage.tolerance(words.tolerance[cookbook.settings.tolerance])}</p>
      <p>{words.figures.rest}</p>
    </section>
  )
}

function recipeRows(site: Site, computed: Computed): Part {
  const {recipe} = computed
  const judged = recipe.stated ? judge(recipe.stated, computed, site.cookbook.settings) : []
  return (
    <tbody>
      <tr class="group">
        <th scope="rowgroup" colSpan={4}>
          {recipeLink(computed)}
          <small> {basisText(computed, site.words)}</small>
        </th>
      </tr>
      {judged.map((figure) => statedRow(figure, site.words))}
    </tbody>
  )
}

function recipeLink({recipe}: Computed): Part {
  return <a href={relativeHref(figuresPath, recipePath(recipe.slug))}>{recipe.title.value}</a>
}

function computedOnly({words}: Site, others: readonly Computed[]): Part {
  return (
    <section aria-labelledby="part-computed">
      <h2 id="part-computed">{words.figuresPage.computedOnly}</h2>
      <ul>
        {others.map((computed) => (
          <li>{recipeLink(computed)}</li>
        ))}
      </ul>
    </section>
  )
}

/** Warnings and notes of the build, so that a reader sees what the cook saw. */
export function openProblems({problems, words}: Site): Part {
  if (problems.length === 0) return undefined
  return (
    <section aria-labelledby="part-open">
      <h2 id="part-open">{words.figuresPage.open}</h2>
      <p>{words.figuresPage.openIntro}</p>
      <ul>{problems.map((problem) => openProblem(problem, words))}</ul>
    </section>
  )
}

function openProblem({ruleId, file, reason, note, severity}: Problem, words: Site['words']): Part {
  return (
    <li class={severity} lang={checksLanguage(words)}>
      {reason}.{note === undefined ? undefined : ` ${note}`}{' '}
      <span class="note">
        {file}, <a href={relativeHref(figuresPath, rulesPath, ruleId)}>{ruleId}</a>
      </span>
    </li>
  )
}
