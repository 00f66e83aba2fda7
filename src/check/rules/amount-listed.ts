import {placeInPassage} from '../../cookbook/passage-place.ts'
import {type AmountMention, amountsIn} from '../../cookbook/prose/amounts.ts'
import {kitchenOf} from '../../cookbook/understand.ts'
import type {Food} from '../../food/food.ts'
import type {FoodIndex} from '../../food/food-index.ts'
import {gramsOf} from '../../nutrition/weigh.ts'
import {formatFigure} from '../../units/format-figure.ts'
import {ingredientMentions, stepsOf} from '../method/ingredient-mentions.ts'
import type {Finding, Rule} from '../rule.ts'

/** Less than this is a pinch or a splash of little consequence; kcal of the batch, our choice. */
const leastKcal = 20

/** How many words a food's name may have in a sentence. */
const mostWords = 4

/** Foods that methods call by a shorter name than the table does. */
const shortNames: ReadonlyMap<string, string> = new Map([
  ['oil', 'rapeseed oil'],
  ['vegetable oil', 'rapeseed oil'],
])

export const amountListed: Rule = {
  id: 'amount-listed',
  severity: 'warning',
  summary: 'An amount of food in the method is of an ingredient on the list.',
  why: 'What the method adds and the list leaves out is in the dish and in none of its figures.',
  *check({recipe, computed, cookbook}) {
    const kitchen = kitchenOf(cookbook.settings, cookbook.foods)
    const mentions = ingredientMentions(computed)
    for (const passage of stepsOf(recipe)) {
      const listed = mentions.filter((mention) => mention.passage === passage)
      for (const amount of amountsIn(passage.text, kitchen)) {
        if (amount.amount.kind === 'count') continue
        const name = nameBehind(passage.text, amount.to, cookbook.foods)
        if (!name || listed.some(({from, to}) => from < name.to && amount.from < to)) continue
        const found = finding(amount, name.food, cookbook.settings.scaleGrams)
        if (found) yield {...found, place: placeInPassage(passage, amount.from, name.to)}
      }
    }
  },
}

/** The food whose name stands behind an amount: the longest name that is one, never a guess. */
function nameBehind(
  text: string,
  at: number,
  foods: FoodIndex,
): {readonly food: Food; readonly to: number} | undefined {
  const lead = /^\s*(?:of\s+)?(?:the\s+)?/.exec(text.slice(at))?.[0].length ?? 0
  const from = at + lead
  const words = /^[\p{L}-]+(?: [\p{L}-]+){0,3}/u.exec(text.slice(from))?.[0].split(' ') ?? []
  for (let count = Math.min(mostWords, words.length); count > 0; count--) {
    const name = words.slice(0, count).join(' ').toLowerCase()
    const food = foods.lookUp(shortNames.get(name) ?? name)
    if (food) return {food, to: from + name.length}
  }
  return undefined
}

function finding(
  {amount}: AmountMention,
  food: Food,
  scaleGrams: number,
): Omit<Finding, 'place'> | undefined {
  const grams = gramsOf(food, amount, scaleGrams)
  const kcal = grams ? (grams.value * food.per100g.energy.value) / 100 : 0
  if (kcal < leastKcal) return undefined
  return {
    reason: `Amount \`${amount.text}\` of \`${food.name}\` in the method, expected it on the list: it adds about \`${formatFigure(kcal, 'kcal')}\``,
    actual: amount.text,
    note: `Add a line such as \`${food.name}: ${amount.text}\`; where it does not end up in the dish, say so with \`eaten\`, or \`counted: false\` and \`because\`.`,
  }
}
