import {placeInPassage} from '../../cookbook/passage-place.ts'
import {type TemperatureMention, temperaturesIn} from '../../cookbook/prose/temperatures.ts'
import {roundedText} from '../../units/format-figure.ts'
import {stepsOf} from '../method/ingredient-mentions.ts'
import type {Rule} from '../rule.ts'

export const scalesAgree: Rule = {
  id: 'scales-agree',
  severity: 'warning',
  summary:
    'One temperature in two scales, or for an oven with and without a fan, is one temperature.',
  why: 'Readers take the scale of their oven or thermometer; a slip between scales undercooks or burns.',
  source:
    'NIST Special Publication 811 (2008), Appendix B.8: t/°C = (t/°F − 32)/1.8. Gas marks, and 10 to 25 °C less with a fan: common practice, no source.',
  *check({recipe}) {
    for (const passage of stepsOf(recipe)) {
      const found = temperaturesIn(passage.text)
      for (const [index, right] of found.entries()) {
        const beside = found
          .slice(0, index)
          .toReversed()
          .filter((left) => isBeside(passage.text, left, right))
        const expected = disagreement(beside, right)
        if (expected === undefined) continue
        yield {
          place: placeInPassage(passage, right.from, right.to),
          reason: `Temperature \`${right.text}\` beside \`${expected.left.text}\`, expected \`${expected.text}\``,
          actual: right.text,
          expected: [expected.text],
          note: 'Two settings of one oven are written in one scale, or with words between them.',
        }
      }
    }
  },
}

interface Disagreement {
  readonly left: TemperatureMention
  readonly text: string
}

/** What a temperature should be by the one it stands beside; undefined where they are one. */
function disagreement(
  beside: readonly TemperatureMention[],
  right: TemperatureMention,
): Disagreement | undefined {
  const others = beside.filter(({scale, isFan}) => scale !== right.scale && isFan === right.isFan)
  const left = others.find(({scale}) => scale === 'C') ?? others.at(0)
  if (left) return isClose(left, right) ? undefined : {left, text: inScaleOf(right, left)}
  const twin = beside.find(({scale, isFan}) => scale === right.scale && isFan !== right.isFan)
  if (!twin || right.scale === 'gas') return undefined
  const lessWithFan = (right.isFan ? 1 : -1) * (twin.lowCelsius - right.lowCelsius)
  if (lessWithFan >= leastFanCelsius && lessWithFan <= mostFanCelsius) return undefined
  const celsius = twin.lowCelsius + (right.isFan ? -usualFanCelsius : usualFanCelsius)
  return {left: twin, text: degrees(celsius, right.scale)}
}

/** How much cooler an oven with a fan is set; sources give 10 to 25 °C, and ovens have steps. */
const [leastFanCelsius, usualFanCelsius, mostFanCelsius] = [5, 20, 30]

/** The temperature of `left` in the scale of `right`; a gas mark is told by its temperature. */
function inScaleOf({scale}: TemperatureMention, left: TemperatureMention): string {
  return scale === 'gas' ? left.text : degrees(left.lowCelsius, scale)
}

function degrees(celsius: number, scale: 'C' | 'F'): string {
  return scale === 'C'
    ? `${roundedText(celsius, 0)} °C`
    : `${roundedText((celsius * 9) / 5 + 32, 0)} °F`
}

/** Brackets, slashes and the fan's setting stand between the two scales of one temperature. */
function isBeside(text: string, left: TemperatureMention, right: TemperatureMention): boolean {
  return /^(?:[\s(,/=]|or|fan|oven|convection|\d{2,3}(?!\d)|°|[CF]|º[CF])*$/i.test(
    text.slice(left.to, right.from),
  )
}

/** Ovens are set in steps of 10 °C and 25 °F; what is measured inside is written to the degree. */
const ovenSlackCelsius = 12
const insideSlackCelsius = 1.5
const hottestInsideCelsius = 105

function isClose(left: TemperatureMention, right: TemperatureMention): boolean {
  const isOven = left.of === 'oven' || left.lowCelsius > hottestInsideCelsius
  const slack = isOven ? ovenSlackCelsius : insideSlackCelsius
  return (
    right.lowCelsius <= left.highCelsius + slack && left.lowCelsius <= right.highCelsius + slack
  )
}
