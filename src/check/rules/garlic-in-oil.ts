import type {Position} from 'unist'
import {placeInPassage} from '../../cookbook/passage-place.ts'
import type {Food} from '../../food/food.ts'
import type {Computed} from '../../nutrition/computed.ts'
import {stepsOf} from '../method/ingredient-mentions.ts'
import type {Rule} from '../rule.ts'
import {methodText} from '../safety/heat.ts'
import {shareOf} from '../safety/share-of.ts'

export const garlicInOil: Rule = {
  id: 'garlic-in-oil',
  severity: 'error',
  summary: 'Garlic or herbs kept in oil are kept cold, and not for long.',
  why: 'Oil shuts out the air: Clostridium botulinum from the soil on garlic and herbs makes its poison there at room temperature, without smell or taste.',
  source:
    'US FDA and USDA advice on garlic in oil: refrigerate and use soon (from memory; sources differ on the number of days).',
  *check({recipe, computed}) {
    const place = keptInOil(computed)
    if (!place) return
    const {keeps} = recipe
    const text = methodText(recipe)
    const isCold =
      keeps?.fridgeDays ||
      keeps?.freezerDays ||
      /\b(?:fridge|refrigerat\w*|freez\w*|chill\w*)\b/i.test(text)
    if (keeps?.roomDays) {
      yield finding(keeps.roomDays.place, 'at room temperature')
    } else if (!isCold) {
      yield finding(place, 'without a word of the fridge')
    }
  },
}

function finding(place: Position, how: string) {
  return {
    place,
    reason: `Garlic or herbs in oil kept \`${how}\`, expected \`in the fridge\` and for a short time`,
    actual: how,
    expected: ['in the fridge'],
    note: 'Make it fresh, or keep it in the fridge for a few days, or freeze it. Local food-safety rules come first.',
  }
}

/** Fresh, and so with soil on it: dried garlic has no water for anything to grow in. */
function isFreshAromatic({traits, state}: Food): boolean {
  return state === 'raw' && (traits.has('garlic') || traits.has('herb'))
}

function isOil({traits, from}: Food): boolean {
  return traits.has('fat') && from.includes('plant')
}

/** A dish of which half is oil keeps what is in it under oil; the share is the project's choice. */
const mostlyOilRatio = 0.5

const underOil =
  /\b(?:cover(?:ed)?(?: \w+){0,3} (?:with|in|by)|under|submerged? in|top(?:ped)? up with|stor(?:e|ed)(?: \w+){0,4} in|keep(?:s|ing)?(?: \w+){0,4} in|infus\w+(?: \w+){0,4}) (?:more |the |extra |olive |its |their |some )*oil\b|\bgarlic oil\b|\bconfit\b/i

/** Where fresh garlic or herbs are kept in oil; undefined where none are. */
function keptInOil({recipe, lines, ...rest}: Computed): Position | undefined {
  const fresh = lines.find(
    ({ingredient}) => ingredient.kind === 'food' && isFreshAromatic(ingredient.food),
  )
  const oil = lines.some(({ingredient}) => ingredient.kind === 'food' && isOil(ingredient.food))
  if (!fresh || !oil) return undefined
  for (const passage of stepsOf(recipe)) {
    const match = underOil.exec(passage.text)
    if (match) return placeInPassage(passage, match.index, match.index + match[0].length)
  }
  const isKept = recipe.keeps !== undefined
  const share = shareOf({recipe, lines, ...rest}, isOil)
  return isKept && share >= mostlyOilRatio ? fresh.line.name.place : undefined
}
