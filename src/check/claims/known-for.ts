import type {Food} from '../../food/food.ts'
import {foodsInDish} from '../../nutrition/foods-in-dish.ts'
import type {Condition} from './condition.ts'
import type {Dish} from './dish.ts'
import {addedSalt, addedSugar} from './nothing-added.ts'

/** What a dish may be called free of. */
export type Freedom = 'sugar' | 'fat' | 'saturated fat' | 'cholesterol' | 'sodium'

/**
 * From how much in 100 g a food is taken to be known for it: the law gives no list. Ours: a fifth
 * of fat is what cream has, a tenth of saturated fat too; 400 mg of sodium are 1 g of salt; 10 mg
 * of cholesterol are what whole milk has, and no plant.
 */
const knownFrom = {fat: 20, saturated: 10, sodium: 400, cholesterol: 10} as const

/** Nobody thinks of salt or fat at a pinch of celery seed or nutmeg, whatever 100 g of it hold. */
function holdsMuch({per100g, traits}: Food, nutrient: keyof typeof knownFrom): boolean {
  const isSeasoning = traits.has('spice') || traits.has('herb')
  return !isSeasoning && per100g[nutrient].value >= knownFrom[nutrient]
}

const isKnownFor: Readonly<Record<Freedom, (food: Food) => boolean>> = {
  sugar: (food) => addedSugar(food) === 'added',
  fat: (food) => food.traits.has('fat') || holdsMuch(food, 'fat'),
  'saturated fat': (food) => holdsMuch(food, 'saturated'),
  cholesterol: (food) => holdsMuch(food, 'cholesterol'),
  sodium: (food) => addedSalt(food) === 'added' || holdsMuch(food, 'sodium'),
}

/**
 * No ingredient that is one, or that readers generally understand to contain it, unless the page
 * says beside it that the amount is trivial: 21 CFR 101.60(c)(1)(ii), .61(b)(1)(ii),
 * .62(b)(1)(ii), (c)(1)(ii), (d)(1)(i)(C) and (ii)(C). Seen for sodium in FDA, A Food Labeling
 * Guide, Appendix A; the others and the words of the footnote from memory.
 */
export function notKnownFor(freedom: Freedom): Condition {
  return ({computed}) => {
    const named = foodsInDish(computed)
      .filter(({food, isByChoice}) => !isByChoice && isKnownFor[freedom](food))
      .map(({food}) => `\`${food.name}\``)
    const isKept = named.length === 0 || saysTrivial(freedom, computed)
    return {
      outcome: isKept ? 'holds' : 'fails',
      found: `${[...new Set(named)].join(', ')} in it`,
      expected: `no ingredient known for ${freedom}, or \`adds a trivial amount of ${freedom}\` beside it in the text`,
    }
  }
}

/** The footnote that the law accepts, in the summary or the text. */
function saysTrivial(freedom: Freedom, {recipe}: Dish['computed']): boolean {
  const footnote = new RegExp(
    `\\badds an? (?:trivial|negligible|dietarily insignificant) amount of ${freedom}\\b`,
    'iu',
  )
  const texts = [recipe.summary?.value ?? '', ...recipe.method.passages.map(({text}) => text)]
  return texts.some((text) => footnote.test(text))
}
