import type {CookbookRule} from '../rule.ts'

/** Milliseconds of a day of the calendar in UTC, which has no summer time. */
const dayMilliseconds = 24 * 60 * 60 * 1000

export const labelAge: CookbookRule = {
  id: 'label-age',
  severity: 'warning',
  summary: 'A packet was read no longer ago than `label age` in cookbook.yaml says.',
  why: 'Makers change what is in the packet and keep its name; the figures of an old panel are of another food.',
  *check({cookbook, today}) {
    const {labelDays} = cookbook.settings
    if (labelDays === undefined || today === undefined) return
    const expected = `a packet read within \`${labelDays}\` days`
    for (const {name, label, named} of cookbook.foods.own) {
      if (!label || !named) continue
      const {readOn} = label
      if (!readOn) {
        yield {
          ...named,
          reason: `Label of \`${name}\` has no \`read\`, expected ${expected}`,
          note: `Read the packet at hand, and write the day: \`read: ${today}\`.`,
        }
      } else if (daysBetween(readOn.day, today) > labelDays) {
        yield {
          file: named.file,
          place: readOn.place,
          reason: `Label of \`${name}\` was read on \`${readOn.day}\`, expected ${expected}`,
          actual: readOn.day,
          note: `Compare it with a packet of today; then write \`read: ${today}\`.`,
        }
      }
    }
  },
}

/** @param from a day of the calendar, `2026-10-03`, as is `to` */
function daysBetween(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / dayMilliseconds
}
