import type {Rule} from '../rule.ts'
import {shellfishSource, temperatureSource} from '../safety/hazard.ts'
import {missingTemperature} from '../safety/inside-temperatures.ts'

export const fishTemperature: Rule = {
  id: 'fish-temperature',
  severity: 'warning',
  summary:
    'A method that cooks raw fish or shellfish says when it is done: 63 °C (145 °F), or opaque and flaking.',
  why: 'Half-raw fish can carry live parasites and bacteria; fish that is eaten raw must have been frozen first.',
  source: `${temperatureSource} ${shellfishSource} Freezing of fish for eating raw: FDA Food Code 3-402.11 (from memory: −20 °C for 7 days or −35 °C for 15 hours).`,
  *check({computed}) {
    yield* missingTemperature(computed, 'fish', {
      test: /\bflak(?:e|es|ed|ing|y)\b|\bopaque\b/i,
      text: 'until it is opaque and flakes',
    })
    yield* missingTemperature(computed, 'shellfish', {
      test: /\bopaque\b|\bpearly\b|\b(?:turns?|are|is|until) (?:\w+ )?pink\b|\bopen(?:s|ed)?\b/i,
      text: 'until it is opaque, or the shells have opened',
    })
  },
}
