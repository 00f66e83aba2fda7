import type {Stated} from '../../cookbook/recipe.ts'
import {isComplete} from '../../food/figures.ts'
import {nutrientName, nutrientUnit} from '../../food/nutrients.ts'
import type {Computed} from '../../nutrition/computed.ts'
import {contributions} from '../../nutrition/contributions.ts'
import {formatUncertain} from '../../units/format-figure.ts'
import type {Finding, Rule} from '../rule.ts'
import {staleHints} from '../stale-hints.ts'
import {shareOfBatch} from '../stated-basis.ts'
import {asFineAs, rewrittenFigure} from '../stated-text.ts'
import {type Judged, judge} from '../verdict.ts'

/** How many ingredients a message names. */
const mostContributors = 3

export const statedMacros: Rule = {
  id: 'stated-macros',
  severity: 'error',
  summary: 'Every stated figure follows from the weighed ingredients.',
  why: 'Readers log the figures and plan their days by them; a changed label, amount or portion leaves them stale without a sign.',
  source:
    'Uncertainty: JCGM 100:2008 (GUM), k = 2. Tolerance: the policy named in cookbook.yaml, each with its own source.',
  *check({recipe, computed, cookbook}) {
    const {stated} = recipe
    if (stated === undefined) return
    const judged = judge(stated, computed, cookbook.settings)
    const hints = staleHints(judged, stated, computed, cookbook.settings)
    for (const one of judged) {
      if (one.verdict === 'drift') {
        yield drift(one, {stated, computed, hints})
      }
    }
  },
}

interface Context {
  readonly stated: Stated
  readonly computed: Computed
  readonly hints: readonly string[]
}

function drift({stated: figure, computed: right, against}: Judged, context: Context): Finding {
  const {stated, computed, hints} = context
  const name = nutrientName[figure.nutrient]
  const expected = formatUncertain(right, nutrientUnit[figure.nutrient])
  const rightText = asFineAs(figure, right.value)
  const rewritten = isComplete(right) ? rewrittenFigure(figure, right.value) : undefined
  const share = shareOfBatch(stated, computed)
  const most = contributions(computed, against)
    .slice(0, mostContributors)
    .map(({line, value}) => `${line.line.name.value} ${asFineAs(figure, value * share)}`)
  return {
    place: figure.place,
    reason: `Stated ${name} \`${figure.text}\` per ${stated.basis}, expected \`${expected}\` from the ingredients`,
    actual: figure.text,
    expected: [rightText],
    ...(rewritten !== undefined && {fix: {place: figure.place, text: rewritten}}),
    note: [
      `Write \`${name}: ${rightText}\`, or mend the ingredient that is wrong.`,
      ...(most.length > 0 ? [`Most of it: ${most.join(', ')}.`] : []),
      ...hints,
    ].join('\n'),
  }
}
