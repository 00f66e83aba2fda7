import {shoppingList} from '../../src/shopping/shopping-list.ts'
import {type Asked, askedBy, listFragment} from '../parts/list-fragment.ts'
import type {ShoppingPageData} from '../parts/shopping-data.ts'
import {type ListRow, listText, plainList} from '../parts/shopping-text.ts'
import {fill} from '../words/fill.ts'
import {copyText} from './page/copy-text.ts'
import {element} from './page/element.ts'
import {keep, kept} from './page/kept.ts'
import {workOffline} from './page/work-offline.ts'
import {foundServings} from './shopping/found-servings.ts'
import {recipesFrom} from './shopping/recipes.ts'
import {fieldsOnPage} from './shopping/servings.ts'

/**
 * Sums a list for the servings a reader chooses, by the code that sums the lists of the plans. What
 * is asked for stands in the address; what is at home is remembered on the device.
 */

const listName = 'scalepan list'
const hadName = 'scalepan at home'

/** A list is written early in the week and shopped for at its end. */
const keptDays = 7

const chooser = document.querySelector<HTMLElement>('#chooser')
const text = document.querySelector('#shopping-data')?.textContent

if (chooser && text) start(chooser, JSON.parse(text))
workOffline(document.querySelector<HTMLElement>('#offline'))

function start(chooser: HTMLElement, data: ShoppingPageData): void {
  const recipes = recipesFrom(data.recipes)
  const found =
    data.recipes.kind === 'parts'
      ? foundServings(chooser, {recipes, words: data.words}, () => change())
      : undefined
  const servings = found ?? fieldsOnPage(chooser, () => change())
  /** Slugs of what could not be fetched, until something else is asked for. */
  const unreachable = new Set<string>()
  const own = ownLines(chooser, () => change())
  const had = new Set<string>(strings(kept(hadName, keptDays)))

  function current() {
    return listText(shoppingList(recipes.data(), servings.wanted()), data.words, had)
  }

  function change(): void {
    unreachable.clear()
    show()
  }

  /** Shows the list at once, or when what it is summed from has come. */
  function show(): void {
    const wanted = servings.wanted()
    const fragment = listFragment(wanted, own.names())
    keep(listName, fragment)
    history.replaceState(null, '', fragment || location.pathname)
    const missing = wanted.filter(({slug}) => !recipes.isThere(slug) && !unreachable.has(slug))
    if (missing.length === 0) {
      showList()
    } else {
      say(chooser, '#list-status', data.words.fetching)
      fetchAll(missing.map(({slug}) => slug))
    }
  }

  async function fetchAll(slugs: readonly string[]): Promise<void> {
    await Promise.all(slugs.map((slug) => recipes.fetch(slug).catch(() => unreachable.add(slug))))
    found?.show()
    show()
  }

  function showList(): void {
    const {groups, make} = current()
    const tickable = groups.map(({heading, rows}) => section(heading, rows.map(tickRow)))
    if (make.length > 0) tickable.unshift(section(data.words.makeFirst, make.map(row)))
    const added = own.names()
    if (added.length > 0) tickable.push(section(data.words.own, added.map(ownRow)))
    chooser.querySelector('#list')?.replaceChildren(...tickable)
    tell()
  }

  /** How much is yet to buy, and what it costs. */
  function tell(): void {
    const {groups, cost} = current()
    const names = groups.flatMap(({rows}) => rows.map(({name}) => name))
    const count = [...names, ...own.names()].filter((name) => !had.has(name)).length
    const isEmpty = names.length === 0 && own.names().length === 0
    const told = isEmpty ? data.words.empty : fill(data.words.count, {count})
    const left = fill(data.words.incomplete, {names: [...unreachable].join(', ')})
    say(chooser, '#list-status', unreachable.size > 0 ? `${told} ${left}` : told)
    say(chooser, '#list-cost', cost ?? '')
  }

  function tickRow(one: ListRow): HTMLElement {
    const item = row(one)
    const box = element('input', '')
    box.type = 'checkbox'
    box.ariaLabel = fill(data.words.had, {name: one.name})
    box.checked = had.has(one.name)
    item.classList.toggle('ticked', box.checked)
    item.append(element('label', 'tick', box))
    box.addEventListener('change', () => {
      if (box.checked) had.add(one.name)
      else had.delete(one.name)
      item.classList.toggle('ticked', box.checked)
      keep(hadName, [...had])
      tell()
    })
    return item
  }

  function ownRow(name: string): HTMLElement {
    const item = tickRow({amount: '', name, notes: []})
    const remove = element('button', 'remove', '×')
    remove.type = 'button'
    remove.ariaLabel = fill(data.words.remove, {name})
    remove.addEventListener('click', () => own.remove(name))
    item.querySelector('.what')?.append(' ', remove)
    return item
  }

  function ask({wanted, own: names}: Asked): void {
    servings.ask(wanted)
    own.set(names)
    change()
  }

  for (const button of chooser.querySelectorAll<HTMLButtonElement>('button[data-plan]')) {
    const plan = data.plans[Number(button.dataset.plan)]
    button.addEventListener('click', () => ask({wanted: plan?.wanted ?? [], own: own.names()}))
  }
  chooser.querySelector('[data-clear]')?.addEventListener('click', () => {
    had.clear()
    keep(hadName, [])
    ask({wanted: [], own: []})
  })
  offerCopies(chooser, data, () => plainList(withoutHad(current(), own.names()), data.words))
  chooser.hidden = false
  const before = kept(listName, keptDays)
  const isAsked = location.hash.includes('=')
  ask(askedBy(isAsked || typeof before !== 'string' ? location.hash : before))
  addEventListener('hashchange', () => {
    // A place on the page asks for no other list: `#main`.
    if (location.hash.includes('=')) ask(askedBy(location.hash))
  })

  /** What is still to buy, with what was added by hand. */
  function withoutHad(list: ReturnType<typeof current>, added: readonly string[]) {
    const rows = added.map((name): ListRow => ({amount: '', name, notes: []}))
    const groups = [...list.groups, {heading: data.words.own, rows}]
    return {
      ...list,
      groups: groups
        .map((group) => ({...group, rows: group.rows.filter(({name}) => !had.has(name))}))
        .filter(({rows}) => rows.length > 0),
    }
  }
}

