import type {en} from './en.ts'

export const finding: (typeof en)['finding'] = {
  label: 'Ein Rezept finden',
  words: 'Name, Stichwort oder Zutat',
  mostEnergy: 'Energie höchstens, kcal',
  leastProtein: 'Eiweiß mindestens, g',
  leastDensity: 'Eiweiß je 100 kcal mindestens, g',
  mostMinutes: 'Fertig in, min',
  mostCost: (currency) => `Kosten höchstens, ${currency}`,
  tag: 'Stichwort',
  diet: 'Passt für',
  without: 'Ohne',
  any: 'alle',
  anyAllergen: 'egal',
  withoutNote:
    'Weggelassen sind auch Rezepte mit Spuren davon, solche, in denen es nur nach Belieben dazukommt, und solche mit Lebensmitteln, deren Allergene niemand angegeben hat. Trotzdem die Packungen lesen.',
  clear: 'Alle zeigen',
  density: 'Eiweiß je 100 kcal',
  cost: 'Kosten',
  costOf: (amount, currency) => `${amount} ${currency}`,
  more: 'Mehr zeigen',
  fetching: 'Die Daten für die Suche werden geladen …',
  failed: 'Die Daten für die Suche lassen sich nicht laden: Gibt es ein Netz?',
  some: '{found} von {all} gefunden, die ersten {shown} gezeigt',
  shown: '{shown} von {all} gezeigt',
}
