import {isComplete} from '../../src/food/figures.ts'
import {
  type BakersPercentages,
  bakersPercentages,
} from '../../src/nutrition/baking/bakers-percentages.ts'
import {type OtherTin, otherTins} from '../../src/nutrition/baking/usual-tins.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {formatFigure, roundedText} from '../../src/units/format-figure.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {withDecimal} from '../words/decimal.ts'
import type {Words} from '../words/en.ts'
import {scaledFrom} from './line-notes.ts'
import {tinText} from './tin-text.ts'

/** Baker's percentages, and other tins; undefined where there is no flour to speak of. */
export function bakingPart({words}: Site, computed: Computed): Part {
  const formula = bakersPercentages(computed)
  if (formula === undefined) return undefined
  const pan = computed.recipe.pan?.value
  return (
    <section aria-labelledby="part-baking">
      <h2 id="part-baking">{words.baking.title}</h2>
      <div class="pair">
        <div>{formulaPart(formula, words)}</div>
        {pan === undefined ? undefined : <div>{tinsPart(otherTins(pan), words)}</div>}
      </div>
    </section>
  )
}

function formulaPart(formula: BakersPercentages, words: Words): Part {
  const {baking} = words
  return (
    <>
      <h3>{baking.formula}</h3>
      <table class="baking">
        <thead>
          <tr>
            <th scope="col">{baking.ingredient}</th>
            <th scope="col">{baking.weight}</th>
            <th scope="col">{baking.ofFlour}</th>
          </tr>
        </thead>
        <tbody>
          {formula.rows.map(({food, grams, percent}) => (
            <tr>
              <th scope="row">{food.name}</th>
              <td data-scaled={scaledFrom(grams)}>
                {withDecimal(formatFigure(grams, 'g'), words)}
              </td>
              <td>{withDecimal(`${roundedText(percent, 1)} %`, words)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{hydrationText(formula, words)}</p>
      <p class="rest">{baking.opened}</p>
    </>
  )
}

/** Water by flour; with that of milk and the rest, where it makes a difference. */
function hydrationText({hydrationPercent, effectiveHydration}: BakersPercentages, words: Words) {
  const plain = `${roundedText(hydrationPercent, 0)} %`
  const all = `${roundedText(effectiveHydration.value, 0)} %`
  const effective = isComplete(effectiveHydration) ? all : words.atLeast(all)
  return effective === plain
    ? words.baking.hydration(plain)
    : `${words.baking.hydration(plain)} ${words.baking.effective(effective)}`
}

function tinsPart(tins: readonly OtherTin[], words: Words): Part {
  const {baking} = words
  const haveVolumes = tins.some(({byVolume}) => byVolume !== undefined)
  return (
    <>
      <h3>{baking.tins}</h3>
      <table class="baking">
        <thead>
          <tr>
            <th scope="col">{baking.tin}</th>
            <th scope="col">{haveVolumes ? baking.filledAlike : baking.sameDepth}</th>
          </tr>
        </thead>
        <tbody>
          {tins.map(({pan, byArea, byVolume = byArea}) => (
            <tr>
              <th scope="row">{tinText(pan, words)}</th>
              <td>{times(byVolume, words)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="rest">{baking.tinsNote}</p>
    </>
  )
}

function times(factor: number, words: Words): string {
  return withDecimal(`× ${roundedText(factor, 2)}`, words)
}
