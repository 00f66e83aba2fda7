import {captionLine, captionOf} from '../../parts/caption-text.ts'
import type {CookingData} from '../../parts/cooking-data.ts'
import {unpackedWords} from '../../words/carried-words.ts'
import {fill} from '../../words/fill.ts'
import {one} from '../page/query.ts'
import {amountTexts} from './amount-texts.ts'
import type {CookingState} from './state.ts'

/** The recipe as text, as it is cooked; its figures are those that stand in the headline. */
export function captionText(data: CookingData, {batches, choices}: CookingState): string {
  const {caption, lines, recipe, words} = data
  const servings = recipe.serves === undefined ? undefined : recipe.serves * batches
  const address = one<HTMLLinkElement>('link[rel="canonical"]')?.href
  const headline = one('.headline')
  const {nutrientName} = unpackedWords(words.carried)
  const names: Readonly<Record<string, string>> = nutrientName
  return captionOf({
    title: one('h1')?.textContent ?? '',
    servings: servings === undefined ? undefined : servingsText(words.servingCount, servings),
    ingredients: lines.flatMap(({choices: all}, index) => {
      const choice = all[Math.max(0, choices[index] ?? 0)]
      if (choice === undefined) return []
      const isLeftOut = recipe.lines[index]?.isOptional === true && choices[index] === -1
      const note = isLeftOut ? caption.ifWanted : undefined
      return [
        captionLine({...amountTexts(choice, batches, words.carried), name: choice.name, note}),
      ]
    }),
    basis: headline?.querySelector('p')?.textContent ?? '',
    figures: [...(headline?.querySelectorAll<HTMLElement>('dd') ?? [])].map(
      (shown) => `${names[shown.dataset.nutrient ?? ''] ?? ''} ${shown.textContent}`,
    ),
    allergens: caption.allergens,
    link: address && `${caption.full}: ${address}`,
  })
}

export function servingsText(
  {one, many}: {readonly one: string; readonly many: string},
  servings: number,
): string {
  const count = Number(servings.toFixed(2))
  return fill(count === 1 ? one : many, {count})
}
