import {placeInPassage} from '../../cookbook/passage-place.ts'
import {durationsIn} from '../../cookbook/prose/durations.ts'
import {sentencesOf} from '../../cookbook/prose/sentences.ts'
import type {Recipe} from '../../cookbook/recipe.ts'
import {stepsOf} from '../method/ingredient-mentions.ts'
import type {Rule} from '../rule.ts'
import {minimumCelsius, rawLines, temperatureSource} from '../safety/hazard.ts'
import {
  missingTemperature,
  reaches,
  simmersLong,
  temperaturesOf,
} from '../safety/inside-temperatures.ts'

/** The rest belongs to the minimum. */
const restMinutes = 3

export const meatTemperature: Rule = {
  id: 'meat-temperature',
  severity: 'warning',
  summary:
    'A method that cooks a whole cut of raw meat gives 63 °C (145 °F) inside and a rest of 3 minutes.',
  why: 'The rest is part of the minimum: the heat goes on killing what the temperature alone has not.',
  source: temperatureSource,
  *check({recipe, computed}) {
    yield* missingTemperature(computed, 'wholeMeat')
    const hasWholeMeat = rawLines(computed, 'wholeMeat').length > 0
    if (!hasWholeMeat || simmersLong(recipe) || rests(recipe)) return
    // At the temperature of ground meat nothing needs a rest.
    const given = temperaturesOf(computed, 'wholeMeat').filter((each) => reaches(each, 'wholeMeat'))
    const isHotEnough = given.some(
      ({temperature}) => temperature.lowCelsius >= minimumCelsius('groundMeat'),
    )
    const [first] = given
    if (!first || isHotEnough) return
    const {passage, temperature} = first
    yield {
      place: placeInPassage(passage, temperature.from, temperature.to),
      reason: `Meat at \`${temperature.text}\` without a rest, expected \`${restMinutes} minutes\` of rest or more`,
      actual: temperature.text,
      expected: [`${restMinutes} minutes`],
      note: `Write it into the step, such as "rest it for ${restMinutes} minutes or more". Local food-safety rules come first.`,
    }
  },
}

function rests(recipe: Recipe): boolean {
  return stepsOf(recipe).some(({text}) =>
    sentencesOf(text).some(({from, to}) => {
      const durations = durationsIn(text).filter((each) => each.from >= from && each.from < to)
      return (
        /\b(?:rest|rests|resting|stand|sit)\b/i.test(text.slice(from, to)) &&
        durations.some(({highMinutes}) => highMinutes >= restMinutes)
      )
    }),
  )
}
