import type {Recipe} from '../../cookbook/recipe.ts'
import type {Food} from '../../food/food.ts'
import {meats} from '../../food/meats.ts'
import type {ComputedLine} from '../../nutrition/computed.ts'
import {formatFigure} from '../../units/format-figure.ts'
import type {Rule} from '../rule.ts'

/** Raw meat leaner than this gives too little fat to pour off; g per 100 g. */
const fattyFromGrams = 10

/**
 * Share of its fat that browned and drained mince can lose. USDA SR28 (2015), ground beef 80/20:
 * raw 23572 against pan-browned crumbles 23575, by conservation of protein, keeps 55 %.
 */
const mostLostRatio = 0.45

const browns = /\b(?:brown|fry|fries|frying|sear|render|sizzle)/i
const drains =
  /\b(?:drain|pour|spoon|tip|skim|strain|ladle)\w*\b[^.]{0,60}\b(?:fat|dripping|grease|juices)/i

/** "Drain" with nothing but the meat, or nothing at all, behind it; beans and pasta are drained too. */
const drainsIt =
  /\bdrain(?:ed|ing)?(?:\s+(?:it|them|well|off|thoroughly|the (?:meat|mince|beef|pork|lamb|sausages?)))*\s*(?:[.,;:)]|and\b|$)/i

export const fatPouredOff: Rule = {
  id: 'fat-poured-off',
  severity: 'warning',
  summary: 'A recipe that browns fatty meat and drains it says how much fat left the dish.',
  why: 'A plain sum of the ingredients counts fat that was thrown away, up to 45 % of what the meat held, and its energy.',
  source:
    'USDA SR28 (2015), ground beef 80/20 raw (23572) and pan-browned crumbles (23575): 55 % of the fat is kept.',
  *check({recipe, computed}) {
    if (!isDrained(recipe)) return
    for (const computedLine of computed.lines) {
      const food = fattyMeat(computedLine)
      if (!food || computedLine.line.pouredOff) continue
      const {line, adds} = computedLine
      const most = formatFigure(adds.fat.value * mostLostRatio, 'g', 0)
      yield {
        place: line.amount.place,
        reason: `Fat of \`${line.name.value}\` is drained in the method, expected \`poured off\` on its line: it can be up to \`${most}\``,
        actual: line.amount.value.text,
        note: 'Weigh what is poured off and write `{ amount: …, poured off: … }`, or name the cooked food: `poured off: { like: … }`.',
      }
    }
  },
}

function isDrained({method}: Recipe): boolean {
  const steps = method.passages.filter(({kind}) => kind !== 'heading').map(({text}) => text)
  const browned = steps.filter((text) => browns.test(text))
  return browned.length > 0 && (steps.some(saysFat) || browned.some((text) => drainsIt.test(text)))
}

function saysFat(text: string): boolean {
  return drains.test(text)
}

function fattyMeat({ingredient, role}: ComputedLine): Food | undefined {
  if (ingredient.kind !== 'food' || role !== 'counted') return undefined
  const {food} = ingredient
  const isMeat = food.from.some((origin) => meats.has(origin))
  const isFatty = food.per100g.fat.value >= fattyFromGrams
  return isMeat && isFatty && food.state === 'raw' && !food.traits.has('fat') ? food : undefined
}
