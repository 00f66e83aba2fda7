import type {Problem} from '../cookbook/problem.ts'
import type {Alternative} from '../cookbook/recipe.ts'
import type {Figures} from '../food/figures.ts'
import type {Food} from '../food/food.ts'
import {
  product,
  quotient,
  rectangular,
  type Source,
  scaled,
  type Uncertain,
} from '../units/uncertain.ts'
import type {Computed, Ingredient} from './computed.ts'
import {gramsOf, weighed} from './weigh.ts'
import {wholeGrams} from './whole-grams.ts'

/** An amount of an ingredient, with the way from grams of it to its figures. */
export interface MeasuredOut {
  readonly grams: Uncertain
  /** Figures of the food per 100 g, or of the component's whole batch. */
  readonly figures: Figures<'100 g'> | Figures<'batch'>
  /** The factor for `figures` that belongs to a weight of the ingredient. */
  shareOf(grams: Uncertain): Uncertain
}

export type MeasuringOut =
  | {readonly ok: true; readonly value: MeasuredOut}
  | {readonly ok: false; readonly problem: Omit<Problem, 'file'>}

/** Weighs an amount out of a food or of a component's batch. */
export function measureOut(
  choice: Alternative,
  ingredient: Ingredient,
  scaleGrams: number,
): MeasuringOut {
  return ingredient.kind === 'food'
    ? foodOut(choice, ingredient.food, scaleGrams)
    : componentOut(choice, ingredient.computed, scaleGrams)
}

function foodOut(choice: Alternative, food: Food, scaleGrams: number): MeasuringOut {
  const amount = choice.amount.value
  if (amount.kind === 'batch') {
    return refused(choice, `\`${amount.text}\` of a food, expected a weight such as \`150 g\``)
  }
  const grams = gramsOf(food, amount, scaleGrams)
  if (grams === undefined) {
    const known = [...food.measures.keys()].map((measure) => `1 ${measure}`)
    return refused(
      choice,
      `\`${amount.text}\` of \`${food.name}\` has no known weight, expected grams${
        known.length > 0
          ? ` or ${known
              .slice(0, 4)
              .map((text) => `\`${text}\``)
              .join(', ')}`
          : ''
      }`,
    )
  }
  return {
    ok: true,
    value: {grams, figures: food.per100g, shareOf: (portion) => scaled(portion, 1 / 100)},
  }
}

function componentOut(choice: Alternative, component: Computed, scaleGrams: number): MeasuringOut {
  const amount = choice.amount.value
  const {batch: figures, batchGrams} = component
  if (amount.kind === 'batch') {
    const {value, halfRange} = amount.batches
    const subject = `batches of ${choice.name.value}`
    const batches = rectangular(value, 2 * halfRange, {kind: 'measure', subject})
    const whole = wholeGrams(component)
    // A share of the batch needs no scale: for all of it the weights cancel, and only a range is left.
    return {
      ok: true,
      value: {grams: product(whole, batches), figures, shareOf: (part) => quotient(part, whole)},
    }
  }
  if (amount.kind !== 'weight') {
    return refused(
      choice,
      `\`${amount.text}\` of a component, expected a weight or a share such as \`½ batch\``,
    )
  }
  if (batchGrams === undefined) {
    return {
      ok: false,
      problem: {
        ruleId: 'component-weight',
        severity: 'error',
        place: choice.amount.place,
        reason: `\`${amount.text}\` of \`${component.recipe.slug}\`, expected the finished weight of that batch to be stated`,
        actual: amount.text,
        note: `Weigh the finished batch and write \`yield:\` in ${component.recipe.path}, or use a share such as \`½ batch\`.`,
      },
    }
  }
  const subject = `weighing of ${choice.name.value}`
  const source: Source = {kind: 'weighing', subject}
  const grams = weighed(amount, scaleGrams, source)
  return {ok: true, value: {grams, figures, shareOf: (part) => quotient(part, batchGrams)}}
}

function refused(choice: Alternative, reason: string): MeasuringOut {
  return {
    ok: false,
    problem: {
      ruleId: 'unknown-measure',
      severity: 'error',
      place: choice.amount.place,
      reason: `Amount ${reason}`,
      actual: choice.amount.value.text,
      note: 'Weigh it once and write the grams, or give the food a weight for the measure under `measures` in foods.yaml.',
    },
  }
}
