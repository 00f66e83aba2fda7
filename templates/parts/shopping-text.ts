import {shopGrams, shopWeightText} from '../../src/shopping/shop-weight.ts'
import {type ListLine, listCost, type ShoppingList} from '../../src/shopping/shopping-list.ts'
import {roundedText} from '../../src/units/format-figure.ts'
import {withDecimal} from '../words/decimal.ts'
import type {Words} from '../words/en.ts'
import {fill} from '../words/fill.ts'

/** The texts of a list, as a page hands them to its script. */
export type ListWords = Words['list'] & {
  readonly decimal: string
  readonly aisle: Words['aisle']
  /** ISO 4217. */
  readonly currency: string
}

/** A list in words, for a page to set and for a script to set again. */
export interface ListText {
  readonly groups: readonly ListGroup[]
  readonly make: readonly ListRow[]
  /** What the packs cost; absent where no food has a price. */
  readonly cost?: string
}

export interface ListGroup {
  readonly heading: string
  readonly rows: readonly ListRow[]
}

export interface ListRow {
  readonly amount: string
  readonly name: string
  readonly notes: readonly string[]
}

const nothing: ReadonlySet<string> = new Set()

/**
 * Puts a list into words: weights rounded up to what a shopper can ask for.
 * @param had names of foods that are at home already: they cost nothing
 */
export function listText(list: ShoppingList, words: ListWords, had = nothing): ListText {
  const cost = listCost(list, had)
  return {
    ...(cost && {
      cost: fill(cost.isComplete ? words.cost : words.costAtLeast, {
        money: money(cost.amount, words),
      }),
    }),
    groups: list.aisles.map(({aisle, lines}) => ({
      heading: words.aisle[aisle],
      rows: lines.map((line) => row(line, words)),
    })),
    make: list.make.map(({title, grams, batches}) => ({
      amount: weightText(grams, words),
      name: title,
      notes: [fill(words.ofBatch, {percent: roundedText(batches * 100, 0)})],
    })),
  }
}

function row(line: ListLine, words: ListWords): ListRow {
  const isOnlyOptional = line.grams === 0
  const exactGrams = isOnlyOptional ? line.optionalGrams : line.grams
  const notes: string[] = []
  if (isOnlyOptional) notes.push(words.onlyOptional)
  else if (line.optionalGrams > 0) {
    notes.push(fill(words.optional, {amount: weightText(line.optionalGrams, words)}))
  }
  if (line.piece) {
    // Of the exact weight: four eggs rounded up to 230 g would be five.
    const count = Math.ceil(Number((exactGrams / line.piece.grams).toPrecision(6)))
    notes.push(fill(words.pieces, {count, size: line.piece.size}).trim())
  }
  if (line.packs) {
    const {count, packGrams, leftGrams, price} = line.packs
    notes.push(fill(words.packs, {count, weight: withDecimal(shopWeightText(packGrams), words)}))
    if (leftGrams >= 1)
      notes.push(
        fill(words.left, {amount: withDecimal(shopWeightText(Math.floor(leftGrams)), words)}),
      )
    if (price !== undefined) notes.push(money(price, words))
  }
  return {amount: weightText(exactGrams, words), name: line.name, notes}
}

/** Rounded up to what is easy to ask for. */
function weightText(grams: number, words: ListWords): string {
  return withDecimal(shopWeightText(shopGrams(grams)), words)
}

function money(amount: number, words: ListWords): string {
  const {money, currency} = words
  return fill(money, {amount: withDecimal(roundedText(amount, 2), words), currency})
}

/** The list as plain text, to send to whoever is at the shop. */
export function plainList({groups, make}: ListText, words: ListWords): string {
  const all = make.length > 0 ? [{heading: words.makeFirst, rows: make}, ...groups] : groups
  return all.map(({heading, rows}) => [heading, ...rows.map(plainRow)].join('\n')).join('\n\n')
}

function plainRow({amount, name, notes}: ListRow): string {
  const text = [amount, name].filter((part) => part !== '').join(' ')
  return notes.length > 0 ? `- ${text} (${notes.join('; ')})` : `- ${text}`
}
