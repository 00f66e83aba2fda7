import type {CookingMethod} from '../../src/food/cooking-methods.ts'
import {allergenGroup, allergenName, declaredAllergens} from './de-allergens.ts'
import {baking} from './de-baking.ts'
import {book, cards} from './de-book.ts'
import {cooking} from './de-cooking.ts'
import {declared} from './de-declared.ts'
import {finding} from './de-finding.ts'
import {deNames} from './de-names.ts'
import {safety} from './de-safety.ts'
import {list, shopping} from './de-shopping.ts'
import {stylePage} from './de-style.ts'
import {timetable} from './de-timetable.ts'
import type {Words} from './en.ts'

function plural(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`
}

const cookingMethod: Readonly<Record<CookingMethod, string>> = {
  flamed: 'flambiert',
  'stirred in off the heat': 'abseits vom Herd eingerührt',
  'kept overnight': 'über Nacht stehen gelassen',
  'baked on top': 'obenauf mitgebacken',
  'pulses boiled briefly, drained': 'Hülsenfrüchte, kurz gekocht und abgegossen',
  'pulses boiled long, drained': 'Hülsenfrüchte, lange gekocht und abgegossen',
  'potatoes boiled in their skins': 'Kartoffeln, in der Schale gekocht',
  'greens boiled, drained': 'Blattgemüse, gekocht und abgegossen',
  'greens in little water, drained': 'Blattgemüse, in wenig Wasser gegart und abgegossen',
  'fruit preserved in jars': 'Obst, in Gläsern eingemacht',
}

/** Every text of the pages in German. What the checks say of a writer's files stays English. */
export const de: Words = {
  ...deNames,
  language: 'de',
  decimal: ',',
  allergenName,
  allergenGroup,
  declaredAllergens,
  book,
  cards,
  declared,
  cooking,
  finding,
  list,
  shopping,
  baking,
  safety,
  timetable,
  stylePage,

  claims: {
    title: 'Angaben',
    lawUs:
      'Nach 21 CFR 101.54–.62, die Portion anstelle der Referenzmenge. Wo Essen verkauft wird, entscheidet das örtliche Recht.',
    lawEu:
      'Nach der Verordnung (EG) 1924/2006. Wo Essen verkauft wird, entscheidet das örtliche Recht.',
  },

  nav: {
    label: 'Seiten',
    recipes: 'Rezepte',
    shopping: 'Einkaufsliste',
    figures: 'Nährwerte',
    foods: 'Lebensmittel',
    skip: 'Zum Text springen',
  },

  footer: {
    caution:
      'Zahlen und Allergene ergeben sich aus den gewogenen Zutaten und den Tabellen und Packungen, die ' +
      'unter Lebensmittel stehen. Packungen ändern sich: die eigenen lesen. Nichts hier ist ' +
      'ärztlicher Rat; örtliche Vorschriften und zugelassene Fachleute gehen vor.',
    checked: 'Wie diese Zahlen geprüft sind',
    rules: 'Die Regeln',
  },

  and: (names) =>
    names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} und ${names.at(-1)}`,
  atLeastBefore: 'mind.',
  atLeast: (amount) => `mindestens ${amount}`,
  plusMinus: (amount) => `± ${amount}`,
  unknown: 'unbekannt',
  minutes: (minutes) => `${minutes} min`,
  hours: (hours, minutes) => (minutes === 0 ? `${hours} h` : `${hours} h ${minutes} min`),
  days: (days) => plural(days, 'Tag', 'Tage'),
  weeks: (weeks) => plural(weeks, 'Woche', 'Wochen'),
  months: (months) => plural(months, 'Monat', 'Monate'),
  servings: (servings) => plural(servings, 'Portion', 'Portionen'),

  recipe: {
    ingredients: 'Zutaten',
    method: 'Zubereitung',
    figures: 'Nährwerte',
    keeping: 'Haltbarkeit',
    cautions: 'Damit es bekommt',
    cautionSources: 'Quellen',
    allergens: 'Allergene',
    usedIn: 'Kommt vor in',
    tags: 'Abgelegt unter',
    serves: 'Portionen',
    servingWeighs: 'Eine Portion',
    batchWeighs: 'Ganze Menge',
    handsOn: 'Arbeit',
    totalTime: 'Von Anfang bis Ende',
    oven: 'Ofen',
    pan: 'Form',
    fridge: 'Im Kühlschrank',
    freezer: 'Im Gefrierschrank',
    room: 'Bei Zimmertemperatur',
    card: 'Eine Karte drucken',
    caption: 'Reiner Text zum Kopieren',
    optional: 'nach Belieben; nicht in den Zahlen',
    ifWanted: 'nach Belieben',
    uncounted: (because) => `nicht in den Zahlen: ${because}`,
    eaten: (amount) => `${amount} davon werden gegessen`,
    pouredOff: (amount, what) => `${amount} ${what === 'fat' ? 'Fett' : 'Flüssigkeit'} abgegossen`,
    pouredOffLike: (cooked) => `Fett abgegossen, bis es ${cooked} ist`,
    cooked: (method) => `${cookingMethod[method]}: ein Teil davon geht verloren`,
    trimmed: (amount) => `${amount} abgeschnitten und weggeworfen`,
    because: (text, because) => `${text} (${because})`,
    simmered: (time) => `kocht ${time}, ein Teil des Alkohols verdampft dabei`,
    bought: (amount) => `wie gekauft; ${amount} davon werden gegessen`,
    ofBatch: (share) => `${share} einer Rezeptmenge`,
    or: (amount, name) => `Oder ${amount} ${name}`,
    orChanges: (changes) => `eine Portion hat dann ${changes}`,
    orChangesNothing: 'die Zahlen bleiben auf ein Gramm gleich',
    brings: (names) => `bringt ${names} mit`,
    countedWhole: 'ganz gerechnet, nichts abgegossen oder abgeschnitten',
    more: (amount, name) => `${amount} mehr ${name}`,
    less: (amount, name) => `${amount} weniger ${name}`,
  },

  figures: {
    stated: 'Ange\u00adgeben',
    computed: 'Berech\u00adnet',
    verdict: 'Urteil',
    nutrient: 'Nährstoff',
    serving: 'Eine Portion',
    servingOf: (weight) => `Eine Portion, ${weight}`,
    per100g: '100 g',
    batch: 'Ganze Menge',
    computedBeside: 'Angegeben und berechnet',
    noStated: 'Zu diesem Rezept ist nichts angegeben: die gezeigten Zahlen sind die berechneten.',
    rest: 'Das ± ist, was Küchenwaage, gerundete Packungen und Tabelle offen lassen (die doppelte Standardunsicherheit).',
    missing: (nutrientName, foods) => `Keine Zahl für ${nutrientName}: ${foods}.`,
  },

  energy: {
    title: 'Woher die Energie kommt',
    share: (name, percent) => `${name} ${percent} %`,
    protein: 'Eiweiß',
    fat: 'Fett',
    carbohydrate: 'Kohlenhydrate',
    fibre: 'Ballaststoffe',
    polyols: 'Mehrwertige Alkohole',
    alcohol: 'Alkohol',
  },

  comparison: {
    title: 'Im Vergleich mit',
    basis: (per) => `Verglichen ist: ${per}.`,
    sameWeight: 'Verglichen ist das Gewicht einer Portion.',
    here: 'dieses Rezept',
  },

  allergens: {
    contains: 'Enthält',
    none: 'Von keiner Zutat ist eines bekannt.',
    outside: 'Außerhalb dieses Gesetzes, aber zu beachten',
    optional: 'In dem, was nach Belieben oder stattdessen dazukommt',
    mayContain: 'Kann enthalten, wie die Packungen sagen',
    notStated: 'Nicht angegeben für',
    freeFrom: 'Frei von, durch jeden Bestandteil und jede Packung',
    suits: 'Passt für',
    lawUs: 'Nach den neun Allergenen des US-Rechts. Die eigenen Packungen lesen.',
    lawEu: 'Nach den vierzehn Allergenen des EU-Rechts. Die eigenen Packungen lesen.',
  },

  index: {
    title: 'Rezepte',
    intro: (count) => `${plural(count, 'Rezept', 'Rezepte')}. Die Zahlen gelten für eine Portion.`,
    recipe: 'Rezept',
    serving: 'Portion',
    time: 'Zeit',
    components: 'Vorher gemacht',
    componentsIntro:
      'Fonds, Teige und Soßen, die andere Rezepte nach Gewicht nehmen. Die Zahlen gelten für 100 g.',
    batch: 'Menge',
    keeps: 'Hält',
    planned: 'Pläne',
    parts: 'Alle Rezepte nach Namen',
    componentParts: 'Alles vorher Gemachte nach Namen',
  },

  plan: {
    cooks: 'Was gekocht wird',
    list: 'Zu kaufen',
    figures: 'Die Zahlen gelten für eine Portion.',
    tick: 'Auf dieser Liste abhaken und ergänzen',
  },

  figuresPage: {
    title: 'Nährwerte',
    intro:
      'Jede Zahl, die diese Seiten nennen, neben dem, was die gewogenen Zutaten ergeben. Mit einer Zahl, die davon abweicht, erscheint keine Seite; darum steht hier keine solche.',
    computedOnly: 'Nichts angegeben; genannt sind die berechneten Zahlen.',
    tolerance: (name) => `Die Toleranz dieses Kochbuchs: ${name}.`,
    legend: 'Was die Urteile bedeuten',
    open: 'Was offen blieb',
    openIntro: 'Warnungen und Anmerkungen, die beim Erstellen dieser Seiten kamen.',
  },

  foodsPage: {
    title: 'Lebensmittel',
    intro:
      'Die verwendeten Lebensmittel, je 100 g essbarer Teil, und woher ihre Zahlen kommen. USDA SR28 ist die USDA National Nutrient Database for Standard Reference, Release 28 (Agricultural Research Service, 2015, durchgesehen 2016); ihre Zeilen sind NDB-Nummern.',
    food: 'Lebensmittel',
    usedBy: 'Verwendet in',
    fromTable: (table, row) => `${table}, Zeile ${row}`,
    fromLabel: 'Packung, vom Koch abgeschrieben',
  },

  rulesPage: {
    title: 'Regeln',
    intro:
      'Was geprüft wird, bevor eine Seite erscheint. Die Regeln selbst stehen auf Englisch da.',
    source: 'Quelle',
    example: 'Beispiel',
    fails: 'Dazu heißt es',
    passes: 'Und so geht es durch:',
  },

  card: {
    title: (recipe) => `Karte: ${recipe}`,
    size: 'Kartengröße',
    sizes: {A6: 'A6 (105 × 148 mm)', '6x4': '6 × 4 Zoll', '5x3': '5 × 3 Zoll'},
    front: (recipe) => `Vorderseite: ${recipe}`,
    back: (recipe) => `Rückseite: ${recipe}`,
    print: 'Mit dem Menü des Browsers drucken, beidseitig, in wahrer Größe.',
    backToRecipe: 'Zurück zum Rezept',
    scan: 'Die Seite dieses Rezepts',
  },

  notFound: {
    title: 'Nichts auf dieser Schale',
    text: 'Unter dieser Adresse ist keine Seite. Alle Rezepte stehen auf der ersten.',
    link: 'Alle Rezepte',
  },

  caption: {
    full: 'Rezept',
  },
}
