import type {en} from './en.ts'

export const cards: (typeof en)['cards'] = {
  title: 'Karten aller Rezepte',
  sheets: 'Karten auf Bogen',
  sheetsIntro: (size) =>
    `Karten von ${size}, Vorder- und Rückseite nebeneinander. In wahrer Größe einseitig drucken, an den Linien schneiden, an den Punkten falten.`,
  cautionsFrom:
    'Quellen: auf der Seite des Rezepts. Örtliche Vorschriften und zugelassene Fachleute gehen vor.',
}

export const book: (typeof en)['book'] = {
  link: 'Das ganze Kochbuch, zum Drucken',
  label: 'Kochbuch',
  print:
    'Mit dem Menü des Browsers drucken. Seitenzahlen in Inhalt und Register kommen mit `scalepan print cookbook`.',
  contents: 'Inhalt',
  untagged: 'Rezepte',
  figures: 'Nährwerttabelle',
  figuresServing: 'Eine Portion',
  figures100g: 'Je 100 g',
  allergens: 'Allergentabelle',
  allergensIntro:
    'e: enthält. b: nur in dem, was nach Belieben oder stattdessen dazukommt. s: kann Spuren enthalten, wie die Packungen sagen. Leer: von keiner Zutat ist es bekannt. Rezepte mit * haben Zutaten, deren Allergene niemand angegeben hat; sie stehen darunter.',
  contains: 'e',
  optional: 'b',
  traces: 's',
  notStated: '*',
  index: 'Register der Zutaten',
  checked: 'Was die Prüfung der Zahlen ergab',
  tally: (stated, recipes) =>
    `${stated} Zahlen von ${recipes} Rezepten sind angegeben und wurden verglichen.`,
  page: 'Seite',
  onPage: (page) => `Seite ${page}`,
  sources: 'Quellen',
  foodSources: 'Woher die Zahlen jedes Lebensmittels kommen',
  cautionSources: 'Woher die Vorsichtshinweise kommen',
}
