import {nutrientWithUncertainty} from '../../food/nutrient-text.ts'
import {nutrientName} from '../../food/nutrients.ts'
import {publishedBy} from '../../nutrition/published.ts'
import {
  changeText,
  holdingWords,
  type JudgedStatement,
  judgeStatement,
} from '../comparison/judge-comparison.ts'
import {comparisonExamples} from '../comparison/parse-comparison.ts'
import {type Sides, sidesOf} from '../comparison/sides.ts'
import type {Finding, Rule} from '../rule.ts'

export const comparisonHolds: Rule = {
  id: 'comparison-holds',
  severity: 'error',
  summary: 'A comparison holds, whichever way the figures of both dishes are uncertain.',
  why: 'It goes stale twice as fast as a figure: a change to either recipe can undo it.',
  source:
    'Relative claims: 21 CFR 101.13(j); Regulation (EC) 1924/2006 Article 9. Uncertainty: JCGM 100:2008 (GUM), k = 2.',
  *check({recipe, computed, cookbook, all}) {
    if (!recipe.comparison) return
    const {sides, problem} = sidesOf(computed, recipe.comparison, {cookbook, all})
    if (problem) yield problem
    if (!sides) return
    const publishing = publishedBy(cookbook.settings, recipe)
    for (const statement of recipe.comparison.statements) {
      const judged = judgeStatement(statement, sides, publishing)
      if (judged.outcome !== 'holds') yield finding(judged, sides)
    }
  },
}

function finding(judged: JudgedStatement, sides: Sides): Finding {
  const {nutrient, text} = judged.statement
  const subject = `Compared with \`${sides.name}\`, ${nutrientName[nutrient]} \`${text.value}\``
  const base = {place: text.place, actual: text.value}
  if (judged.outcome === 'unread') {
    const examples = comparisonExamples.map((each) => `\`${each}\``).join(', ')
    return {
      ...base,
      reason: `${subject} cannot be read, expected words such as ${examples}`,
      note: `The words are about ${nutrientName[nutrient]}; another nutrient has its own key.`,
    }
  }
  if (!judged.ratio) {
    const missing = new Set([...judged.here.missing, ...judged.there.missing])
    const foods = [...missing].map((food) => `\`${food}\``).join(', ')
    const expected = foods
      ? `a figure for ${foods}`
      : `some ${nutrientName[nutrient]} in \`${sides.name}\``
    return {...base, reason: `${subject} cannot be checked, expected ${expected}`}
  }
  const right = judged.compared && holdingWords(judged.ratio, judged.compared)
  return {
    ...base,
    reason: `${subject} per ${sides.basis}, expected ${right ? `\`${right}\`` : 'no such difference'} from the ingredients`,
    expected: right ? [right] : [],
    note: `It has ${changeText(judged.ratio)}: this dish ${nutrientWithUncertainty(nutrient, judged.here)}, ${sides.name} ${nutrientWithUncertainty(nutrient, judged.there)}. A comparison has to hold at the end of the uncertainty that is against it.`,
  }
}
