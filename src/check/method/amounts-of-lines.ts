import type {Cookbook} from '../../cookbook/cookbook.ts'
import {type AmountMention, amountsIn} from '../../cookbook/prose/amounts.ts'
import {sentenceAround} from '../../cookbook/prose/sentences.ts'
import type {Passage} from '../../cookbook/recipe.ts'
import {kitchenOf} from '../../cookbook/understand.ts'
import type {Computed, ComputedLine} from '../../nutrition/computed.ts'
import {type IngredientMention, ingredientMentions} from './ingredient-mentions.ts'

/** An amount in the method beside the ingredient it is of. */
export interface AmountOfLine {
  readonly passage: Passage
  readonly mention: AmountMention
  /** What the words behind it can mean. */
  readonly lines: readonly ComputedLine[]
  /** Said to be some of what is listed: "50 g of the butter", "the remaining 50 g". */
  readonly isPart: boolean
  /** Said to be a rough figure. */
  readonly isRough: boolean
}

/** Every amount of an ingredient that the method repeats. */
export function amountsOfLines(computed: Computed, cookbook: Cookbook): readonly AmountOfLine[] {
  const kitchen = kitchenOf(cookbook.settings, cookbook.foods)
  const mentions = ingredientMentions(computed)
  return [...new Set(mentions.map(({passage}) => passage))].flatMap((passage) => {
    const here = mentions.filter((mention) => mention.passage === passage)
    return amountsIn(passage.text, kitchen).flatMap((mention) => {
      const of = here.find((each) => belongsTo(mention, each, passage.text))
      return of && !isOfEach(mention, of, passage.text)
        ? [{passage, mention, lines: of.lines, ...said(mention, passage.text)}]
        : []
    })
  })
}

const betweenAmountAndName =
  /^\s*(?:of\s+)?(?:(?!(?:and|or|in|into|with|to|plus|water|then|from|on|for|at|if|until)\b)[\p{L}-]+\s+){0,3}$/iu

/** `180 g of the pearl barley`, or `barley (180 g)`. */
function belongsTo(amount: AmountMention, name: IngredientMention, text: string): boolean {
  if (amount.to <= name.from) return betweenAmountAndName.test(text.slice(amount.to, name.from))
  const isBehind =
    name.to <= amount.from && /^\s*\(\s*(?:about\s+)?$/i.test(text.slice(name.to, amount.from))
  return isBehind && /^\s*[),;]/.test(text.slice(amount.to))
}

/** `50 g dough each`, `a spoonful of 20 g at a time`: how it is shared out, not how much there is. */
function isOfEach({from, to}: AmountMention, name: IngredientMention, text: string): boolean {
  const behind = text.slice(Math.max(to, name.to), Math.max(to, name.to) + 30)
  return (
    /^\s*(?:[\p{L}]+\s+){0,2}(?:each|apiece|at a time)\b|^\s*(?:per|for (?:each|every)|(?:in|into|on|onto|over) each)\b/iu.test(
      behind,
    ) ||
    /\b(?:each|every|per|pieces of|portions of)(?:\s+\p{L}+){0,2}\s*$/iu.test(
      text.slice(Math.max(0, from - 30), from),
    )
  )
}

const partWords =
  /\b(?:half|rest|remaining|remainder|reserved?|another|more|extra|further|left|leftover|third|quarter|some|other|first|second|last)\b/i
const roughBefore =
  /(?:\b(?:about|around|roughly|approx(?:imately)?|nearly|scant|generous|some|ca|circa)\.?|~)\s*(?:the\s+)?$/i

function said({from, to}: AmountMention, text: string): Pick<AmountOfLine, 'isPart' | 'isRough'> {
  const sentence = sentenceAround(text, from)
  return {
    isPart:
      !/\ball (?:of )?(?:the )?$/i.test(text.slice(sentence.from, from)) &&
      (/^\s*of (?:the|it|this|that|your)\b/i.test(text.slice(to, to + 12)) ||
        partWords.test(text.slice(sentence.from, sentence.to))),
    isRough: roughBefore.test(text.slice(Math.max(sentence.from, from - 20), from)),
  }
}
