import {formatDays} from '../../units/format-duration.ts'
import {isAtMost} from '../is-at-most.ts'
import type {Rule} from '../rule.ts'
import {keepingGuidance, keepingSource} from '../safety/keeping.ts'

export const freezerQuality: Rule = {
  id: 'freezer-quality',
  severity: 'note',
  summary: 'A dish is said to keep in the freezer no longer than it stays good.',
  why: 'Frozen food stays safe, but dries out and turns rancid.',
  source: keepingSource,
  *check({recipe, computed}) {
    const freezerDays = recipe.keeps?.freezerDays
    const [shortest] = keepingGuidance(computed)
      .flatMap(({kind, freezerDays: days}) => (days === undefined ? [] : [{kind, days}]))
      .toSorted((left, right) => left.days - right.days)
    if (!freezerDays || !shortest || isAtMost(freezerDays.value, shortest.days)) return
    const actual = freezerDays.text
    const expected = formatDays(shortest.days)
    yield {
      place: freezerDays.place,
      reason: `Keeps \`${actual}\` in the freezer, expected \`${expected}\` or less for ${shortest.kind}`,
      actual,
      expected: [expected],
      note: 'This is about quality; food frozen at −18 °C (0 °F) stays safe.',
    }
  },
}
