import type {Label, LabelLine, Printed} from '../../src/food/label.ts'
import type {LabelRules} from '../../src/food/label-rules.ts'
import {parsePrinted} from '../../src/food/parse-printed.ts'
import type {Polyol} from '../../src/food/polyols.ts'
import {nowhere} from '../kitchen.ts'

export function printed(line: LabelLine, text: string): Printed {
  const figure = parsePrinted(line, text)
  if (!figure.ok) throw new Error(`${text}: expected ${figure.expected}`)
  return {...figure.value, place: nowhere}
}

/** A panel typed in line by line. */
export function panel(
  perGrams: number,
  rules: LabelRules,
  lines: Partial<Record<LabelLine, string>>,
  polyols: Partial<Record<Polyol, string>> = {},
): Label {
  return {
    perGrams,
    perText: `${perGrams} g`,
    rules,
    printed: entries(lines, (line, text) => printed(line, text)),
    printedPolyols: entries(polyols, (_, text) => printed('polyols', text)),
    state: 'as sold',
  }
}

function entries<K extends string>(
  record: Partial<Record<K, string>>,
  make: (key: K, text: string) => Printed,
): ReadonlyMap<K, Printed> {
  const map = new Map<K, Printed>()
  for (const key in record) {
    const text = record[key]
    if (text !== undefined) map.set(key, make(key, text))
  }
  return map
}
