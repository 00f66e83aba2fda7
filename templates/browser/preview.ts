/** Reloads a previewed page when its cookbook was rebuilt, and leaves the writer where they were. */

interface Kept {
  /** A part of the page in view, and how far below the upper edge of the window it stood, px. */
  readonly inView: {readonly id: string; readonly top: number} | undefined
  /** For a page that has no such part, or no longer: px. */
  readonly scrolled: number
  readonly focused: string
  readonly open: readonly boolean[]
  readonly fields: readonly (readonly [value: string, isChecked: boolean])[]
}

const key = `preview ${location.pathname}`
const {events = '', generation} = document.currentScript?.dataset ?? {}

new EventSource(events).addEventListener('built', ({data}) => {
  if (data === generation) return
  sessionStorage.setItem(key, JSON.stringify(kept()))
  location.reload()
})

const text = sessionStorage.getItem(key)
sessionStorage.removeItem(key)
// Written by this script a moment ago, so that it is taken at its word.
if (text !== null) restore(JSON.parse(text))

function kept(): Kept {
  return {
    inView: inView(),
    scrolled: scrollY,
    focused: document.activeElement?.id ?? '',
    open: details().map(({open}) => open),
    fields: fields().map((field) => [
      field.value,
      field instanceof HTMLInputElement && field.checked,
    ]),
  }
}

function restore({inView, scrolled, focused, open, fields: before}: Kept): void {
  const now = details()
  // A page with other parts than before keeps its own: positions would name the wrong ones.
  if (now.length === open.length)
    for (const [index, one] of now.entries()) one.open = open[index] ?? one.open
  const after = fields()
  if (after.length === before.length) {
    for (const [index, field] of after.entries()) fill(field, before[index])
  }
  if (focused !== '') document.getElementById(focused)?.focus({preventScroll: true})
  const part = inView && document.getElementById(inView.id)
  const back = () => {
    // Findings that came or went move what follows them.
    const top = part ? scrollY + part.getBoundingClientRect().top - inView.top : scrolled
    scrollTo({top, behavior: 'instant'})
  }
  back()
  // Pictures have their height once they are loaded.
  addEventListener('load', back)
}

function inView(): Kept['inView'] {
  for (const part of document.querySelectorAll('main [id]')) {
    const {top, height} = part.getBoundingClientRect()
    if (height > 0 && top >= 0) return {id: part.id, top}
  }
  return undefined
}

type Field = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement

function fill(field: Field, before: Kept['fields'][number] | undefined): void {
  if (before === undefined) return
  const [value, isChecked] = before
  const isSwitch = field instanceof HTMLInputElement && /^(?:checkbox|radio)$/u.test(field.type)
  if (isSwitch ? field.checked === isChecked : field.value === value) return
  if (isSwitch) field.checked = isChecked
  else field.value = value
  for (const name of ['input', 'change']) field.dispatchEvent(new Event(name, {bubbles: true}))
}

function fields(): readonly Field[] {
  return [...document.querySelectorAll<Field>('input, select, textarea')]
}

function details(): readonly HTMLDetailsElement[] {
  return [...document.querySelectorAll('main details')].filter(
    (one) => one instanceof HTMLDetailsElement,
  )
}
