import type {Food} from '../../food/food.ts'
import type {Computed} from '../../nutrition/computed.ts'
import {listedFoods} from '../../nutrition/foods-in-dish.ts'
import {type Hazard, hazardOf, temperatureSource, temperatureText} from './hazard.ts'
import {hasHeat} from './heat.ts'
import {spoils} from './keeping.ts'

export type CautionId = Hazard | 'honey' | 'kidneyBean' | 'rice' | 'flour' | 'cooling' | 'reheating'

/** What a reader should know to stay well, with where it is from. */
export interface Caution {
  readonly id: CautionId
  readonly text: string
  readonly source: string
}

interface Known extends Caution {
  applies(foods: readonly Food[], computed: Computed): boolean
}

const ofHazards: Readonly<Record<Hazard, string>> = {
  poultry: `Poultry: cook it to ${temperatureText('poultry')} inside, and wash hands, board and knife after the raw meat.`,
  groundMeat: `Ground meat: cook it to ${temperatureText('groundMeat')} all the way through.`,
  wholeMeat: `Whole cuts of meat: cook them to ${temperatureText('wholeMeat')} inside and let them rest for 3 minutes or more.`,
  fish: `Fish: cook it to ${temperatureText('fish')} inside, or until it is opaque and flakes.`,
  shellfish: 'Shellfish: cook it until it is opaque, and mussels or clams until they open.',
  egg: `Eggs: cook them until white and yolk are firm, egg dishes to ${temperatureText('egg')}; what stays soft or raw wants pasteurised eggs.`,
}

function ofHazard(id: Hazard): Known {
  return {
    id,
    text: ofHazards[id],
    source: temperatureSource,
    applies: (foods) => foods.some((food) => hazardOf(food) === id),
  }
}

const known: readonly Known[] = [
  ofHazard('poultry'),
  ofHazard('groundMeat'),
  ofHazard('wholeMeat'),
  ofHazard('fish'),
  ofHazard('shellfish'),
  ofHazard('egg'),
  {
    id: 'flour',
    text: 'Flour is a raw food: do not eat the dough or batter before it is cooked.',
    source: 'US CDC, Raw Flour and Dough.',
    applies: (foods) => foods.some(({traits}) => traits.has('flour')),
  },
  {
    id: 'kidneyBean',
    text: 'Dry kidney beans: soak them, then boil them hard in fresh water (10 minutes at least, 30 by the advice of the US FDA) before anything gentler.',
    source: 'US FDA, Bad Bug Book (2012); UK Food Standards Agency (from memory).',
    applies: (foods) =>
      foods.some(({traits, state}) => traits.has('kidney bean') && state === 'dry'),
  },
  {
    id: 'rice',
    text: 'Rice: eat it hot, or cool it quickly and put it in the fridge within 2 hours.',
    source: 'USDA National Agricultural Library, two-hour rule.',
    applies: (foods) =>
      foods.some(
        ({traits, state}) => traits.has('rice') && (state === 'dry' || state === 'cooked'),
      ),
  },
  {
    id: 'honey',
    text: 'Honey is not for children under 12 months.',
    source: 'US CDC, advice on infant botulism (from memory).',
    applies: (foods) => foods.some(({from}) => from.includes('honey')),
  },
  {
    id: 'cooling',
    text: 'To keep: fill shallow containers, cool and refrigerate within 2 hours.',
    source: 'USDA National Agricultural Library, two-hour rule.',
    applies: (_, computed) => isKept(computed),
  },
  {
    id: 'reheating',
    text: 'To eat hot again: reheat to 74 °C (165 °F) all the way through, once.',
    source: temperatureSource,
    applies: (_, computed) => isKept(computed) && computed.recipe.serves !== undefined,
  },
]

/** What every list of cautions ends with. */
export const localRulesFirst =
  'Advice for home kitchens from the sources named; local food-safety rules and licensed practice come first.'

/** The cautions of a dish, from what is in it through its components; pages and cards print them. */
export function cautionsOf(computed: Computed): readonly Caution[] {
  const foods = [...listedFoods(computed)]
  return known.filter(({applies}) => applies(foods, computed))
}

function isKept(computed: Computed): boolean {
  const {keeps} = computed.recipe
  const isStored = keeps?.fridgeDays !== undefined || keeps?.freezerDays !== undefined
  return isStored && spoils(computed) && hasHeat(computed.recipe)
}
