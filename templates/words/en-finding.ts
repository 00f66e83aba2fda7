/** Texts of the finder above the table of recipes. */
export const finding = {
  label: 'Find a recipe',
  words: 'Name, tag or ingredient',
  mostEnergy: 'Energy at most, kcal',
  leastProtein: 'Protein at least, g',
  leastDensity: 'Protein per 100 kcal at least, g',
  mostMinutes: 'Ready within, min',
  mostCost: (currency: string) => `Cost at most, ${currency}`,
  tag: 'Tag',
  diet: 'Suits',
  without: 'Without',
  any: 'any',
  anyAllergen: 'no matter',
  withoutNote:
    'Left out are also recipes with traces of it, with it in what is optional, and with foods whose allergens nobody stated. Read the packets all the same.',
  clear: 'Show all',
  density: 'Protein per 100 kcal',
  cost: 'Cost',
  costOf: (amount: string, currency: string) => `${amount} ${currency}`,
  more: 'Show more',
  fetching: 'Fetching what is searched …',
  failed: 'What is searched cannot be fetched: is there a network?',
  /** Filled in by the script of the page. */
  some: '{found} of {all} found, the first {shown} shown',
  shown: '{shown} of {all} shown',
}
