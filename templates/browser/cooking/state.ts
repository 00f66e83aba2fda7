import type {Choices} from '../../../src/nutrition/chosen-figures.ts'
import {writtenChoices} from '../../../src/nutrition/chosen-figures.ts'
import type {CookingData} from '../../parts/cooking-data.ts'

/** How a reader cooks the recipe. */
export interface CookingState {
  /** Times the recipe is made, above 0. */
  readonly batches: number
  readonly choices: Choices
}

export function writtenState({recipe}: CookingData): CookingState {
  return {batches: 1, choices: writtenChoices(recipe)}
}

export function isChosen({recipe}: CookingData, {choices}: CookingState): boolean {
  return writtenChoices(recipe).some((choice, index) => choice !== choices[index])
}

/** A state that was kept, if it still fits the recipe. */
export function stateFrom(value: unknown, data: CookingData): CookingState {
  const written = writtenState(data)
  if (typeof value !== 'object' || value === null) return written
  const batches: unknown = Reflect.get(value, 'batches')
  const choices: unknown = Reflect.get(value, 'choices')
  const fits =
    Array.isArray(choices) &&
    choices.length === written.choices.length &&
    choices.every((choice, index) => fitsLine(choice, data, index))
  return {
    batches: typeof batches === 'number' && batches > 0 ? batches : 1,
    choices: fits ? choices : written.choices,
  }
}

function fitsLine(choice: unknown, {recipe}: CookingData, index: number): boolean {
  const line = recipe.lines[index]
  if (line === undefined || typeof choice !== 'number') return false
  const isNone = choice === -1 && (line.isOptional === true || line.adds.length === 0)
  return isNone || line.adds[choice] !== undefined
}
