import type {Rule} from '../rule.ts'
import {temperatureSource} from '../safety/hazard.ts'
import {missingTemperature} from '../safety/inside-temperatures.ts'

export const poultryTemperature: Rule = {
  id: 'poultry-temperature',
  severity: 'warning',
  summary: 'A method that cooks raw poultry says how hot it must be inside: 74 °C (165 °F).',
  why: 'Colour and time do not show that Salmonella and Campylobacter are dead; a thermometer does. An hour or more of simmering needs none.',
  source: temperatureSource,
  *check({computed}) {
    yield* missingTemperature(computed, 'poultry')
  },
}
