import {element} from './element.ts'

/**
 * Puts a text on the clipboard.
 * @param place where the text is shown to be copied by hand, if the browser refuses
 * @returns whether it is on the clipboard
 */
export async function copyText(text: string, place: HTMLElement, label: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text)
    return true
  } catch {
    const area = element('textarea', 'to-copy')
    area.value = text
    area.readOnly = true
    area.rows = Math.min(12, text.split('\n').length)
    area.ariaLabel = label
    place.parentElement?.querySelector('.to-copy')?.remove()
    place.after(area)
    area.select()
    return false
  }
}
