import type {Rule} from '../rule.ts'
import {temperatureSource} from '../safety/hazard.ts'
import {missingTemperature} from '../safety/inside-temperatures.ts'

export const groundMeatTemperature: Rule = {
  id: 'ground-meat-temperature',
  severity: 'warning',
  summary: 'A method that cooks raw ground meat says how hot it must be inside: 71 °C (160 °F).',
  why: 'Mincing carries what was on the surface, E. coli among it, to the middle, and browned is not yet safe.',
  source: temperatureSource,
  *check({computed}) {
    yield* missingTemperature(computed, 'groundMeat')
  },
}
