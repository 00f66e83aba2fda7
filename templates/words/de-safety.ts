import type {CautionId} from '../../src/check/safety/cautions.ts'
import {temperatureText} from '../../src/check/safety/hazard.ts'
import {allergens} from '../../src/food/food.ts'
import {allergenName} from './de-allergens.ts'
import type {en} from './en.ts'

const caution: Readonly<Record<CautionId, string>> = {
  poultry: `Geflügel: innen auf ${temperatureText('poultry')} garen; nach dem rohen Fleisch Hände, Brett und Messer waschen.`,
  groundMeat: `Hackfleisch: durch und durch auf ${temperatureText('groundMeat')} garen.`,
  wholeMeat: `Fleisch am Stück: innen auf ${temperatureText('wholeMeat')} garen und mindestens 3 Minuten ruhen lassen.`,
  fish: `Fisch: innen auf ${temperatureText('fish')} garen, oder bis er undurchsichtig ist und zerfällt.`,
  shellfish:
    'Krebs- und Weichtiere: garen, bis sie undurchsichtig sind, Muscheln, bis sie sich öffnen.',
  egg: `Eier: garen, bis Eiweiß und Eigelb fest sind, Eierspeisen auf ${temperatureText('egg')}; was weich oder roh bleibt, verlangt pasteurisierte Eier.`,
  flour: 'Mehl ist roh: Teig nicht essen, bevor er gebacken oder gekocht ist.',
  kidneyBean:
    'Getrocknete Kidneybohnen: einweichen, dann in frischem Wasser sprudelnd kochen (mindestens 10 Minuten, nach dem Rat der US FDA 30), bevor sie sanfter gegart werden.',
  rice: 'Reis: heiß essen, oder rasch abkühlen und innerhalb von 2 Stunden in den Kühlschrank stellen.',
  honey: 'Honig ist nichts für Kinder unter 12 Monaten.',
  cooling:
    'Zum Aufheben: in flache Gefäße füllen, abkühlen und innerhalb von 2 Stunden in den Kühlschrank stellen.',
  reheating: 'Zum Aufwärmen: einmal, durch und durch auf 74 °C (165 °F) erhitzen.',
}

const diet: Readonly<Record<string, {readonly name: string; readonly leftOpen?: string}>> = {
  vegetarian: {
    name: 'vegetarisch',
    leftOpen: 'Mancher Käse wird mit Lab von Kälbern gemacht: die Packung lesen.',
  },
  vegan: {
    name: 'vegan',
    leftOpen: 'Mancher Wein und Essig wird mit Ei, Milch oder Fisch geklärt: die Packung lesen.',
  },
  pescatarian: {name: 'pescetarisch'},
  'pork-free': {name: 'ohne Schweinefleisch'},
  'beef-free': {name: 'ohne Rindfleisch'},
  'alcohol-free': {name: 'ohne Alkohol'},
  'gluten-free ingredients': {
    name: 'Zutaten ohne Gluten',
    leftOpen:
      'Nur nach den Zutaten: ob es weniger als 20 mg Gluten im Kilogramm hat, zeigt eine Messung.',
  },
}

export const safety: (typeof en)['safety'] = {
  caution: ({id}) => caution[id],
  localRulesFirst:
    'Rat für Haushaltsküchen aus den genannten Quellen; örtliche Vorschriften und zugelassene Fachleute gehen vor.',
  promise: (word) => {
    const allergen = allergens.find((one) => one === word)
    return allergen ? allergenName(allergen) : (diet[word]?.name ?? word)
  },
  leftOpen: ({name, leavesOpen}) => diet[name]?.leftOpen ?? leavesOpen,
}
