/** Finds and sorts in the table of recipes. Without this script the table is all there, by name. */

const table = document.querySelector<HTMLTableElement>('#recipe-table')
const finder = document.querySelector<HTMLElement>('#finder')
const body = table?.tBodies[0]

if (table && finder && body) {
  makeSortable(table, body)
  makeFindable(finder, body)
}

function makeSortable(table: HTMLTableElement, body: HTMLTableSectionElement): void {
  const heads = [...table.querySelectorAll<HTMLTableCellElement>('thead th')]
  for (const [column, head] of heads.entries()) {
    const button = document.createElement('button')
    button.type = 'button'
    button.append(...head.childNodes)
    head.append(button)
    button.addEventListener('click', () => {
      const isDescending = head.ariaSort === 'ascending'
      for (const other of heads) other.ariaSort = null
      head.ariaSort = isDescending ? 'descending' : 'ascending'
      sortRows(body, column, isDescending ? -1 : 1)
    })
  }
}

function sortRows(body: HTMLTableSectionElement, column: number, direction: 1 | -1): void {
  const rows = [...body.rows].map((row) => ({row, key: sortKey(row, column)}))
  rows.sort(({key: left}, {key: right}) => {
    if (typeof left === 'string' || typeof right === 'string') {
      return direction * String(left).localeCompare(String(right), document.documentElement.lang)
    }
    // What is not known stands last, whichever way the column is sorted.
    if (left === undefined || right === undefined) {
      return Number(left === undefined) - Number(right === undefined)
    }
    return direction * (left - right)
  })
  body.append(...rows.map(({row}) => row))
}

function sortKey(row: HTMLTableRowElement, column: number): string | number | undefined {
  const cell = row.cells[column]
  if (cell === undefined || column === 0) return cell?.textContent ?? ''
  return cell.dataset.value === undefined ? undefined : Number(cell.dataset.value)
}

function makeFindable(finder: HTMLElement, body: HTMLTableSectionElement): void {
  const words = finder.querySelector<HTMLInputElement>('#find-words')
  const energy = finder.querySelector<HTMLInputElement>('#find-energy')
  const protein = finder.querySelector<HTMLInputElement>('#find-protein')
  const status = finder.querySelector<HTMLElement>('#find-status')
  if (!words || !energy || !protein || !status) return

  function find(): void {
    const sought = plain(words?.value ?? '')
      .split(' ')
      .filter((word) => word !== '')
    const mostEnergy = energy?.value ? Number(energy.value) : Number.POSITIVE_INFINITY
    const leastProtein = protein?.value ? Number(protein.value) : 0
    let shown = 0
    for (const row of body.rows) {
      const text = plain(`${row.cells[0]?.textContent ?? ''} ${row.dataset.words ?? ''}`)
      const isFound =
        sought.every((word) => text.includes(word)) &&
        figure(row, 1) <= mostEnergy &&
        figure(row, 2) >= leastProtein
      row.hidden = !isFound
      if (isFound) shown++
    }
    if (status) {
      status.textContent = (finder.dataset.shown ?? '')
        .replace('{shown}', String(shown))
        .replace('{all}', String(body.rows.length))
    }
  }

  finder.addEventListener('input', find)
  finder.hidden = false
  // A browser that comes back to the page fills the fields in again.
  find()
}

function figure(row: HTMLTableRowElement, column: number): number {
  return Number(row.cells[column]?.dataset.value ?? 0)
}

/** Lower case without accents, so that `creme` finds `Crème`. */
function plain(text: string): string {
  return text
    .normalize('NFKD')
    .replaceAll(/\p{Mark}/gu, '')
    .toLowerCase()
}
