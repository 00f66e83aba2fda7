import type {Settings} from '../cookbook/cookbook.ts'
import type {Stated} from '../cookbook/recipe.ts'
import type {Figure} from '../food/figures.ts'
import type {Computed} from '../nutrition/computed.ts'
import {wholeGrams} from '../nutrition/whole-grams.ts'
import {scaled} from '../units/uncertain.ts'
import {shareOfBatch} from './stated-basis.ts'
import {type Judged, verdict} from './verdict.ts'

/** Servings a hint looks through: more would fit anything by chance. */
const mostServings = 24

/**
 * What single slip would explain all the stated figures at once: another number of servings, or
 * the carbohydrate of the other convention. A guess for the writer to check, never applied.
 */
export function staleHints(
  judged: readonly Judged[],
  stated: Stated,
  computed: Computed,
  settings: Settings,
): readonly string[] {
  if (!judged.some(({verdict: found}) => found === 'drift')) return []
  return [
    ...servingsHint(judged, stated, computed, settings),
    ...carbohydrateHint(judged, stated, computed, settings),
  ]
}

function servingsHint(
  judged: readonly Judged[],
  {basis}: Stated,
  computed: Computed,
  settings: Settings,
): readonly string[] {
  const serves = computed.recipe.serves?.value
  // One figure alone fits some number of servings too easily.
  if (basis !== 'serving' || serves === undefined || judged.length < 2) return []
  const whole = wholeGrams(computed).value
  for (let other = 1; other <= mostServings; other++) {
    if (other === serves) continue
    const grams = whole / other
    const fits = judged.every(
      ({stated: figure, computed: against}) =>
        verdict(figure, rescaled(against, serves / other), {grams, settings}) !== 'drift',
    )
    if (fits) return [`All of them would follow from \`serves: ${other}\`.`]
  }
  return []
}

function rescaled(figure: Figure, factor: number): Figure {
  return {...scaled(figure, factor), missing: figure.missing}
}

function carbohydrateHint(
  judged: readonly Judged[],
  stated: Stated,
  computed: Computed,
  settings: Settings,
): readonly string[] {
  const carbohydrate = judged.find(
    ({stated: {nutrient}, verdict: found}) => nutrient === 'carbohydrate' && found === 'drift',
  )
  if (carbohydrate === undefined) return []
  const isTotal = settings.carbohydrate === 'total'
  const other = computed.batch[isTotal ? 'availableCarbohydrate' : 'carbohydrate']
  const share = shareOfBatch(stated, computed)
  const grams = wholeGrams(computed).value * share
  if (verdict(carbohydrate.stated, rescaled(other, share), {grams, settings}) !== 'agrees')
    return []
  return [
    isTotal
      ? 'It agrees with the carbohydrate without fibre: `carbohydrate: available` in cookbook.yaml publishes that one.'
      : 'It agrees with the carbohydrate with fibre: `carbohydrate: total` in cookbook.yaml publishes that one.',
  ]
}
