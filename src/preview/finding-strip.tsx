import {relativeHref, rulesPath} from '../../templates/addresses.ts'
import type {Part} from '../../templates/part.ts'
import {countText} from '../report/count-text.ts'
import type {Finding} from './page-findings.ts'

/** So many findings of other files are listed; the rest is counted. */
const listedElsewhere = 20

/** Everything found, at the head of a page: its own findings first, with links to their marks. */
export function findingStrip(path: string, findings: readonly Finding[]): Part {
  const here = findings.filter(({page}) => page === path)
  const elsewhere = findings.filter(({page}) => page !== path)
  const listed = elsewhere.slice(0, listedElsewhere)
  const more = elsewhere.length - listed.length
  return (
    <aside id="findings" class="findings" aria-label="Findings">
      <details open={here.length > 0}>
        <summary>{heading(here, elsewhere, findings)}</summary>
        <ul>
          {here.map((finding) => entry(path, finding))}
          {listed.map((finding) => entry(path, finding))}
          {more > 0 ? <li>{`and ${more} more: \`scalepan check\` prints them all`}</li> : undefined}
        </ul>
      </details>
    </aside>
  )
}

function heading(
  here: readonly Finding[],
  elsewhere: readonly Finding[],
  all: readonly Finding[],
): string {
  if (all.length === 0) return 'Preview: nothing found'
  const errors = all.filter(({problem}) => problem.severity === 'error').length
  const built = errors > 0 ? ` (${countText(errors, 'error')}: a build would stop)` : ''
  const found = `${countText(here.length, 'finding')} on this page, ${elsewhere.length} elsewhere`
  return `Preview: ${found}${built}`
}

function entry(path: string, {problem, id, page}: Finding): Part {
  const {severity, file, place, reason, ruleId} = problem
  const at = place ? `${file}:${place.start.line}:${place.start.column}` : file
  return (
    <li class={`found-${severity}`}>
      {page === undefined ? at : <a href={relativeHref(path, page, id)}>{at}</a>}
      {` ${severity}: ${reason} `}
      <a href={relativeHref(path, rulesPath, ruleId)}>{ruleId}</a>
    </li>
  )
}
