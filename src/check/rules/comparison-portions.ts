import {formatFigure} from '../../units/format-figure.ts'
import {sidesOf} from '../comparison/sides.ts'
import {isAtMost} from '../is-at-most.ts'
import type {Rule} from '../rule.ts'

/** Servings this close weigh the same to who eats them; the project's choice. */
const sameWeightRatio = 0.05

export const comparisonPortions: Rule = {
  id: 'comparison-portions',
  severity: 'warning',
  summary: 'Dishes compared by the serving have servings of one weight.',
  why: 'A smaller serving of the very same dish has less of everything; that is no lighter dish.',
  source:
    '21 CFR 101.13(j)(2) and Regulation (EC) 1924/2006 Article 9(1) compare like amounts; how close is the project’s choice.',
  *check({recipe, computed, cookbook, all}) {
    const {comparison} = recipe
    if (!comparison || comparison.basis === '100 g' || comparison.statements.length === 0) return
    const other = sidesOf(computed, comparison, {cookbook, all}).sides?.other
    const [here, there] = [computed.portionGrams, other?.portionGrams]
    if (!other || !here || !there) return
    const [small, large] = [here.value, there.value].toSorted((left, right) => left - right)
    if (small === undefined || large === undefined) return
    if (isAtMost(large - small, sameWeightRatio * large)) return
    const [mine, theirs] = [here, there].map(({value}) => formatFigure(value, 'g'))
    yield {
      place: (comparison.recipe ?? recipe.title).place,
      reason: `Compared by the serving of \`${mine}\` with \`${other.recipe.title.value}\` of \`${theirs}\`, expected servings of one weight`,
      actual: `${mine}`,
      expected: [`${theirs}`],
      note: 'Compare by weight: `per: 100 g` in `compared with`.',
    }
  },
}
