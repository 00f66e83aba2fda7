import path from 'node:path'
import {countText} from '../report/count-text.ts'
import type {Paint} from '../report/paint.ts'
import {printable} from '../report/printable.ts'
import type {Summary} from '../report/summary.ts'
import {findingsText, statedCount, verdictsText} from '../report/summary-text.ts'
import type {SiteWritten} from '../site/write-site.ts'

/** Rows of the summary that follow from the cookbook alone: a name, and what there is of it. */
export type SummaryRows = readonly (readonly [name: string, text: string])[]

export function summaryRows(counts: Summary): SummaryRows {
  const {recipes, components, labels, tableFoods} = counts
  return [
    [
      'recipes',
      `${recipes}, ${countText(components, 'of them a component', 'of them components')}`,
    ],
    [
      'foods',
      `${labels + tableFoods} used: ${countText(labels, 'label')}, ${tableFoods} from tables`,
    ],
    ['figures', `${statedCount(counts)} stated: ${verdictsText(counts)}`],
    ['findings', findingsText(counts)],
  ]
}

interface BuildOutcome {
  readonly title: string
  readonly rows: SummaryRows
  readonly written: SiteWritten
  readonly site: string
  readonly seconds: number
}

/** What a build did, on one screen. */
export function buildSummary(
  {title, rows, written, site, seconds}: BuildOutcome,
  paint: Paint,
): string {
  const files = written.written + written.unchanged
  const all: SummaryRows = [
    ...rows,
    [
      'site',
      `${countText(files, 'file')}: ${written.written} written, ${written.unchanged} unchanged, ${written.removed} removed`,
    ],
    ['time', `${seconds.toFixed(2)} s`],
  ]
  const lines = all.map(([name, text]) => `  ${paint.dim(name.padEnd(8))}  ${text}\n`)
  const opens = path.join(site, 'index.html')
  return [
    `${paint.bold(printable(title))}\n`,
    ...lines,
    ...handChanged(written, site),
    `\nOpen ${paint.link(opens, opens)} in a browser.\n`,
  ].join('')
}

/** Files somebody changed by hand, and what became of them. */
function handChanged({left, setAside}: SiteWritten, site: string): readonly string[] {
  return [
    ...setAside.map(
      (copy) => `A page had been changed by hand; the copy is ${path.join(site, copy)}\n`,
    ),
    ...left.map(
      (file) => `${path.join(site, file)} is needed no more, but was changed by hand; it stays\n`,
    ),
  ].map(printable)
}
