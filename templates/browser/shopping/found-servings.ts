import type {Wanted} from '../../../src/shopping/shopping-list.ts'
import {shoppingNamesPath} from '../../addresses.ts'
import type {ShoppingNames, ShoppingPageData} from '../../parts/shopping-data.ts'
import {fill} from '../../words/fill.ts'
import {meantBy} from '../finding/find.ts'
import {element} from '../page/element.ts'
import {loadData} from '../page/load-data.ts'
import {type Recipes, siteRoot} from './recipes.ts'
import type {Servings} from './servings.ts'

/** More names than this nobody reads: the next letter is typed sooner. */
const mostFound = 30

interface Named {
  readonly slug: string
  readonly title: string
  readonly isBatch: boolean
}

/** Servings of recipes that are looked for by name; the names come when somebody looks. */
export interface FoundServings extends Servings {
  /** Shows the fields anew: a chosen recipe has a name as soon as it was fetched. */
  readonly show: () => void
}

export function foundServings(
  chooser: HTMLElement,
  {recipes, words}: {readonly recipes: Recipes; readonly words: ShoppingPageData['words']},
  changed: () => void,
): FoundServings {
  const search = chooser.querySelector<HTMLInputElement>('#choose-find')
  const list = chooser.querySelector<HTMLElement>('.choose')
  const servings = new Map<string, number>()
  let names: ShoppingNames | undefined

  function say(text: string): void {
    const status = chooser.querySelector('#choose-status')
    if (status) status.textContent = text
  }

  async function fetchNames(): Promise<void> {
    if (names !== undefined) return
    say(words.fetching)
    try {
      const data = await loadData(shoppingNamesPath, siteRoot)
      if (isShoppingNames(data)) names = data
      show()
    } catch {
      say(words.failed)
    }
  }

  function show(): void {
    // Whoever is typing a number goes on typing.
    if (list?.contains(document.activeElement)) return
    dropUnknown()
    const typed = search?.value ?? ''
    const found = names === undefined ? [] : foundIn(names, typed)
    const others = found.filter(({slug}) => !servings.has(slug))
    const chosen = chosenNames([...servings.keys()], recipes)
    list?.replaceChildren(...[...chosen, ...others.slice(0, mostFound)].map(field))
    const left = others.length - mostFound
    if (names !== undefined) {
      const isMissed = typed.trim() !== '' && found.length === 0
      say(isMissed ? words.noneFound : left > 0 ? fill(words.more, {count: left}) : '')
    }
  }

  /** An address may name recipes that the cookbook has no more. */
  function dropUnknown(): void {
    const known = new Set(recipes.data().recipes.map(({slug}) => slug))
    for (const slug of servings.keys()) {
      if (recipes.isThere(slug) && !known.has(slug)) servings.delete(slug)
    }
  }

  function field({slug, title, isBatch}: Named): HTMLElement {
    const input = element('input', '')
    input.type = 'number'
    input.id = `servings-${slug}`
    input.min = '0'
    input.step = 'any'
    input.inputMode = 'decimal'
    input.value = String(servings.get(slug) ?? 0)
    input.addEventListener('input', () => {
      const wanted = Number(input.value)
      if (wanted > 0) servings.set(slug, wanted)
      else servings.delete(slug)
      changed()
    })
    const label = element('label', '', title)
    label.htmlFor = input.id
    if (isBatch) label.append(element('span', 'measure', `, ${words.batches}`))
    return element('li', '', input, label)
  }

  search?.addEventListener('focus', fetchNames)
  search?.addEventListener('input', () => (names === undefined ? fetchNames() : show()))
  return {
    wanted: () => [...servings].map(([slug, servings]) => ({slug, servings})),
    ask(wanted: readonly Wanted[]) {
      servings.clear()
      for (const one of wanted) {
        servings.set(one.slug, one.servings + (servings.get(one.slug) ?? 0))
      }
      show()
    },
    show,
  }
}

function foundIn({slugs, titles, serves, words}: ShoppingNames, typed: string): readonly Named[] {
  const meant = meantBy(typed, words.names)
  if (meant.length === 0) return []
  return slugs.flatMap((slug, place) => {
    const own = words.of[place] ?? []
    if (!meant.every((those) => own.some((word) => those.has(word)))) return []
    return [{slug, title: titles[place] ?? slug, isBatch: serves[place] === null}]
  })
}

/** Under its name, as soon as that is known. */
function chosenNames(slugs: readonly string[], recipes: Recipes): readonly Named[] {
  const known = new Map(recipes.data().recipes.map((recipe) => [recipe.slug, recipe] as const))
  return slugs.map((slug) => {
    const recipe = known.get(slug)
    const isBatch = recipe !== undefined && recipe.serves === undefined
    return {slug, title: recipe?.title ?? slug, isBatch}
  })
}

function isShoppingNames(data: unknown): data is ShoppingNames {
  return typeof data === 'object' && data !== null && 'slugs' in data && 'words' in data
}
