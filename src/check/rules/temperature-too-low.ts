import {placeInPassage} from '../../cookbook/passage-place.ts'
import type {Rule} from '../rule.ts'
import {
  type Hazard,
  hazards,
  rawLines,
  shellfishSource,
  temperatureSource,
  temperatureText,
} from '../safety/hazard.ts'
import {reaches, temperaturesOf} from '../safety/inside-temperatures.ts'

const checked: readonly Hazard[] = [
  'poultry',
  'groundMeat',
  'wholeMeat',
  'fish',
  'shellfish',
  'egg',
]

export const temperatureTooLow: Rule = {
  id: 'temperature-too-low',
  severity: 'error',
  summary:
    'A temperature inside raw meat, fish, shellfish or eggs is no lower than the safe minimum.',
  why: 'A reader with a thermometer stops at the figure they read.',
  source: `${temperatureSource} ${shellfishSource}`,
  *check({computed}) {
    for (const hazard of checked) {
      const [raw] = rawLines(computed, hazard)
      if (!raw) continue
      const given = temperaturesOf(computed, hazard)
      const [first] = given
      // Meat may come off the heat earlier when the text says where it ends.
      if (!first || given.some((each) => reaches(each, hazard))) continue
      const {passage, temperature} = first
      const minimum = temperatureText(hazard)
      yield {
        place: placeInPassage(passage, temperature.from, temperature.to),
        reason: `Temperature \`${temperature.text}\` inside \`${raw.line.name.value}\`, expected \`${minimum}\` or more for ${hazards[hazard].name}`,
        actual: temperature.text,
        expected: [minimum],
        note: 'Where it is held at a lower temperature for long enough, accept this finding with the time and its source. Local food-safety rules come first.',
      }
    }
  },
}
