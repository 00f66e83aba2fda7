import {placeInPassage} from '../../cookbook/passage-place.ts'
import {type TemperatureMention, temperaturesIn} from '../../cookbook/prose/temperatures.ts'
import {roundedText} from '../../units/format-figure.ts'
import {stepsOf} from '../method/ingredient-mentions.ts'
import type {Rule} from '../rule.ts'

export const scalesAgree: Rule = {
  id: 'scales-agree',
  severity: 'warning',
  summary: 'A temperature in °C with another scale beside it is one temperature.',
  why: 'Readers take the scale of their oven or thermometer; a slip between scales undercooks or burns.',
  source: 'NIST Special Publication 811 (2008), Appendix B.8: t/°C = (t/°F − 32)/1.8.',
  *check({recipe}) {
    for (const passage of stepsOf(recipe)) {
      const found = temperaturesIn(passage.text)
      for (const [index, right] of found.entries()) {
        const left = found.slice(0, index).findLast((each) => each.scale === 'C' && !each.isFan)
        if (!left || !isBeside(passage.text, left, right) || isClose(left, right)) continue
        const expected =
          right.scale === 'F' ? `${roundedText((left.lowCelsius * 9) / 5 + 32, 0)} °F` : left.text
        yield {
          place: placeInPassage(passage, right.from, right.to),
          reason: `Temperature \`${right.text}\` beside \`${left.text}\`, expected \`${expected}\``,
          actual: right.text,
          expected: [expected],
          note: 'Two settings of one oven are written in one scale, or with words between them.',
        }
      }
    }
  },
}

/** Brackets, slashes and the fan's setting stand between the two scales of one temperature. */
function isBeside(text: string, left: TemperatureMention, right: TemperatureMention): boolean {
  if (right.scale === 'C') return false
  return /^(?:[\s(,/=]|or|fan|oven|convection|\d{2,3}|°|C|ºC)*$/i.test(
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
