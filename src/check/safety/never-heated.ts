import {sentencesOf} from '../../cookbook/prose/sentences.ts'
import type {Computed, ComputedLine} from '../../nutrition/computed.ts'
import {ingredientMentions, stepsOf} from '../method/ingredient-mentions.ts'
import {isHeated} from './heat.ts'

/** Words that a heated step may have instead of those that only ever mean heat. */
const maybeHot =
  /\b(?:brown|crisp|render|sizzl|char|blacken|sweat|soften|warm|melt|toast|smok|caramelis|caramel|thicken|bubbl|reduce|curdle|scald|blanch|confit|sous|flamb|hot\b|heat|air[- ]?fry|slow cooker|pressure|pan\b|pot\b|tray|tin\b|hob|stove|flame|coals|barbecue)/i

/** The food may be among these, though its name comes only when it is done. */
const everything =
  /\b(?:everything|all|rest|remaining|ingredients|contents|mixture|mix|meat|filling|them|it)\b/i

/** A sentence of the method. */
interface Sentence {
  readonly text: string
  readonly isAfter: boolean
}

/**
 * Whether a method names a line and nothing from there on could heat it: no word of heat, and no
 * heat before that may have been for everything. Where the method never names it, nobody can tell.
 */
export function isNeverHeated(computed: Computed, line: ComputedLine): boolean {
  const {recipe} = computed
  if (recipe.oven !== undefined) return false
  const first = ingredientMentions(computed).find(({lines}) => lines.includes(line))
  if (first === undefined) return false
  const steps = stepsOf(recipe)
  const step = steps.indexOf(first.passage)
  const sentences = steps.flatMap(({text}, index) =>
    sentencesOf(text).map(
      ({from, to}): Sentence => ({
        text: text.slice(from, to),
        isAfter: index > step || (index === step && to > first.from),
      }),
    ),
  )
  return sentences.every(({text, isAfter}) => {
    const isHot = isHeated({text}) || maybeHot.test(text)
    return !isHot || (!isAfter && !everything.test(text))
  })
}
