import {indexPath, recipePath, relativeHref} from '../../addresses.ts'
import type {FindingData} from '../../parts/finding-data.ts'
import {element} from '../page/element.ts'

/** Rows of the table by their place: those of the page, and those that the data tell of. */
export function tableRows(
  body: HTMLTableSectionElement,
  heads: readonly HTMLTableCellElement[],
  data: FindingData,
): (place: number) => HTMLTableRowElement {
  const made: HTMLTableRowElement[] = [...body.rows]
  return (place) => {
    const row = made[place] ?? rowOf(place, heads, data)
    made[place] = row
    return row
  }
}

function rowOf(
  place: number,
  [, ...figureHeads]: readonly HTMLTableCellElement[],
  {slugs, titles, columns}: FindingData,
): HTMLTableRowElement {
  const link = element('a', '', titles[place] ?? '')
  link.href = relativeHref(indexPath, recipePath(slugs[place] ?? ''))
  const name = element('th', '', link)
  name.scope = 'row'
  const figures = figureHeads.map(({className, dataset}) =>
    element('td', className, columns[dataset.key ?? '']?.texts[place] ?? ''),
  )
  return element('tr', '', name, ...figures)
}
