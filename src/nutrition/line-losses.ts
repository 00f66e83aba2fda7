import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Located, Problem} from '../cookbook/problem.ts'
import type {IngredientLine, PouredOff} from '../cookbook/recipe.ts'
import {type Figure, type Figures, isComplete} from '../food/figures.ts'
import {formatFigure} from '../units/format-figure.ts'
import {expandedUncertainty, type Uncertain} from '../units/uncertain.ts'
import type {Ingredient} from './computed.ts'
import {drainedLiquid, type Loss, notRetained, pouredFat, renderedFat} from './losses.ts'
import {unknownFood} from './resolve.ts'
import {retainedAfter, retainedAfterSimmering} from './retention.ts'
import {partWeighed} from './weigh.ts'

/** A line as it goes into the dish, before anything leaves it. */
export interface UsedLine {
  readonly line: IngredientLine
  readonly ingredient: Ingredient
  readonly used: Uncertain
  readonly whole: Figures<'batch'>
}

type Losses =
  | {readonly ok: true; readonly value: readonly Loss[]}
  | {readonly ok: false; readonly problem: Omit<Problem, 'file'>}

/** Everything that leaves a line: poured off, evaporated, boiled out. */
export function lossesOf(usedLine: UsedLine, cookbook: Cookbook): Losses {
  const {line, ingredient, whole} = usedLine
  const losses: Loss[] = []
  if (line.pouredOff) {
    const poured = pouredOff(line.pouredOff, usedLine, cookbook)
    if (!poured.ok) return poured
    losses.push(...poured.value)
  }
  if (line.cooked && isCookedAlready(ingredient)) {
    return {ok: false, problem: cookedAlready(line.cooked, line.name.value)}
  }
  return {ok: true, value: [...losses, ...cookingLosses(line, ingredient, whole)]}
}

/**
 * What heat takes of an ingredient in the place of a line: its share of the alcohol and of the
 * minerals, whichever food it is; of figures that are those of a cooked food no minerals.
 */
export function cookingLosses(
  {simmeredMinutes, cooked}: Pick<IngredientLine, 'simmeredMinutes' | 'cooked'>,
  ingredient: Ingredient,
  whole: Figures<'batch'>,
): readonly Loss[] {
  return [
    ...(simmeredMinutes ? [notRetained(retainedAfterSimmering(simmeredMinutes.value), whole)] : []),
    ...(cooked && !isCookedAlready(ingredient)
      ? [notRetained(retainedAfter(cooked.value), whole)]
      : []),
  ]
}

function isCookedAlready(ingredient: Ingredient): boolean {
  const state = ingredient.kind === 'food' ? ingredient.food.state : 'cooked'
  return state === 'cooked' || state === 'canned'
}

function pouredOff(poured: PouredOff, usedLine: UsedLine, {settings, foods}: Cookbook): Losses {
  const {line, ingredient, used, whole} = usedLine
  const factors = ingredient.kind === 'food' ? ingredient.food.factors : undefined
  if (poured.kind === 'weighed') {
    const grams = partWeighed(
      poured.amount,
      `what was poured off ${line.name.value}`,
      settings.scaleGrams,
    )
    const held = poured.what === 'fat' ? whole.fat : whole.water
    const isMore = isComplete(held) && grams.value > held.value + expandedUncertainty(held)
    if (isMore) return {ok: false, problem: pouredMore(poured, held, line.name.value)}
    const loss = poured.what === 'fat' ? pouredFat(grams, whole, factors) : drainedLiquid(grams)
    return {ok: true, value: [loss]}
  }
  const cooked = foods.lookUp(poured.cooked.value)
  if (cooked === undefined) return {ok: false, problem: unknownFood(poured.cooked, foods)}
  if (ingredient.kind === 'component') {
    return {ok: false, problem: pairOfComponent(poured.cooked)}
  }
  const fat = renderedFat(used, ingredient.food.per100g, cooked.per100g)
  return {ok: true, value: [pouredFat(fat, whole, factors)]}
}

function pouredMore(
  {amount, what}: Extract<PouredOff, {kind: 'weighed'}>,
  held: Figure,
  name: string,
): Omit<Problem, 'file'> {
  const most = formatFigure(held.value, 'g')
  return {
    ruleId: 'poured-off-held',
    severity: 'error',
    place: amount.place,
    reason: `Poured off \`${amount.value.text}\` of ${what} from \`${name}\`, expected \`${most}\` or less: it holds no more ${what === 'fat' ? 'fat' : 'water'}`,
    actual: amount.value.text,
    expected: [most],
    note:
      what === 'fat'
        ? 'What was poured may have been mostly juice: write `{ amount: …, what: liquid }`, or weigh the fat after it has set.'
        : 'Weigh it again, or say on which line the rest went in.',
  }
}

/** A food of cooked composition has lost what it loses: FAO (Greenfield & Southgate 2003), step 4. */
function cookedAlready(method: Located<string>, name: string): Omit<Problem, 'file'> {
  return {
    ruleId: 'retention-once',
    severity: 'error',
    place: method.place,
    reason: `Cooked \`${method.value}\` of \`${name}\`, expected a raw or dry food: its figures are those of the cooked food already`,
    actual: method.value,
    note: 'Take `cooked` out, or name the raw food.',
  }
}

function pairOfComponent(cooked: Located<string>): Omit<Problem, 'file'> {
  return {
    ruleId: 'retention-once',
    severity: 'error',
    place: cooked.place,
    reason: `Poured off like \`${cooked.value}\`, expected a weight: a component has no raw food to compare with`,
    actual: cooked.value,
    note: 'Weigh what was poured off, or say it in the component.',
  }
}
