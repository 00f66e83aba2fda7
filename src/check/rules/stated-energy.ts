import {methodName} from '../../food/method-factors.ts'
import {formatFigure, roundedText} from '../../units/format-figure.ts'
import {type Reconciliation, reconcile} from '../reconcile-energy.ts'
import type {Finding, Rule} from '../rule.ts'

export const statedEnergy: Rule = {
  id: 'stated-energy',
  severity: 'warning',
  summary: 'Stated energy fits the stated protein, fat and carbohydrate by some recognised method.',
  why: 'A reader who multiplies the macros out must not find another energy; where fibre, polyols or alcohol explain the gap, nothing is wrong.',
  source:
    '21 CFR 101.9(c)(1)(i) (general factors, and with fibre and sugar alcohols at their own); Regulation (EU) 1169/2011 Annex XIV.',
  *check({recipe, computed, cookbook}) {
    const found = reconcile(recipe, computed, cookbook.settings)
    if (found && !found.fits && !found.followsFromFoods) yield finding(found)
  },
}

function finding({stated, general, byMethod, gapPercent, wouldExplain}: Reconciliation): Finding {
  const expected = formatFigure(general.value, 'kcal')
  return {
    place: stated.place,
    reason: `Stated energy \`${stated.text}\`, expected \`${expected}\` from the stated macros by ${methodName.energyGeneral}, ${roundedText(gapPercent, 1)} % apart`,
    actual: stated.text,
    expected: [expected],
    note: [
      ...byMethod.map(
        ({method, energy}) => `${methodName[method]}: ${formatFigure(energy.value, 'kcal')}.`,
      ),
      ...wouldExplain,
    ].join('\n'),
  }
}
