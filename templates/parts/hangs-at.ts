import {roundedText} from '../../src/units/format-figure.ts'

/** Where on its beam a weight hangs. @param ratio 0–1 of the beam */
export function hangsAt(ratio: number): string {
  return `${roundedText(ratio * 100, 1)}%`
}
