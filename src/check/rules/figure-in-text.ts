import type {Position} from 'unist'
import type {Settings} from '../../cookbook/cookbook.ts'
import {placeInPassage} from '../../cookbook/passage-place.ts'
import {type FigureMention, figuresIn} from '../../cookbook/prose/figures.ts'
import type {Recipe, StatedBasis, StatedFigure} from '../../cookbook/recipe.ts'
import {nutrientUnit, type PublishedNutrient} from '../../food/nutrients.ts'
import type {Computed} from '../../nutrition/computed.ts'
import {formatUncertain} from '../../units/format-figure.ts'
import {placeInWritten} from '../place-in-written.ts'
import type {Rule} from '../rule.ts'
import {asFineAs} from '../stated-text.ts'
import {type Judged, judge} from '../verdict.ts'

export const figureInText: Rule = {
  id: 'figure-in-text',
  severity: 'warning',
  summary: 'A figure of the dish in title, summary, tags or text follows from the ingredients.',
  why: 'A sentence outlives the figure it quotes, and readers believe the sentence.',
  *check({recipe, computed, cookbook}) {
    for (const {mention, place} of mentionsOf(recipe)) {
      const judged = contradicted(mention, place, computed, cookbook.settings)
      if (!judged) continue
      const {stated, computed: against, basis} = judged
      const right = asFineAs(stated, against.value)
      yield {
        place,
        reason: `Text says \`${mention.text}\`, expected \`${formatUncertain(against, nutrientUnit[mention.nutrient])}\` per ${basis} from the ingredients`,
        actual: mention.text,
        expected: [right],
        note: 'Write the computed figure, or say what else the sentence is about.',
      }
    }
  },
}

interface PlacedMention {
  readonly mention: FigureMention
  readonly place: Position
}

/** Steps weigh sugar, fat and salt into the pot: there, only these are figures of the dish. */
const unmistakable: ReadonlySet<PublishedNutrient> = new Set(['energy', 'protein', 'fibre'])

function mentionsOf({title, summary, tags, method}: Recipe): readonly PlacedMention[] {
  const inFront = [title, ...(summary ? [summary] : []), ...tags].flatMap((written) =>
    figuresIn(written.value).map((mention) => ({mention, place: placeInWritten(written, mention)})),
  )
  const inText = method.passages.flatMap((passage) =>
    figuresIn(passage.text)
      .filter(({nutrient}) => passage.kind !== 'step' || unmistakable.has(nutrient))
      .map((mention) => ({mention, place: placeInPassage(passage, mention.from, mention.to)})),
  )
  return [...inFront, ...inText]
}

interface Contradiction extends Judged {
  readonly basis: StatedBasis
}

/** @returns nothing where the mention holds, or nothing can be said of it */
function contradicted(
  mention: FigureMention,
  place: Position,
  computed: Computed,
  settings: Settings,
): Contradiction | undefined {
  const basis = mention.basis ?? (computed.recipe.serves ? 'serving' : '100 g')
  const figure: StatedFigure = {...mention, place}
  const [judged] = judge({basis, figures: [figure], place}, computed, settings)
  if (judged?.verdict !== 'drift') return undefined
  const {difference} = judged.margins
  if (mention.bound === 'at most' && difference > 0) return undefined
  if (mention.bound === 'at least' && difference < 0) return undefined
  return {...judged, basis}
}
