import type {Allergen} from './food.ts'
import type {LabelRules} from './label-rules.ts'

/** A group of allergens as one law names it. */
export interface AllergenGroup {
  readonly name: string
  /** Whether the members themselves are named beside the group: `tree nuts (almond)`. */
  readonly isNamedByMember: boolean
  readonly members: readonly Allergen[]
}

const treeNuts = [
  'almond',
  'hazelnut',
  'walnut',
  'cashew',
  'pecan',
  'brazil nut',
  'pistachio',
  'macadamia',
] as const

function single(name: string, member: Allergen): AllergenGroup {
  return {name, isNamedByMember: false, members: [member]}
}

/**
 * What each law makes a seller declare. What stands in neither (coconut, chestnut) is no allergen
 * here; what stands in one only (pine nut; barley, rye, oats, molluscs, celery, mustard, lupin,
 * sulphites) is declared by that one.
 *
 * US, nine: Food Allergen Labeling and Consumer Protection Act (2004), FASTER Act (2021); tree
 * nuts as FDA lists them since January 2025 (guidance, edition 5). EU, fourteen: Regulation (EU)
 * 1169/2011 Annex II. Both seen in secondary summaries.
 */
export const allergenGroups: Readonly<Record<LabelRules, readonly AllergenGroup[]>> = {
  us: [
    single('milk', 'milk'),
    single('egg', 'egg'),
    single('fish', 'fish'),
    single('crustacean shellfish', 'crustacean'),
    {name: 'tree nuts', isNamedByMember: true, members: [...treeNuts, 'pine nut']},
    single('peanut', 'peanut'),
    single('wheat', 'wheat'),
    single('soy', 'soy'),
    single('sesame', 'sesame'),
  ],
  eu: [
    {
      name: 'cereals containing gluten',
      isNamedByMember: true,
      members: ['wheat', 'rye', 'barley', 'oats'],
    },
    single('crustaceans', 'crustacean'),
    single('eggs', 'egg'),
    single('fish', 'fish'),
    single('peanuts', 'peanut'),
    single('soybeans', 'soy'),
    single('milk', 'milk'),
    {name: 'nuts', isNamedByMember: true, members: treeNuts},
    single('celery', 'celery'),
    single('mustard', 'mustard'),
    single('sesame seeds', 'sesame'),
    single('sulphur dioxide and sulphites', 'sulphites'),
    single('lupin', 'lupin'),
    single('molluscs', 'mollusc'),
  ],
}

/** The allergen in running text. */
export function allergenName(allergen: Allergen): string {
  return allergen === 'brazil nut' ? 'Brazil nut' : allergen
}

/**
 * The groups a dish has to declare under a law, in the law's order, with the members it holds:
 * `tree nuts (almond, pine nut)`. What the law has no group for is left out.
 */
export function declaredAllergens(
  allergens: ReadonlySet<Allergen>,
  rules: LabelRules,
): readonly string[] {
  return allergenGroups[rules].flatMap(({name, isNamedByMember, members}) => {
    const held = members.filter((member) => allergens.has(member))
    if (held.length === 0) return []
    return isNamedByMember ? `${name} (${held.map(allergenName).join(', ')})` : name
  })
}
