import type {KeepingTime} from '../../cookbook/recipe.ts'
import {formatDays} from '../../units/format-duration.ts'
import {isAtMost} from '../is-at-most.ts'
import type {Finding, Rule} from '../rule.ts'
import {keepingGuidance, keepingSource} from '../safety/keeping.ts'

export const keepsGuidance: Rule = {
  id: 'keeps-guidance',
  severity: 'warning',
  summary: 'A dish is said to keep no longer than the guidance for what is in it.',
  why: 'Bacteria such as Listeria grow in the fridge too, and nothing smells of them.',
  source: keepingSource,
  *check({recipe, computed}) {
    const {keeps} = recipe
    const [shortest] = keepingGuidance(computed)
    if (!keeps || !shortest) return
    if (keeps.roomDays && !isAtMost(keeps.roomDays.value, roomDays)) {
      yield finding(keeps.roomDays, {
        days: roomDays,
        where: 'at room temperature',
        kind: shortest.kind,
      })
    }
    if (keeps.fridgeDays && !isAtMost(keeps.fridgeDays.value, shortest.fridgeDays)) {
      yield finding(keeps.fridgeDays, {
        days: shortest.fridgeDays,
        where: 'in the fridge',
        kind: shortest.kind,
      })
    }
  },
}

/** The two-hour rule (USDA National Agricultural Library). */
const roomDays = 2 / 24

interface Guidance {
  readonly days: number
  readonly where: string
  readonly kind: string
}

function finding({text, place}: KeepingTime, {days, where, kind}: Guidance): Finding {
  const expected = formatDays(days)
  return {
    place,
    reason: `Keeps \`${text}\` ${where}, expected \`${expected}\` or less for ${kind}`,
    actual: text,
    expected: [expected],
    note: 'Shorten the time, or have it frozen. Local food-safety rules come first.',
  }
}
