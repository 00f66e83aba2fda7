import {placeInPassage} from '../../cookbook/passage-place.ts'
import type {ComputedLine} from '../../nutrition/computed.ts'
import {isAtMost} from '../is-at-most.ts'
import {type AmountOfLine, amountsOfLines} from '../method/amounts-of-lines.ts'
import {type Compared, comparedWithList} from '../method/listed-amount.ts'
import type {Finding, Rule} from '../rule.ts'

export const amountsInMethod: Rule = {
  id: 'amounts-in-method',
  severity: 'warning',
  summary: 'An amount that the method repeats is the amount of the list.',
  why: 'Who cooks from the method uses its amount, and the figures are computed from the list.',
  *check({computed, cookbook}) {
    const amounts = amountsOfLines(computed, cookbook)
    for (const entry of computed.lines) {
      const own = amounts.flatMap((amount): readonly Said[] => {
        if (!amount.lines.includes(entry)) return []
        const compared = comparedWithList(
          amount.mention.amount,
          entry,
          cookbook.settings.scaleGrams,
        )
        return compared ? [{...amount, compared: widened(compared, amount)}] : []
      })
      for (const wrong of differing(own)) {
        if (wrong.lines[0] === entry && !fitsAnother(wrong, cookbook.settings.scaleGrams)) {
          yield finding(wrong, entry)
        }
      }
    }
  },
}

interface Said extends AmountOfLine {
  readonly compared: Compared
}

/** "About 200 g" may be a tenth more or less (common practice, no source). */
const roughRatio = 0.1

function widened(compared: Compared, {isRough}: AmountOfLine): Compared {
  return isRough ? {...compared, slack: compared.slack + roughRatio * compared.listed} : compared
}

/** The amounts that do not fit the list, alone or as the parts of it. */
function differing(own: readonly Said[]): readonly Said[] {
  const tooMuch = own.filter(
    ({compared: {mentioned, listed, slack}}) => !isAtMost(mentioned, listed + slack),
  )
  if (tooMuch.length > 0 || own.some(isWhole)) return tooMuch
  const [first] = own
  if (!first) return []
  const sum = own.reduce((total, {compared}) => total + compared.mentioned, 0)
  const slack = own.reduce((total, {compared}) => total + compared.slack, 0)
  const {listed} = first.compared
  if (isAtMost(Math.abs(sum - listed), slack)) return []
  if (own.every(({isPart}) => isPart)) return isAtMost(sum, listed + slack) ? [] : own.slice(-1)
  return own.filter(({isPart}) => !isPart)
}

function isWhole({compared: {mentioned, listed, slack}}: Said): boolean {
  return isAtMost(Math.abs(mentioned - listed), slack)
}

/** "100 g of sugar" where two lines are sugar: either may be meant, or both. */
function fitsAnother({lines, mention}: Said, scaleGrams: number): boolean {
  if (lines.length < 2) return false
  const all = lines.flatMap((line) => comparedWithList(mention.amount, line, scaleGrams) ?? [])
  const listed = all.reduce((total, each) => total + each.listed, 0)
  return all.some(
    (each) =>
      isAtMost(Math.abs(each.mentioned - each.listed), each.slack) ||
      isAtMost(Math.abs(each.mentioned - listed), each.slack),
  )
}

function finding({passage, mention}: Said, {line}: ComputedLine): Finding {
  const [actual, expected] = [mention.amount.text, line.amount.value.text]
  const name = line.name.value
  return {
    place: placeInPassage(passage, mention.from, mention.to),
    reason: `Amount \`${actual}\` of \`${name}\` in the method, expected \`${expected}\` as listed`,
    actual,
    expected: [expected],
    note: `A link prints the listed amount by itself: \`[${name}](#${line.anchor})\`. Of a part, say so: "${actual} of the ${name}", "the remaining ${actual}".`,
  }
}
