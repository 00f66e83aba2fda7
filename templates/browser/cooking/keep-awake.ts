/** A box that keeps the screen on while its page is looked at; shown where a browser can. */
export function offerToKeepAwake(label: HTMLElement | null): void {
  const box = label?.querySelector('input')
  if (!label || !box || !('wakeLock' in navigator)) return
  let lock: WakeLockSentinel | undefined

  async function follow(): Promise<void> {
    const wanted = box?.checked === true && document.visibilityState === 'visible'
    if (wanted && (lock === undefined || lock.released)) {
      // A low battery may refuse, which only means that the screen goes dark as ever.
      lock = await navigator.wakeLock.request('screen').catch(() => undefined)
    } else if (!wanted) {
      await lock?.release()
      lock = undefined
    }
  }

  box.addEventListener('change', follow)
  // The browser lets go whenever the page is out of sight.
  document.addEventListener('visibilitychange', follow)
  label.hidden = false
}
