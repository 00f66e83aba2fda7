import type {FindingData} from '../parts/finding-data.ts'
import {fill} from '../words/fill.ts'
import {dishesOf} from './finding/dishes.ts'
import {type Asked, addressFor, askedIn, type Field, readAddress} from './finding/fields.ts'
import {type Dish, isFound, meantBy} from './finding/find.ts'
import {keyOf, markSorted, sortButtons} from './finding/heads.ts'
import {type Order, sorted} from './finding/order.ts'
import {tableRows} from './finding/table-rows.ts'
import {loadData} from './page/load-data.ts'
import {workOffline} from './page/work-offline.ts'

/**
 * Finds and sorts in the table of recipes; what is asked for stands in the address. Without this
 * script the table is all there, by name. A long one is in parts, on pages of their own, and what
 * is searched comes when somebody turns to the finder.
 */

/** Rows that are shown at once, and that a press of the button adds. */
const rowsAtOnce = 200

const table = document.querySelector<HTMLTableElement>('#recipe-table')
const finder = document.querySelector<HTMLElement>('#finder')
const body = table?.tBodies[0]

if (table && finder && body) start(table, body, finder)
workOffline()

/** The table with what is known of its dishes. */
interface Found {
  readonly vocabulary: readonly string[]
  readonly dishes: readonly Dish[]
  readonly row: (place: number) => HTMLTableRowElement
}

function start(table: HTMLTableElement, body: HTMLTableSectionElement, finder: HTMLElement): void {
  const heads = [...table.querySelectorAll<HTMLTableCellElement>('thead th')]
  const fields = [...finder.querySelectorAll<Field>('[name]')]
  const more = document.querySelector<HTMLElement>('#find-more')
  const parts = document.querySelector<HTMLElement>('#recipe-parts')
  const {source} = finder.dataset
  let order: Order | undefined
  let limit = rowsAtOnce
  let found: Found | undefined

  function take(data: FindingData): Found {
    found = {
      vocabulary: data.words.names,
      dishes: dishesOf(data),
      row: tableRows(body, heads, data),
    }
    return found
  }

  /** Fetches what is searched, unless it is there; `show` is called again when it has come. */
  function fetchData(): void {
    if (found !== undefined || source === undefined) return
    tell(finder.dataset.fetching)
    loadData(source, '').then(
      (data) => {
        // Made by the same build as this page.
        if (found === undefined && isFindingData(data)) take(data)
        show()
      },
      () => tell(finder.dataset.failed),
    )
  }

  function show(): void {
    const asked = askedIn(fields)
    history.replaceState(null, '', addressFor(fields, order))
    finder
      .querySelector('#find-without-note')
      ?.toggleAttribute('hidden', asked.without.length === 0)
    if (found === undefined) fetchData()
    else showFound(found, asked)
  }

  function showFound({dishes, vocabulary, row}: Found, asked: Asked): void {
    const query = {...asked, words: meantBy(asked.text, vocabulary)}
    const matches = dishes.flatMap((dish, place) => (isFound(dish, query) ? [place] : []))
    const shown = sorted(matches, dishes, order).slice(0, limit)
    body.replaceChildren(...shown.map(row))
    markSorted(heads, order)
    if (more) more.hidden = shown.length === matches.length
    // The parts are by name, and of everything.
    if (parts) parts.hidden = order !== undefined || matches.length < dishes.length
    const isAll = shown.length === matches.length
    tell(isAll ? finder.dataset.shown : finder.dataset.some, {
      shown: shown.length,
      found: matches.length,
      all: dishes.length,
    })
  }

  function showAnew(): void {
    limit = rowsAtOnce
    show()
  }

  function tell(text: string | undefined, values: Readonly<Record<string, number>> = {}): void {
    const status = finder.querySelector('#find-status')
    if (status) status.textContent = fill(text ?? '', values)
  }

  sortButtons(heads, (key) => {
    order = {key, isDown: order?.key === key && !order.isDown}
    showAnew()
  })
  finder.addEventListener('input', showAnew)
  // Before the first sign is typed.
  finder.addEventListener('focusin', fetchData)
  finder.querySelector('button')?.addEventListener('click', () => {
    for (const field of fields) field.value = ''
    order = undefined
    showAnew()
  })
  more?.querySelector('button')?.addEventListener('click', () => {
    limit += rowsAtOnce
    show()
  })
  addEventListener('hashchange', () => {
    // A place on the page is no question: `#main`.
    if (!location.hash.includes('=')) return
    order = readAddress(fields, heads.map(keyOf))
    showAnew()
  })
  const inPage = document.querySelector('#finding-data')?.textContent
  if (inPage) take(JSON.parse(inPage))
  order = readAddress(fields, heads.map(keyOf))
  finder.hidden = false
  if (found !== undefined || location.hash.includes('=')) show()
}

function isFindingData(data: unknown): data is FindingData {
  return typeof data === 'object' && data !== null && 'slugs' in data
}
