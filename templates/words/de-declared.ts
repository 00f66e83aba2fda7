import type {en} from './en.ts'
import {declared as english} from './en-declared.ts'

/** Nutrition declarations; the panel of the US stays as its law has it. */
export const declared: (typeof en)['declared'] = {
  name: {
    // The German wording of Regulation (EU) 1169/2011 Annex XV (from memory).
    eu: {
      energy: 'Energie',
      energyEuKilojoules: 'Energie',
      fat: 'Fett',
      saturated: 'davon gesättigte Fett\u00adsäuren',
      trans: 'davon Transfettsäuren',
      cholesterol: 'Cholesterin',
      carbohydrate: 'Kohlenhydrate',
      availableCarbohydrate: 'Kohlenhydrate',
      sugars: 'davon Zucker',
      addedSugars: 'davon zugesetzt',
      polyols: 'davon mehrwertige Alkohole',
      fibre: 'Ballaststoffe',
      protein: 'Eiweiß',
      salt: 'Salz',
      sodium: 'Natrium',
      vitaminD: 'Vitamin D',
      potassium: 'Kalium',
      calcium: 'Calcium',
      iron: 'Eisen',
    },
    us: english.name.us,
  },
  energyMethod: {
    foods: 'die Summe der Angaben der Lebensmittel',
    general: 'nach den allgemeinen Faktoren 4-4-9',
    digestible: 'nach 4-4-9, Ballaststoffe und mehrwertige Alkohole mit eigenen Faktoren',
    eu: 'nach den Faktoren der EU',
  },
  title: {
    eu: 'Nährwertdeklaration, gerundet wie auf EU-Packungen',
    us: 'Nährwerttafel, gerundet wie auf US-Packungen',
  },
  reference: {eu: '% RM, eine Portion', us: '% DV, eine Portion'},
  referenceOf100g: {eu: '% RM, 100 g', us: '% DV, 100 g'},
  referenceNote: {
    eu: 'RM: Referenzmenge für einen durchschnittlichen Erwachsenen (8400 kJ/2000 kcal).',
    us: 'DV: Tageswert der USA für Erwachsene und Kinder ab 4 Jahren, bei 2000 Kilokalorien am Tag.',
  },
  lessThan: (amount) => `< ${amount}`,
  energyNote: (method) => `Energie: ${method}.`,
  otherEnergyNote:
    'Auf Packungen verlangt EU-Recht stattdessen die Faktoren der Verordnung (EU) 1169/2011 Anhang XIV.',
  roundedNote:
    'Diese Zahlen sind für eine Packung gerundet und für nichts anderes: summiert wird aus denen darüber.',
  missing: (names) =>
    `Keine vollständige Deklaration: keine Zahl für ${names}. Die Lebensmittel, denen sie fehlt, stehen darüber.`,
  notKnown: 'nicht bekannt',
  netCarbohydrate: (figures) => `Netto-Kohlenhydrate: ${figures}.`,
  netCarbohydrateMeans:
    'Netto-Kohlenhydrate sind hier Kohlenhydrate ohne Ballaststoffe und ohne mehrwertige Alkohole: eine Gewohnheit von Lesern, die kein Gesetz bestimmt. Wer Insulin danach bemisst, frage die, die ihn behandeln.',
  each: (amount, basis) => `${amount}: ${basis}`,
  panel: english.panel,
}
