import type {Position} from 'unist'
import {judge} from '../check/verdict.ts'
import type {Settings} from '../cookbook/cookbook.ts'
import type {IngredientLine, Recipe} from '../cookbook/recipe.ts'
import type {Computed} from '../nutrition/computed.ts'

/** The part of a recipe's page that a range of its file is shown in. */
export type PagePart =
  | {readonly kind: 'ingredient'; readonly anchor: string}
  /** Row of the table of stated figures, from 0. */
  | {readonly kind: 'stated'; readonly row: number}
  /** Passage of the method, from 0. */
  | {readonly kind: 'passage'; readonly index: number}
  | {readonly kind: 'title'}

/** Where on its recipe's page a finding belongs; what the page does not show goes to its title. */
export function pagePart(
  place: Position | undefined,
  computed: Computed,
  settings: Settings,
): PagePart {
  if (place === undefined) return {kind: 'title'}
  const {recipe} = computed
  const line = linesOf(recipe).find((one) => placesWithin(one).some((part) => meets(part, place)))
  if (line !== undefined) return {kind: 'ingredient', anchor: line.anchor}
  const judged = recipe.stated === undefined ? [] : judge(recipe.stated, computed, settings)
  const row = judged.findIndex(({stated}) => meets(stated.place, place))
  if (row >= 0) return {kind: 'stated', row}
  const index = recipe.method.passages.findIndex((passage) => meets(passage.place, place))
  return index < 0 ? {kind: 'title'} : {kind: 'passage', index}
}

function linesOf({groups}: Recipe): readonly IngredientLine[] {
  return groups.flatMap(({lines}) => lines)
}

/** The range of every value an ingredient line holds, however deep. */
function placesWithin(value: unknown): readonly Position[] {
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, held]) =>
    key === 'place' && isPosition(held) ? [held] : placesWithin(held),
  )
}

function isPosition(value: unknown): value is Position {
  return typeof value === 'object' && value !== null && 'start' in value && 'end' in value
}

/** Whether a finding begins within a part, or a part within the finding. */
function meets(part: Position, finding: Position): boolean {
  return isWithin(finding.start, part) || isWithin(part.start, finding)
}

function isWithin(point: Position['start'], {start, end}: Position): boolean {
  return !isBefore(point, start) && isBefore(point, end)
}

function isBefore(one: Position['start'], other: Position['start']): boolean {
  return one.line < other.line || (one.line === other.line && one.column < other.column)
}
