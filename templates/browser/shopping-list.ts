import type {ShoppingData} from '../../src/shopping/shopping-data.ts'
import {shoppingList, type Wanted} from '../../src/shopping/shopping-list.ts'
import {type ListRow, type ListWords, listText} from '../parts/shopping-text.ts'
import {fill} from '../words/fill.ts'

/** Sums a list for the servings a reader chooses, by the code that sums the lists of the plans. */

/** What the page hands over; made by the same build, so that it is taken at its word. */
interface PageData {
  readonly shopping: ShoppingData
  readonly plans: readonly {readonly wanted: readonly Wanted[]}[]
  readonly words: ListWords
}

const chooser = document.querySelector<HTMLElement>('#chooser')
const list = document.querySelector<HTMLElement>('#list')
const status = document.querySelector<HTMLElement>('#list-status')
const text = document.querySelector('#shopping-data')?.textContent

if (chooser && list && status && text) start(chooser, list, status, JSON.parse(text))

function start(chooser: HTMLElement, list: HTMLElement, status: HTMLElement, data: PageData): void {
  const fields = [...chooser.querySelectorAll<HTMLInputElement>('input[data-recipe]')]

  function show(): void {
    const wanted = chosen(fields)
    const {groups, make} = listText(shoppingList(data.shopping, wanted), data.words)
    const sections = groups.map(({heading, rows}) => section(heading, rows))
    if (make.length > 0) sections.unshift(section(data.words.makeFirst, make))
    list.replaceChildren(...sections)
    const count = groups.reduce((sum, {rows}) => sum + rows.length, 0)
    status.textContent = count === 0 ? data.words.empty : fill(data.words.count, {count})
    history.replaceState(null, '', fragment(wanted) || location.pathname)
  }

  function choose(wanted: readonly Wanted[]): void {
    for (const field of fields) {
      const servings = wanted
        .filter(({slug}) => slug === field.dataset.recipe)
        .reduce((sum, {servings}) => sum + servings, 0)
      field.value = String(servings)
    }
    show()
  }

  chooser.addEventListener('input', show)
  for (const button of chooser.querySelectorAll<HTMLButtonElement>('button')) {
    const plan = data.plans[Number(button.dataset.plan)]
    button.addEventListener('click', () => choose(plan?.wanted ?? []))
  }
  chooser.hidden = false
  const shared = wantedOf(location.hash)
  if (shared.length > 0) choose(shared)
  else show()
}

function chosen(fields: readonly HTMLInputElement[]): readonly Wanted[] {
  return fields
    .map((field) => ({slug: field.dataset.recipe ?? '', servings: Number(field.value)}))
    .filter(({servings}) => servings > 0)
}

/** The choice as the end of the address, so that the address can be kept or handed on. */
function fragment(wanted: readonly Wanted[]): string {
  if (wanted.length === 0) return ''
  const entries = wanted.map(({slug, servings}) => [slug, String(servings)])
  return `#${new URLSearchParams(entries)}`
}

function wantedOf(hash: string): readonly Wanted[] {
  return [...new URLSearchParams(hash.slice(1))]
    .map(([slug, servings]) => ({slug, servings: Number(servings)}))
    .filter(({servings}) => servings > 0)
}

function section(heading: string, rows: readonly ListRow[]): HTMLElement {
  const items = rows.map(({amount, name, notes}) =>
    element('li', '', [
      element('span', 'weight', [amount]),
      ' ',
      element('span', 'what', [
        name,
        ...(notes.length > 0 ? [element('span', 'note', [` ${notes.join('; ')}`])] : []),
      ]),
    ]),
  )
  return element('section', '', [element('h3', '', [heading]), element('ul', 'ledger', items)])
}

function element(name: string, className: string, children: readonly (Node | string)[]) {
  const made = document.createElement(name)
  if (className !== '') made.className = className
  made.append(...children)
  return made
}