interface OwnLines {
  names(): readonly string[]
  set(names: readonly string[]): void
  remove(name: string): void
}

/** What a reader adds by hand, each name once. */
function ownLines(chooser: HTMLElement, changed: () => void): OwnLines {
  let names: readonly string[] = []
  const form = chooser.querySelector<HTMLFormElement>('#own')
  const field = chooser.querySelector<HTMLInputElement>('#own-name')
  form?.addEventListener('submit', (event) => {
    event.preventDefault()
    const name = field?.value.trim() ?? ''
    if (!field || name === '') return
    names = [...new Set([...names, name])]
    field.value = ''
    changed()
  })
  return {
    names: () => names,
    set(next) {
      names = [...new Set(next)]
    },
    remove(name) {
      names = names.filter((other) => other !== name)
      changed()
      // The button that was pressed is gone; the next thing to do is to write another.
      field?.focus()
    },
  }
}

function offerCopies(chooser: HTMLElement, {words}: ShoppingPageData, list: () => string): void {
  // Behind the words that say where the text is.
  const place = chooser.querySelector<HTMLElement>('#share-status')
  const copy = async (text: string, label: string) => {
    const isCopied = place !== null && (await copyText(text, place, label))
    say(chooser, '#share-status', isCopied ? words.copied : words.copyBelow)
  }
  for (const [id, text] of [
    ['#copy-list', list],
    ['#copy-link', () => location.href],
  ] as const) {
    const button = chooser.querySelector(id)
    button?.addEventListener('click', () => copy(text(), button.textContent.trim()))
  }
}

function section(heading: string, items: readonly HTMLElement[]): HTMLElement {
  return element('section', '', element('h3', '', heading), element('ul', 'ledger', ...items))
}

function row({amount, name, notes}: ListRow): HTMLElement {
  return element(
    'li',
    '',
    element('span', 'weight', amount),
    ' ',
    element(
      'span',
      'what',
      element('span', 'name', name),
      ...(notes.length > 0 ? [element('span', 'note', ` ${notes.join('; ')}`)] : []),
    ),
  )
}

function say(chooser: HTMLElement, place: string, text: string): void {
  const found = chooser.querySelector(place)
  if (found) found.textContent = text
}

function strings(value: unknown): readonly string[] {
  return Array.isArray(value) ? value.filter((one) => typeof one === 'string') : []
}
