import {fill} from '../words/fill.ts'
import {type Dish, isFound, type Known, plainWords, type Query} from './finding/find.ts'
import {element} from './page/element.ts'
import {workOffline} from './page/work-offline.ts'

/**
 * Finds and sorts in the table of recipes; what is asked for stands in the address. Without this
 * script the table is all there, by name.
 */

const table = document.querySelector<HTMLTableElement>('#recipe-table')
const finder = document.querySelector<HTMLElement>('#finder')
const body = table?.tBodies[0]

if (table && finder && body) start(table, body, finder)
workOffline()

interface Row {
  readonly row: HTMLTableRowElement
  readonly dish: Dish
  readonly title: string
}

/** Which column sorts the table, by its key in the head. */
interface Order {
  readonly key: string
  readonly isDown: boolean
}

function start(table: HTMLTableElement, body: HTMLTableSectionElement, finder: HTMLElement): void {
  const heads = [...table.querySelectorAll<HTMLTableCellElement>('thead th')]
  const keys = heads.map(({dataset}) => dataset.key ?? '')
  const rows = [...body.rows].map((row) => ({row, dish: dishOf(row, keys), title: titleOf(row)}))
  const fields = [...finder.querySelectorAll<HTMLInputElement | HTMLSelectElement>('[name]')]
  let order: Order | undefined

  function show(): void {
    const query = queryOf(fields)
    const shown = rows.filter(({row, dish}) => {
      row.hidden = !isFound(dish, query)
      return !row.hidden
    })
    body.append(...sorted(rows, order).map(({row}) => row))
    for (const [column, head] of heads.entries()) {
      const isKey = order !== undefined && keys[column] === order.key
      head.ariaSort = isKey ? (order?.isDown ? 'descending' : 'ascending') : null
    }
    tell(finder, shown.length, rows.length)
    finder
      .querySelector('#find-without-note')
      ?.toggleAttribute('hidden', query.without.length === 0)
    history.replaceState(null, '', address(fields, order))
  }

  for (const [column, head] of heads.entries()) {
    const button = element('button', '', ...head.childNodes)
    button.type = 'button'
    head.append(button)
    button.addEventListener('click', () => {
      const key = keys[column] ?? ''
      order = {key, isDown: order?.key === key && !order.isDown}
      show()
    })
  }
  finder.addEventListener('input', show)
  finder.querySelector('button')?.addEventListener('click', () => {
    for (const field of fields) field.value = ''
    order = undefined
    show()
  })
  addEventListener('hashchange', () => {
    // A place on the page is no question: `#main`.
    if (!location.hash.includes('=')) return
    order = read(fields, keys)
    show()
  })
  order = read(fields, keys)
  finder.hidden = false
  show()
}

function titleOf(row: HTMLTableRowElement): string {
  return row.cells[0]?.textContent ?? ''
}

function dishOf(row: HTMLTableRowElement, keys: readonly string[]): Dish {
  const {words = '', tags, diets, allergens, open} = row.dataset
  return {
    words: plainWords(`${titleOf(row)} ${words}`),
    figures: Object.fromEntries([...row.cells].map((cell, column) => [keys[column], known(cell)])),
    tags: listed(tags, '\n'),
    diets: listed(diets),
    allergens: listed(allergens),
    isOpen: open !== undefined,
  }
}

function known({dataset}: HTMLElement): Known | undefined {
  if (dataset.value === undefined) return undefined
  return {value: Number(dataset.value), isComplete: dataset.open === undefined}
}

/** A list in an attribute: neither a diet nor an allergen has a comma in its name. */
function listed(text: string | undefined, between = ','): readonly string[] {
  return text === undefined || text === '' ? [] : text.split(between)
}

type Field = HTMLInputElement | HTMLSelectElement

function queryOf(fields: readonly Field[]): Query {
  const limits = (kind: string) =>
    Object.fromEntries(
      fields
        .filter(({dataset, value}) => dataset.limit === kind && value !== '')
        .map(({dataset, value}) => [dataset.figure, Number(value)]),
    )
  const value = (name: string) => fields.find((field) => field.name === name)?.value || undefined
  return {
    words: plainWords(value('find') ?? ''),
    most: limits('most'),
    least: limits('least'),
    tag: value('tag'),
    diet: value('diet'),
    without: listed(value('without')),
  }
}

function sorted(rows: readonly Row[], order: Order | undefined): readonly Row[] {
  if (order === undefined) return rows
  const {key, isDown} = order
  const direction = isDown ? -1 : 1
  if (key === 'title') return isDown ? rows.toReversed() : rows
  return rows.toSorted(({dish: left}, {dish: right}) => {
    const [here, there] = [left.figures[key]?.value, right.figures[key]?.value]
    // What is not known stands last, whichever way the column is sorted.
    if (here === undefined || there === undefined) {
      return Number(here === undefined) - Number(there === undefined)
    }
    return direction * (here - there)
  })
}

function tell(finder: HTMLElement, shown: number, all: number): void {
  const status = finder.querySelector('#find-status')
  if (status) status.textContent = fill(finder.dataset.shown ?? '', {shown, all})
}

/** The address with what is asked for behind its `#`; an address can be kept or handed on. */
function address(fields: readonly Field[], order: Order | undefined): string {
  const entries = fields.filter(({value}) => value !== '').map(({name, value}) => [name, value])
  if (order) entries.push([order.isDown ? 'down' : 'up', order.key])
  return entries.length === 0 ? location.pathname : `#${new URLSearchParams(entries)}`
}

/** Fills the fields from the address. @returns how it wants the table sorted */
function read(fields: readonly Field[], keys: readonly string[]): Order | undefined {
  const asked = new URLSearchParams(location.hash.slice(1))
  for (const field of fields) {
    const value = asked.get(field.name) ?? ''
    field.value = value
    // A list that has no such entry, or a number that is none, asks for nothing.
    if (field.value !== value) field.value = ''
  }
  const key = asked.get('down') ?? asked.get('up') ?? ''
  return keys.includes(key) && key !== '' ? {key, isDown: asked.has('down')} : undefined
}
