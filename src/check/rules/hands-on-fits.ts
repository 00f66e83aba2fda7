import {formatMinutes} from '../../units/format-duration.ts'
import {leastMinutes, namedTimes, timesInSteps} from '../method/time-in-steps.ts'
import type {Rule} from '../rule.ts'

export const handsOnFits: Rule = {
  id: 'hands-on-fits',
  severity: 'warning',
  summary: 'Hands-on time holds the steps that need hands, and fits into the whole time.',
  why: 'It tells how long the cook is busy, and the page gives both to search engines.',
  *check({recipe}) {
    const {handsOnMinutes, totalMinutes} = recipe
    if (!handsOnMinutes) return
    const actual = formatMinutes(handsOnMinutes.value)
    if (totalMinutes && handsOnMinutes.value > totalMinutes.value) {
      const most = formatMinutes(totalMinutes.value)
      yield {
        place: handsOnMinutes.place,
        reason: `Hands-on time \`${actual}\`, expected \`${most}\` or less: the whole dish takes no longer`,
        actual,
        expected: [most],
      }
    }
    const busy = timesInSteps(recipe).filter(({duration, passage}) =>
      handWork.test(passage.text.slice(Math.max(0, duration.from - reachBefore), duration.from)),
    )
    const least = leastMinutes(busy)
    if (least <= handsOnMinutes.value) return
    const expected = formatMinutes(least)
    yield {
      place: handsOnMinutes.place,
      reason: `Hands-on time \`${actual}\`, expected \`${expected}\` or more: the method has that much work by hand`,
      actual,
      expected: [expected],
      note: `Counted were ${namedTimes(busy)}.`,
    }
  },
}

/** Work that hands cannot leave, right before its time: "knead by hand for 10 minutes". */
const handWork =
  /\b(?:knead(?:ing)?|whisk(?:ing)?|stir(?:ring)?(?:[-\s]fry)?|beat(?:ing)?|fold(?:ing)?|rub(?:bing)?|mash(?:ing)?|chop(?:ping)?)\b(?![^.;]*\b(?:simmer|bake|roast|rest|leave|chill|rise|prove|cook|boil|cover|machine|mixer)\b)[^.;]*$/i
const reachBefore = 60
