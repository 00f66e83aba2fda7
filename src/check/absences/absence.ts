import {allergenGroups, allergenName} from '../../food/allergens.ts'
import {type Allergen, allergens} from '../../food/food.ts'
import type {OtherWord} from './promise.ts'

/** Something that a dish can be said to be free from. */
export interface Absence {
  /** As messages have it. */
  readonly name: string
  readonly also: readonly string[]
  readonly allergens: readonly Allergen[]
}

/** Other words for a single allergen; plurals of nuts are made below. */
const synonyms: Readonly<Partial<Record<Allergen, readonly string[]>>> = {
  milk: ['dairy', 'milk products'],
  egg: ['eggs'],
  crustacean: ['crustaceans', 'crustacean shellfish'],
  mollusc: ['molluscs', 'molluscan shellfish'],
  soy: ['soya', 'soybeans', 'soya beans'],
  sesame: ['sesame seeds'],
  oats: ['oat'],
  sulphites: ['sulfites', 'sulphur dioxide', 'sulphur dioxide and sulphites'],
  peanut: ['peanuts'],
}

const nutMembers = [
  ...new Set(
    [...allergenGroups.us, ...allergenGroups.eu]
      .filter(({name}) => name === 'tree nuts' || name === 'nuts')
      .flatMap(({members}) => members),
  ),
]

/**
 * Words for several at once, each meant as widely as a reader may take it, whatever the law groups:
 * tree nuts are those of both laws, and who reads "nuts" thinks of peanuts as well.
 */
const groups: readonly Absence[] = [
  {name: 'tree nuts', also: ['tree nut'], allergens: nutMembers},
  {name: 'nuts', also: ['nut'], allergens: [...nutMembers, 'peanut']},
  {name: 'shellfish', also: ['shell fish'], allergens: ['crustacean', 'mollusc']},
]

const absences: readonly Absence[] = [
  ...allergens.map((allergen) => ({
    name: allergenName(allergen),
    also: [
      ...(synonyms[allergen] ?? []),
      ...(nutMembers.includes(allergen) ? [`${allergenName(allergen)}s`] : []),
    ],
    allergens: [allergen],
  })),
  ...groups,
]

const byWord: ReadonlyMap<string, Absence> = new Map(
  absences.flatMap((absence) =>
    [absence.name, ...absence.also].map((word) => [word.toLowerCase(), absence] as const),
  ),
)

/** What a word of `free from` means; undefined where no food states it. */
export function absenceOf(word: string): Absence | undefined {
  return byWord.get(word.toLowerCase())
}

/** Every word that can be checked, for a message that lists the nearest. */
export const absenceNames: readonly string[] = absences.map(({name}) => name)

/** Words that are no allergen a food states, and what to write instead or why not. */
export const uncheckable: ReadonlyMap<string, OtherWord> = new Map([
  [
    'gluten',
    {
      write: 'suits: [gluten-free ingredients]',
      why: 'Free from gluten means less than 20 mg/kg, measured (21 CFR 101.91; Regulation (EU) 828/2014); a list of ingredients cannot show that.',
    },
  ],
  ['lactose', {write: 'milk', why: 'Foods state milk; how much lactose is in it they do not.'}],
  [
    'coconut',
    {
      why: 'Coconut left the US list of tree nuts in January 2025 (FDA guidance, edition 5) and stands on no EU list, so foods do not state it.',
    },
  ],
  [
    'sugar',
    {write: 'claims: [no added sugars]', why: 'That is a claim about nutrition and has rules.'},
  ],
  ['alcohol', {write: 'suits: [alcohol-free]', why: 'Foods do not list it among their allergens.'}],
  ['pork', {write: 'suits: [pork-free]', why: 'Foods do not list it among their allergens.'}],
  ['meat', {write: 'suits: [vegetarian]', why: 'Foods do not list it among their allergens.'}],
])
