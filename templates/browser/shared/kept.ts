/** What a page remembers on this device; a browser that keeps nothing loses only that. */

/** A pot is cooked within the day: what is older would only surprise. */
const keptMilliseconds = 24 * 60 * 60 * 1000

interface Kept {
  readonly savedAt: number
  readonly value: unknown
}

/** @returns undefined where nothing was kept, or it is older than a day */
export function kept(name: string, now: number = Date.now()): unknown {
  try {
    const found: Kept = JSON.parse(localStorage.getItem(name) ?? 'null') ?? {savedAt: 0}
    return now - found.savedAt < keptMilliseconds ? found.value : undefined
  } catch {
    return undefined
  }
}

export function keep(name: string, value: unknown): void {
  try {
    const saved: Kept = {savedAt: Date.now(), value}
    localStorage.setItem(name, JSON.stringify(saved))
  } catch {
    // Storage is full or forbidden: the page still works until it is left.
  }
}
