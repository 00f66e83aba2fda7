import {placeInPassage} from '../../cookbook/passage-place.ts'
import {temperaturesIn} from '../../cookbook/prose/temperatures.ts'
import type {Computed} from '../../nutrition/computed.ts'
import {isAtMost} from '../is-at-most.ts'
import {ingredientMentions, stepsOf} from '../method/ingredient-mentions.ts'
import type {Rule} from '../rule.ts'
import {
  hazardOf,
  minimumCelsius,
  rawLines,
  temperatureSource,
  temperatureText,
} from '../safety/hazard.ts'
import {isHeated} from '../safety/heat.ts'
import {shareOf} from '../safety/share-of.ts'

export const eggDishTemperature: Rule = {
  id: 'egg-dish-temperature',
  severity: 'warning',
  summary: 'A cooked egg dish says when it is done: 71 °C (160 °F) inside, or set and firm.',
  why: 'The middle of a quiche or frittata is the last to be safe from Salmonella.',
  source: temperatureSource,
  *check({recipe, computed}) {
    if (!isEggDish(computed)) return
    const [raw] = rawLines(computed, 'egg')
    const steps = stepsOf(recipe)
    const mention = ingredientMentions(computed).findLast(({lines}) => raw && lines.includes(raw))
    if (!raw || !mention) return
    if (!steps.slice(steps.indexOf(mention.passage)).some(isHeated)) return
    if (steps.some(({text}) => isDone.test(text) || isSoft.test(text) || isHotEnough(text))) return
    const minimum = temperatureText('egg')
    yield {
      place: placeInPassage(mention.passage, mention.from, mention.to),
      reason: `Egg dish without a sign that it is done, expected \`${minimum}\` inside or \`until set and firm\``,
      actual: raw.line.name.value,
      expected: [minimum, 'until set and firm'],
      note: 'Write it into the step that cooks it. Local food-safety rules come first.',
    }
  },
}

/**
 * Eggs that make the dish, and not a dough: the shares are the project's choice. A cake's own signs
 * (risen, a clean skewer) are another matter.
 */
const leastEggRatio = 0.08
const mostFlourRatio = 0.05
const eggDishName = /\b(?:quiche|frittata|omelette|tortilla|custard|flan|souffl[eé]|strata)\b/i

function isEggDish(computed: Computed): boolean {
  const eggs = shareOf(computed, (food) => hazardOf(food) === 'egg')
  const flour = shareOf(computed, ({traits}) => traits.has('flour'))
  const isNamed = eggDishName.test(computed.recipe.title.value)
  return eggs >= leastEggRatio && (isNamed || flour < mostFlourRatio)
}

const isDone =
  /\b(?:(?:is|are|just|until|completely|fully|has|have|to|eggs?|it|and|nearly|almost) set\b(?! aside)|firm\b|hard[- ](?:boil|cook)\w*|comes? out clean|no (?:liquid|runny|wet)|cooked through|solid)/i
/** Those are raw-egg's business. */
const isSoft = /\b(?:runny|soft[- ]boil\w*|softly set|barely set|soft yolks?)\b/i

function isHotEnough(text: string): boolean {
  return temperaturesIn(text).some(
    ({of, lowCelsius}) => of !== 'oven' && isAtMost(minimumCelsius('egg'), lowCelsius),
  )
}
