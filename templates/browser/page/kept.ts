/** What a page remembers on this device; a browser that keeps nothing loses only that. */

const dayMilliseconds = 24 * 60 * 60 * 1000

interface Kept {
  readonly savedAt: number
  readonly value: unknown
}

/**
 * What was kept under a name.
 * @param days after which it would only surprise: a pot is cooked within one
 * @returns undefined where nothing was kept, or it is older
 */
export function kept(name: string, days = 1): unknown {
  try {
    const found: Kept = JSON.parse(localStorage.getItem(name) ?? 'null') ?? {savedAt: 0}
    return Date.now() - found.savedAt < days * dayMilliseconds ? found.value : undefined
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
