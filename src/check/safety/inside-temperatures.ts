import {placeInPassage} from '../../cookbook/passage-place.ts'
import {durationsIn} from '../../cookbook/prose/durations.ts'
import {sentenceAround, sentencesOf} from '../../cookbook/prose/sentences.ts'
import {type TemperatureMention, temperaturesIn} from '../../cookbook/prose/temperatures.ts'
import type {Passage, Recipe} from '../../cookbook/recipe.ts'
import type {Computed, ComputedLine} from '../../nutrition/computed.ts'
import {isAtMost} from '../is-at-most.ts'
import {ingredientMentions, stepsOf} from '../method/ingredient-mentions.ts'
import type {Finding} from '../rule.ts'
import {type Hazard, hazards, minimumCelsius, rawLines, temperatureText} from './hazard.ts'
import {isNeverHeated} from './never-heated.ts'

/** A temperature of the food, with its passage. */
export interface InsideTemperature {
  readonly passage: Passage
  readonly temperature: TemperatureMention
}

/** Every temperature that the method wants inside the food. */
export function insideTemperatures(recipe: Recipe): readonly InsideTemperature[] {
  return stepsOf(recipe).flatMap((passage) =>
    temperaturesIn(passage.text)
      .filter((temperature) => temperature.of === 'inside')
      .map((temperature) => ({passage, temperature})),
  )
}

export function reaches({temperature}: InsideTemperature, hazard: Hazard): boolean {
  return isAtMost(minimumCelsius(hazard), temperature.lowCelsius)
}

/**
 * Temperatures that a sentence, or else its step, gives for foods of a hazard: those that name
 * them, or all where the dish has no other raw food.
 */
export function temperaturesOf(computed: Computed, hazard: Hazard): readonly InsideTemperature[] {
  const inside = insideTemperatures(computed.recipe)
  const others = Object.keys(hazards).some(
    (other) => other !== hazard && isHazard(other) && rawLines(computed, other).length > 0,
  )
  if (!others) return inside
  const raw = rawLines(computed, hazard)
  const mentions = ingredientMentions(computed)
  return inside.filter(({passage, temperature}) => {
    const sentence = sentenceAround(passage.text, temperature.from)
    const here = mentions.filter((each) => each.passage === passage)
    const near = here.filter(({from}) => from >= sentence.from && from < sentence.to)
    const named = near.some(({lines}) => isOneRaw(lines, computed)) ? near : here
    return named.some(({lines}) => lines.some((line) => raw.includes(line)))
  })
}

function isHazard(name: string): name is Hazard {
  return name in hazards
}

function isOneRaw(lines: readonly ComputedLine[], computed: Computed): boolean {
  return Object.keys(hazards).some(
    (name) => isHazard(name) && rawLines(computed, name).some((line) => lines.includes(line)),
  )
}

/**
 * An hour in simmering liquid brings any cut past every minimum: a simmer is above 85 °C (common
 * practice, no source).
 */
const longSimmerMinutes = 60
/** Long times that are none of a pot on the heat; an oven dries what it does not cook. */
const notSimmering =
  /\b(?:rest|chill|cool|fridge|refrigerat|freez|marinat|soak|prov|ris|stand|leave|left|wait|sit|oven|bak|roast|grill|barbecu|smok|overnight)\w*/i

/** Whether something simmers for so long that no thermometer is needed, in whatever words. */
export function simmersLong(recipe: Recipe): boolean {
  return stepsOf(recipe).some(({text}) => {
    const long = durationsIn(text).filter(
      ({role, lowMinutes}) => role === 'spent' && lowMinutes >= longSimmerMinutes,
    )
    return sentencesOf(text).some(
      ({from, to}) =>
        long.some((each) => each.from >= from && each.from < to) &&
        !notSimmering.test(text.slice(from, to)),
    )
  })
}

/**
 * Finds a raw food without its minimum temperature in the method.
 * @param sign what else shows that it is done, where the chart names something
 */
export function* missingTemperature(
  computed: Computed,
  hazard: Hazard,
  sign?: {readonly test: RegExp; readonly text: string},
): Iterable<Finding> {
  const {recipe} = computed
  const all = rawLines(computed, hazard)
  const cold = all.find((line) => isNeverHeated(computed, line))
  const raw = cold ?? all[0]
  const steps = stepsOf(recipe)
  if (!raw || steps.length === 0) return
  // What simmers or is measured may be another food.
  if (!cold && simmersLong(recipe)) return
  if (!cold && insideTemperatures(recipe).some((each) => reaches(each, hazard))) return
  if (sign && steps.some(({text}) => sign.test.test(text))) return
  // One that is too low has its own message.
  if (temperaturesOf(computed, hazard).length > 0) return
  const minimum = temperatureText(hazard)
  const or = sign ? `, or \`${sign.text}\`` : ''
  yield {
    place: placeOfMention(computed, raw),
    reason: `Raw \`${raw.line.name.value}\` ${cold ? 'is never heated' : 'without a temperature'} in the method, expected \`${minimum}\` inside${or}`,
    actual: raw.line.name.value,
    expected: [minimum],
    note: `Write it into the step that cooks it, such as "until the thickest part reaches ${minimum}". Local food-safety rules come first.`,
  }
}

/** Where the method last names a line and heat is near; the line itself where it never does. */
function placeOfMention(computed: Computed, line: ComputedLine): Finding['place'] {
  const mention = ingredientMentions(computed).findLast(({lines}) => lines.includes(line))
  return mention ? placeInPassage(mention.passage, mention.from, mention.to) : line.line.name.place
}
