import {placeInPassage} from '../../cookbook/passage-place.ts'
import {type TemperatureMention, temperaturesIn} from '../../cookbook/prose/temperatures.ts'
import {stepsOf} from '../method/ingredient-mentions.ts'
import type {Rule} from '../rule.ts'

export const ovenInMethod: Rule = {
  id: 'oven-in-method',
  severity: 'warning',
  summary: 'The oven of the front matter is the oven of the method.',
  why: 'The cook sets the oven by one of them and bakes by the other.',
  source:
    'A fan oven is set 20 °C lower, gas marks by the British tables: common practice, no source (sources differ by up to 10 °C).',
  *check({recipe}) {
    const {oven} = recipe
    if (!oven) return
    const settings = temperaturesIn(oven.value)
    const inMethod = stepsOf(recipe).flatMap((passage) =>
      temperaturesIn(passage.text)
        .filter((temperature) => temperature.of === 'oven')
        .map((temperature) => ({passage, temperature})),
    )
    const [first] = inMethod
    if (settings.length === 0 || !first) return
    const isSaid = inMethod.some(({temperature}) =>
      settings.some((each) => isSame(each, temperature)),
    )
    if (isSaid) return
    const {passage, temperature} = first
    yield {
      place: placeInPassage(passage, temperature.from, temperature.to),
      reason: `Oven \`${temperature.text}\` in the method, expected \`${oven.value}\` as in the front matter`,
      actual: temperature.text,
      expected: [oven.value],
      note: 'Where the oven changes during baking, `oven` is one of its settings.',
    }
  },
}

/** Between scales, and between ovens with and without a fan, tables differ by this much. */
const betweenTablesCelsius = 10
const fanCelsius = 20

function isSame(left: TemperatureMention, right: TemperatureMention): boolean {
  const slack =
    left.scale === right.scale && left.isFan === right.isFan ? 0.5 : betweenTablesCelsius
  const [one, other] = [left, right].map(asWithoutFan)
  return (
    one !== undefined &&
    other !== undefined &&
    one.low <= other.high + slack &&
    other.low <= one.high + slack
  )
}

function asWithoutFan({lowCelsius, highCelsius, isFan}: TemperatureMention) {
  const more = isFan ? fanCelsius : 0
  return {low: lowCelsius + more, high: highCelsius + more}
}
