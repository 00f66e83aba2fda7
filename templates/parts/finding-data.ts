import type {Computed} from '../../src/nutrition/computed.ts'
import {containedAllergens} from '../../src/nutrition/contained-allergens.ts'
import {batchCost, type Cost} from '../../src/shopping/cost.ts'
import type {Site} from '../site.ts'
import {checkedPromises} from './checked-promises.ts'
import {isAtLeast, publishedOn} from './published-figures.ts'

/** What the finder looks at besides the figures of a row: attributes its script reads. */
export function searchable({cookbook}: Site, computed: Computed) {
  const {recipe, lines} = computed
  const tags = recipe.tags.map(({value}) => value)
  const names = lines.map(({line}) => line.name.value)
  const {diets} = checkedPromises(recipe, cookbook.settings)
  const {contains, mayContain, onlyByChoice, notStated} = containedAllergens(computed)
  const allergens = new Set([...contains, ...mayContain, ...onlyByChoice])
  return {
    'data-words': [...tags, ...names].join(' '),
    'data-tags': tags.join('\n'),
    'data-diets': diets.map(({name}) => name).join(','),
    'data-allergens': [...allergens].join(','),
    'data-open': notStated.size > 0 ? '' : undefined,
  }
}

/** Grams of protein that come with 100 kcal, by the figures that are published. */
export function proteinDensity({cookbook}: Site, computed: Computed) {
  const [energy, protein] = publishedOn(
    'serving',
    ['energy', 'protein'],
    computed,
    cookbook.settings,
  )
  if (!energy || !protein || energy.value <= 0) return undefined
  return {
    value: (protein.value / energy.value) * 100,
    isOpen: isAtLeast(energy) || isAtLeast(protein),
  }
}

/** Whether any food of the cookbook has a price: without one nobody is told of costs. */
export function hasCosts({shopping}: Site): boolean {
  return shopping.foods.some(({price}) => price !== undefined)
}

export function servingCost({shopping}: Site, slug: string): Cost | undefined {
  const recipe = shopping.recipes.find((one) => one.slug === slug)
  const cost = recipe && batchCost(recipe, shopping)
  if (cost === undefined || recipe?.serves === undefined) return undefined
  return {...cost, amount: cost.amount / recipe.serves}
}
