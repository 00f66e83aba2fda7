import {type Figure, weightedSum} from '../../food/figures.ts'
import type {Food} from '../../food/food.ts'
import type {Computed, Ingredient} from '../../nutrition/computed.ts'
import {exact} from '../../units/uncertain.ts'

/**
 * The least share of a food's protein that a US claim may count. 21 CFR 101.9(c)(7) has protein
 * corrected by its digestibility and amino acids (PDCAAS), which a recipe's foods do not state. So
 * each kind counts at the low end of what FAO/WHO, Protein Quality Evaluation (FAO Food and
 * Nutrition Paper 51, 1991) has for it: milk, egg, meat, fish and soya 0.9 or more; wheat 0.4, other
 * plants above; gelatine none. From memory, and for a dish lower than the mixture's own score.
 */
function leastQuality({from, contains, traits}: Food): number {
  const isAnimal = from.length > 0 && from.every((origin) => animals.has(origin))
  if (isAnimal) return 0.9
  const isSoya = contains.has('soy') && traits.has('protein powder')
  if (isSoya) return 0.9
  return from.includes('gelatine') ? 0 : 0.4
}

const animals: ReadonlySet<string> = new Set([
  'beef',
  'pork',
  'lamb',
  'veal',
  'game',
  'poultry',
  'fish',
  'crustacean',
  'mollusc',
  'egg',
  'dairy',
])

/** Grams of protein in the batch, each line's corrected for its quality: at least so much counts. */
export function proteinOfQuality(computed: Computed): Figure {
  const {lines, batch} = computed
  const listed = lines.filter(({role}) => role === 'counted')
  let [counts, all] = [0, 0]
  for (const {adds, ingredient} of listed) {
    counts += adds.protein.value * qualityOf(ingredient)
    all += adds.protein.value
  }
  const quality = all > 0 ? counts / all : 0
  // What stays in the pot takes its share along, and the uncertainty stays that of the batch.
  return weightedSum([{figure: batch.protein, weight: exact(quality)}])
}

/** Of a component, that of its own protein. */
function qualityOf(ingredient: Ingredient): number {
  if (ingredient.kind === 'food') return leastQuality(ingredient.food)
  const {computed} = ingredient
  const {value} = computed.batch.protein
  return value > 0 ? proteinOfQuality(computed).value / value : 0
}
