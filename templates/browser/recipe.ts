import type {CookingData} from '../parts/cooking-data.ts'
import {withDecimal} from '../words/decimal.ts'
import {fill} from '../words/fill.ts'
import {weightText} from './cooking/amount-texts.ts'
import {captionText} from './cooking/caption.ts'
import {addClock} from './cooking/clock.ts'
import {offerToKeepAwake} from './cooking/keep-awake.ts'
import {withLedger} from './cooking/lines.ts'
import {showAmounts} from './cooking/show-amounts.ts'
import {showFigures} from './cooking/show-figures.ts'
import {type CookingState, stateFrom, writtenState} from './cooking/state.ts'
import {addSwitches, choiceTexts} from './cooking/switches.ts'
import {addTicks} from './cooking/ticks.ts'
import {addTimers} from './cooking/timers.ts'
import {copyText} from './page/copy-text.ts'
import {element} from './page/element.ts'
import {keep, kept} from './page/kept.ts'
import {one} from './page/query.ts'
import {workOffline} from './page/work-offline.ts'
import {putBack, rewrite} from './page/written.ts'

/** Cooking from a page: how much, what instead of what, what is done, how long yet. */

const controls = one('#cooking')
const text = one('#cooking-data')?.textContent

if (controls && text) start(controls, withLedger(JSON.parse(text)))
workOffline()

function start(controls: HTMLElement, data: CookingData): void {
  const name = `scalepan recipe ${data.slug}`
  const ticksName = `scalepan ticks ${data.slug}`
  let state = stateFrom(kept(name), data)
  const switches = addSwitches(data, (line, choice) => {
    show({...state, choices: state.choices.with(line, choice)})
  })
  const before: unknown = kept(ticksName)
  const ticked = new Set<string>(Array.isArray(before) ? before : [])
  const ticks = addTicks(data, ticked, (done) => keep(ticksName, done))
  addTimers(data)
  addClock(data)
  addChosenNote()
  offerToKeepAwake(one('#awake', controls))

  function show(next: CookingState): void {
    state = next
    showAmounts(data, state)
    showFigures(data, state)
    showWhatIsCooked(controls, data, state)
    switches.show(state.choices)
    keep(name, state)
  }

  const fields = fieldsOf(controls)
  for (const {choices} of data.lines) {
    const [written] = choices
    if (written)
      fields.of?.append(
        element(
          'option',
          '',
          `${written.name}, ${weightText(written.grams, 1, data.words.carried)}`,
        ),
      )
  }
  controls.addEventListener('input', ({target}) => {
    const batches = batchesAsked(data, state, fields, target)
    if (batches === undefined) return
    show({...state, batches})
    setFields(fields, data, state, target)
  })
  one('#as-written', controls)?.addEventListener('click', () => {
    ticks.clear()
    keep(ticksName, [])
    setFields(fields, data, writtenState(data))
    show(writtenState(data))
  })
  one('#copy-text', controls)?.addEventListener('click', async ({currentTarget}) => {
    if (!(currentTarget instanceof HTMLElement)) return
    const isCopied = await copyText(captionText(data, state), currentTarget, data.words.copy)
    tell(controls, isCopied ? data.words.copied : data.words.copyBelow)
  })
  controls.hidden = false
  setFields(fields, data, state)
  show(state)
}

interface Fields {
  readonly servings: HTMLInputElement | null
  readonly have: HTMLInputElement | null
  readonly of: HTMLSelectElement | null
}

function fieldsOf(controls: HTMLElement): Fields {
  return {
    servings: one<HTMLInputElement>('#cooking-servings', controls),
    have: one<HTMLInputElement>('#cooking-have', controls),
    of: one<HTMLSelectElement>('#cooking-of', controls),
  }
}

/** How many batches a field asks for; undefined while it asks for nothing that can be made. */
function batchesAsked(
  data: CookingData,
  state: CookingState,
  {servings, have, of}: Fields,
  target: EventTarget | null,
): number | undefined {
  const asked = () => {
    if (servings && target === servings) return Number(servings.value) / servesOf(data)
    if (have && of && (target === have || target === of)) {
      return Number(have.value) / listedGrams(data, state, of.selectedIndex)
    }
    return undefined
  }
  const batches = asked()
  return batches !== undefined && Number.isFinite(batches) && batches > 0 ? batches : undefined
}

/** A component is counted in batches. */
function servesOf({recipe}: CookingData): number {
  return recipe.serves ?? 1
}

function listedGrams({lines}: CookingData, {choices}: CookingState, index: number): number {
  const grams = lines[index]?.choices[Math.max(0, choices[index] ?? 0)]?.grams ?? Number.NaN
  return typeof grams === 'number' ? grams : (grams[0] + grams[1]) / 2
}

/** Sets every field to what is cooked, but for the one that the reader is at. */
function setFields(
  {servings, have, of}: Fields,
  data: CookingData,
  {batches}: CookingState,
  at?: EventTarget | null,
): void {
  if (servings && at !== servings) servings.value = plainNumber(batches * servesOf(data))
  if (have && at !== have && at !== of) have.value = ''
}

function plainNumber(value: number): string {
  return String(Number(value.toFixed(2)))
}

function showWhatIsCooked(controls: HTMLElement, data: CookingData, state: CookingState): void {
  const {words, recipe} = data
  const {batches} = state
  const factor = withDecimal(plainNumber(batches), words.carried)
  tell(controls, batches === 1 ? '' : fill(words.scaled, {factor}))
  const serves = one('.particulars [data-shows="serves"]')
  if (batches === 1 || recipe.serves === undefined) putBack(serves)
  else {
    const servings = plainNumber(recipe.serves * batches)
    rewrite(serves, fill(words.scaledServings, {servings, written: recipe.serves}))
  }
  const choices = choiceTexts(data, state.choices)
  const note = one('#chosen')
  if (!note) return
  const told = choices.length === 0 ? undefined : data.choosing?.words.chosen
  note.textContent = told === undefined ? '' : fill(told, {choices: choices.join(', ')})
}

/** There from the start, so that what comes into it is read out. */
function addChosenNote(): void {
  const note = element('p', 'chosen')
  note.id = 'chosen'
  note.role = 'status'
  one('.headline')?.append(note)
}

function tell(controls: HTMLElement, text: string): void {
  const status = one('#cooking-status', controls)
  if (status) status.textContent = text
}
