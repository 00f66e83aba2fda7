import {nutrientName} from '../../food/nutrients.ts'
import {roundedText} from '../../units/format-figure.ts'
import {leastReduction} from '../comparison/minimum.ts'
import {parseComparison} from '../comparison/parse-comparison.ts'
import {isAtMost} from '../is-at-most.ts'
import type {Rule} from '../rule.ts'

export const comparisonMinimum: Rule = {
  id: 'comparison-minimum',
  severity: 'note',
  summary: 'A comparison says at least as much less as a label would have to.',
  why: 'On a packet a smaller reduction could not be called less; a page that sells nothing may say it, and should know.',
  source:
    'US: 25 %, 21 CFR 101.60–.62. EU: 30 %, sodium or salt 25 %, Regulation (EC) 1924/2006 Annex. Seen in secondary summaries.',
  *check({recipe, cookbook}) {
    const {rules} = cookbook.settings
    for (const {nutrient, text} of recipe.comparison?.statements ?? []) {
      const compared = parseComparison(text.value, nutrient)
      if (compared?.bound !== 'most') continue
      const least = leastReduction(nutrient, rules)
      if (isAtMost(least, 1 - compared.ratio)) continue
      const expected = `${roundedText(100 * least, 0)} % less`
      const law = rules === 'us' ? 'US' : 'EU'
      yield {
        place: text.place,
        reason: `Comparison of ${nutrientName[nutrient]} \`${text.value}\` is less than ${law} labelling wants, expected \`${expected}\` at least`,
        actual: text.value,
        expected: [expected],
      }
    }
  },
}
