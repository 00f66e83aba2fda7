import {indexesOfPlace} from '../../cookbook/passage-place.ts'
import type {TextRange} from '../../cookbook/prose/match-at.ts'
import type {Passage, Recipe} from '../../cookbook/recipe.ts'
import type {Computed, ComputedLine} from '../../nutrition/computed.ts'
import {remembered} from '../../units/remembered.ts'
import {type IngredientWords, ingredientWords} from './ingredient-words.ts'
import {type Word, wordsOf} from './words.ts'

/** An ingredient where the method names it, linked or not. */
export interface IngredientMention extends TextRange {
  readonly passage: Passage
  /** Those that the words can mean: more than one where two share them ("the oil"). */
  readonly lines: readonly ComputedLine[]
}

/** More than anybody writes; a file made to exhaust the rules stops here. */
const limits = {steps: 500, stepCharacters: 5_000} as const

/** Steps and paragraphs, in order: headings name parts of a dish, not what is done. */
export function stepsOf({method}: Recipe): readonly Passage[] {
  return method.passages
    .filter(({kind, text}) => kind !== 'heading' && text.length <= limits.stepCharacters)
    .slice(0, limits.steps)
}

/** Every mention of an ingredient in the method, passage by passage in order. */
export const ingredientMentions = remembered(
  ({recipe, lines}: Computed): readonly IngredientMention[] => {
    const known = knownWords(lines)
    return stepsOf(recipe).flatMap((passage) => {
      const linked = linkedMentions(passage, recipe, lines)
      // A link says which line is meant; its words need not.
      const named = namedMentions(passage, known).filter(
        ({from, to}) => !linked.some((link) => from < link.to && link.from < to),
      )
      return [...linked, ...named].toSorted((left, right) => left.from - right.from)
    })
  },
)

function linkedMentions(
  passage: Passage,
  {method}: Recipe,
  lines: readonly ComputedLine[],
): readonly IngredientMention[] {
  const {start, end} = passage.place
  return method.ingredientLinks.flatMap(({anchor, place}) => {
    const isInside =
      (place.start.offset ?? 0) >= (start.offset ?? 0) &&
      (place.end.offset ?? 0) <= (end.offset ?? 0)
    const linked = lines.filter(({line}) => line.anchor === anchor)
    if (!isInside || linked.length === 0) return []
    return [{passage, lines: linked, ...indexesOfPlace(passage, place)}]
  })
}

interface Known {
  readonly line: ComputedLine
  readonly words: IngredientWords
}

/** The lines that each word can be of. */
type KnownWords = ReadonlyMap<string, readonly Known[]>

function knownWords(lines: readonly ComputedLine[]): KnownWords {
  const byStem = new Map<string, Known[]>()
  for (const line of lines) {
    const words = ingredientWords(line)
    for (const stem of [...words.nouns, ...words.modifiers]) {
      const those = byStem.get(stem)
      if (those) those.push({line, words})
      else byStem.set(stem, [{line, words}])
    }
  }
  return byStem
}

/** Names in a passage: runs of words that belong to ingredients, each to what it fits best. */
function namedMentions(passage: Passage, known: KnownWords): readonly IngredientMention[] {
  const runs: Word[][] = []
  let last: Word | undefined
  for (const word of wordsOf(passage.text)) {
    if (!known.has(word.stem)) continue
    const isNext = last && /^[\s-]+$/.test(passage.text.slice(last.to, word.from))
    if (isNext) runs.at(-1)?.push(word)
    else runs.push([word])
    last = word
  }
  return runs.flatMap((run) => {
    const lines = bestLines(run, known)
    const [first, end] = [run[0], run.at(-1)]
    return lines.length > 0 && first && end ? [{passage, lines, from: first.from, to: end.to}] : []
  })
}

/** A noun counts more than what describes it, and the last word says what the thing is. */
const scores = {last: 100, noun: 10, modifier: 1} as const

function bestLines(run: readonly Word[], known: KnownWords): readonly ComputedLine[] {
  let best = 0
  let lines: ComputedLine[] = []
  const possible = run.flatMap(({stem}) => known.get(stem) ?? [])
  for (const {line, words} of new Map(possible.map((each) => [each.line, each])).values()) {
    const score = scoreOf(run, words)
    if (score === 0 || score < best) continue
    if (score > best) lines = []
    best = score
    lines.push(line)
  }
  return lines
}

function scoreOf(run: readonly Word[], {nouns, modifiers}: IngredientWords): number {
  const count = run.filter(({stem}) => nouns.has(stem)).length
  if (count === 0) return 0
  const isLast = nouns.has(run.at(-1)?.stem ?? '')
  const described = run.filter(({stem}) => modifiers.has(stem)).length
  return (isLast ? scores.last : 0) + count * scores.noun + described * scores.modifier
}
