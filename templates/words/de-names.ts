import type {en} from './en.ts'

/** German names of the things that data has keys for. */
type Names = Pick<
  typeof en,
  | 'nutrient'
  | 'nutrientPart'
  | 'nutrientName'
  | 'basis'
  | 'verdict'
  | 'verdictMeaning'
  | 'severity'
  | 'tolerance'
  | 'aisle'
>

const nutrient: Names['nutrient'] = {
  energy: 'Energie',
  protein: 'Eiweiß',
  fat: 'Fett',
  saturated: 'Gesättigte Fett\u00adsäuren',
  trans: 'Trans\u00adfett\u00adsäuren',
  cholesterol: 'Cholesterin',
  // A soft hyphen, for the narrow columns of a phone.
  carbohydrate: 'Kohlen\u00adhydrate',
  fibre: 'Ballast\u00adstoffe',
  sugars: 'Zucker',
  addedSugars: 'Zugesetzter Zucker',
  polyols: 'Mehrwertige Alkohole',
  alcohol: 'Alkohol',
  salt: 'Salz',
  sodium: 'Natrium',
  potassium: 'Kalium',
  calcium: 'Calcium',
  iron: 'Eisen',
  vitaminD: 'Vitamin D',
  water: 'Wasser',
}

export const deNames: Names = {
  nutrient,
  nutrientPart: {
    saturated: 'davon gesättigt',
    trans: 'davon Trans\u00adfett\u00adsäuren',
    sugars: 'davon Zucker',
    addedSugars: 'davon zugesetzt',
  },
  nutrientName: {
    ...nutrient,
    saturated: 'gesättigte Fettsäuren',
    carbohydrate: 'Kohlenhydrate',
    fibre: 'Ballaststoffe',
    addedSugars: 'zugesetzter Zucker',
    polyols: 'mehrwertige Alkohole',
  },
  basis: {serving: 'eine Portion', '100 g': '100 g', batch: 'ganze Menge'},
  verdict: {
    agrees: 'stimmt',
    tolerated: 'inner\u00adhalb der Tole\u00adranz',
    drift: 'weicht ab',
    unknown: 'nicht zu sagen',
  },
  verdictMeaning: {
    agrees: 'die angegebene Zahl liegt innerhalb der Unsicherheit der berechneten',
    tolerated:
      'sie liegt außerhalb der Unsicherheit, aber innerhalb der Toleranz, die dieses Kochbuch zulässt',
    drift: 'sie liegt außerhalb von beiden; eine Seite mit einer solchen Zahl erscheint nicht',
    unknown: 'einem Lebensmittel fehlt die Zahl, die berechnete ist nur eine untere Grenze',
  },
  severity: {error: 'verhindert das Erscheinen', warning: 'warnt', note: 'merkt an'},
  tolerance: {
    household: 'die einer Haushaltsküche',
    us: 'die der Kennzeichnung in den USA (21 CFR 101.9(g))',
    'us both ways': 'die der Kennzeichnung in den USA (21 CFR 101.9(g)), nach beiden Seiten',
    eu: 'die des EU-Leitfadens vom Dezember 2012',
    strict: 'keine: es zählt allein die Unsicherheit',
  },
  aisle: {
    vegetables: 'Gemüse',
    fruit: 'Obst',
    'herbs and spices': 'Kräuter und Gewürze',
    dairy: 'Milchprodukte',
    eggs: 'Eier',
    meat: 'Fleisch',
    poultry: 'Geflügel',
    fish: 'Fisch',
    fats: 'Öle und Fette',
    breads: 'Brot',
    grains: 'Getreide und Nudeln',
    pulses: 'Hülsenfrüchte',
    baking: 'Backen',
    sweeteners: 'Zucker und Süßes',
    nuts: 'Nüsse und Samen',
    condiments: 'Würzmittel',
    prepared: 'Fertiges',
    drinks: 'Getränke',
    other: 'Alles andere',
  },
}
