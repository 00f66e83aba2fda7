import {type AllergenGroup, allergenGroups} from '../../src/food/allergens.ts'
import type {Allergen} from '../../src/food/food.ts'
import type {LabelRules} from '../../src/food/label-rules.ts'

const name: Readonly<Record<Allergen, string>> = {
  wheat: 'Weizen',
  rye: 'Roggen',
  barley: 'Gerste',
  oats: 'Hafer',
  milk: 'Milch',
  egg: 'Ei',
  fish: 'Fisch',
  crustacean: 'Krebstiere',
  mollusc: 'Weichtiere',
  peanut: 'Erdnuss',
  soy: 'Soja',
  sesame: 'Sesam',
  celery: 'Sellerie',
  mustard: 'Senf',
  lupin: 'Lupine',
  sulphites: 'Sulfite',
  almond: 'Mandel',
  hazelnut: 'Haselnuss',
  walnut: 'Walnuss',
  cashew: 'Cashew',
  pecan: 'Pekannuss',
  'brazil nut': 'Paranuss',
  pistachio: 'Pistazie',
  macadamia: 'Macadamia',
  'pine nut': 'Pinienkern',
}

/** Groups as the German wording of Regulation (EU) 1169/2011 Annex II has them (from memory). */
const group: Readonly<Record<string, string>> = {
  'cereals containing gluten': 'glutenhaltiges Getreide',
  crustaceans: 'Krebstiere',
  'crustacean shellfish': 'Krebstiere',
  eggs: 'Eier',
  egg: 'Ei',
  fish: 'Fische',
  peanuts: 'Erdnüsse',
  peanut: 'Erdnuss',
  soybeans: 'Sojabohnen',
  soy: 'Soja',
  milk: 'Milch',
  nuts: 'Schalenfrüchte',
  'tree nuts': 'Schalenfrüchte',
  celery: 'Sellerie',
  mustard: 'Senf',
  'sesame seeds': 'Sesamsamen',
  sesame: 'Sesam',
  'sulphur dioxide and sulphites': 'Schwefeldioxid und Sulphite',
  lupin: 'Lupinen',
  molluscs: 'Weichtiere',
  wheat: 'Weizen',
}

export function allergenName(allergen: Allergen): string {
  return name[allergen]
}

export function allergenGroup({name: english}: AllergenGroup): string {
  return group[english] ?? english
}

export function declaredAllergens(
  allergens: ReadonlySet<Allergen>,
  rules: LabelRules,
): readonly string[] {
  return allergenGroups[rules].flatMap((one) => {
    const held = one.members.filter((member) => allergens.has(member))
    if (held.length === 0) return []
    const named = allergenGroup(one)
    return one.isNamedByMember ? `${named} (${held.map(allergenName).join(', ')})` : named
  })
}
