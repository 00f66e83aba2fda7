import {element} from '../page/element.ts'
import type {Order} from './order.ts'

/** The heads of a table: buttons that sort it, and marks of how it is sorted. */

/** @param press is told the key of the column */
export function sortButtons(
  heads: readonly HTMLTableCellElement[],
  press: (key: string) => void,
): void {
  for (const head of heads) {
    const button = element('button', '', ...head.childNodes)
    button.type = 'button'
    button.addEventListener('click', () => press(keyOf(head)))
    head.append(button)
  }
}

export function markSorted(heads: readonly HTMLTableCellElement[], order: Order | undefined): void {
  for (const head of heads) {
    const isKey = order !== undefined && keyOf(head) === order.key
    head.ariaSort = isKey ? (order.isDown ? 'descending' : 'ascending') : null
  }
}

export function keyOf({dataset}: HTMLTableCellElement): string {
  return dataset.key ?? ''
}
