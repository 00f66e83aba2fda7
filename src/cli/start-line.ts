import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Recipe} from '../cookbook/recipe.ts'
import {kitchenOf} from '../cookbook/understand.ts'
import {gramsOf} from '../nutrition/weigh.ts'
import {parseAmount} from '../units/parse-amount.ts'
import {type Parsed, parsed, refused} from '../units/parsed.ts'
import type {StartLine} from './recipe-start.ts'

/** Names a refusal lists. */
const mostSuggestions = 3

/**
 * Reads an ingredient such as `pearl barley: 180 g`: one that this cookbook can look up and weigh.
 * @param before the lines above it, none of which has its name
 */
export function parseStartLine(
  written: string,
  cookbook: Cookbook,
  before: readonly StartLine[],
): Parsed<StartLine> {
  const colon = written.lastIndexOf(':')
  const [name, amount] = [written.slice(0, colon).trim(), written.slice(colon + 1).trim()]
  if (colon < 1 || amount === '') {
    return refused('name, colon and amount, such as `pearl barley: 180 g`')
  }
  const isSame = (line: StartLine) => line.name.toLowerCase() === name.toLowerCase()
  if (before.some(isSame)) return refused(`one line for \`${name}\``)
  const read = parseAmount(amount, kitchenOf(cookbook.settings, cookbook.foods))
  if (!read.ok) return read
  const food = cookbook.foods.lookUp(name)
  if (food) {
    const isWeighed =
      read.value.kind !== 'batch' &&
      gramsOf(food, read.value, cookbook.settings.scaleGrams) !== undefined
    return isWeighed ? parsed({name, amount}) : refused(`grams: \`${amount}\` has no known weight`)
  }
  const component = componentCalled(name, cookbook)
  if (component === undefined) return unknownName(name, cookbook)
  const isShare = read.value.kind === 'batch'
  if (isShare || (read.value.kind === 'weight' && component.batch !== undefined)) {
    return parsed({name, amount, recipe: component.slug})
  }
  return refused(
    component.batch === undefined
      ? 'a share such as `½ batch`, for that batch was not weighed'
      : 'a weight, or a share such as `½ batch`',
  )
}

function componentCalled(name: string, {recipes}: Cookbook): Recipe | undefined {
  const written = name.toLowerCase()
  return [...recipes.values()].find(
    ({slug, title}) => slug === written || title.value.toLowerCase() === written,
  )
}

function unknownName(name: string, {foods}: Cookbook): Parsed<StartLine> {
  const near = foods.nearest(name, mostSuggestions).map((one) => `\`${one}\``)
  return refused(
    near.length > 0
      ? `a food that is known, such as ${near.join(' or ')}`
      : 'a food that is known; `scalepan foods find` looks for one',
  )
}
