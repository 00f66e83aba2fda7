/**
 * Keeps the pages that matter away from a network. A site opened from a disk needs no help, and has
 * no workers.
 * @param note is shown once the page is there without a network
 */
export async function workOffline(note?: HTMLElement | null): Promise<void> {
  const path = document.querySelector<HTMLLinkElement>('link[rel="icon"]')?.href
  if (!('serviceWorker' in navigator) || !path || !/^https?:/.test(path)) return
  try {
    await navigator.serviceWorker.register(new URL('../offline.js', path))
    await navigator.serviceWorker.ready
    if (note) note.hidden = false
  } catch {
    // A browser that allows no workers shows the pages as ever, with a network.
  }
}
