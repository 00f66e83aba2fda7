/** What runs in the page that is measured. */

/** Something a reader does in a field. */
export interface Act {
  readonly name: string
  /** Selectors of the field, and of the line that then says how it ended. */
  readonly field: string
  readonly status: string
  readonly text: string
  /** That line, once it is done. */
  readonly done: RegExp
}

/** Keeps the lengths of tasks that held the page up for more than 50 ms. */
export function watchLongTasks(): void {
  const tasks: number[] = []
  Reflect.set(globalThis, 'longTasks', tasks)
  new PerformanceObserver((list) => {
    for (const {duration} of list.getEntries()) tasks.push(Math.round(duration))
  }).observe({type: 'longtask', buffered: true})
}

/** Milliseconds from the start until the page was loaded. */
export function loadMilliseconds(): number {
  return performance.getEntriesByType('navigation')[0]?.duration ?? 0
}

/**
 * Types into a field.
 * @returns milliseconds until the status says that it is done, and the next frame is drawn
 */
export function type({
  field,
  status,
  text,
  done,
}: {
  readonly field: string
  readonly status: string
  readonly text: string
  /** Source of a regular expression. */
  readonly done: string
}): Promise<number> {
  const input = document.querySelector<HTMLInputElement>(field)
  const began = performance.now()
  input?.focus()
  if (input) input.value = text
  input?.dispatchEvent(new Event('input', {bubbles: true}))
  const isDone = new RegExp(done, 'u')
  return new Promise((resolve) => {
    const look = () => {
      if (isDone.test(document.querySelector(status)?.textContent ?? '')) {
        requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - began)))
      } else {
        setTimeout(look, 2)
      }
    }
    look()
  })
}
