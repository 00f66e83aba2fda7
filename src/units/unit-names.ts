import type {LengthUnit, VolumeUnit, WeightUnit} from './units.ts'

/** Every spelling of a unit, in lower case; the unit itself is one of them. */
export const weightNames: ReadonlyMap<string, WeightUnit> = spellings({
  g: ['gram', 'grams', 'gramme', 'grammes'],
  kg: ['kilo', 'kilos', 'kilogram', 'kilograms'],
  oz: ['ounce', 'ounces'],
  lb: ['lbs', 'pound', 'pounds'],
  mg: ['milligram', 'milligrams'],
})

export const volumeNames: ReadonlyMap<string, VolumeUnit> = spellings({
  ml: ['millilitre', 'millilitres', 'milliliter', 'milliliters'],
  cl: ['centilitre', 'centilitres'],
  dl: ['decilitre', 'decilitres'],
  l: ['litre', 'litres', 'liter', 'liters'],
  tsp: ['tsps', 'teaspoon', 'teaspoons'],
  tbsp: ['tbsps', 'tablespoon', 'tablespoons'],
  cup: ['cups'],
  'fl oz': ['fluid ounce', 'fluid ounces'],
  pint: ['pints'],
  quart: ['quarts'],
})

export const lengthNames: ReadonlyMap<string, LengthUnit> = spellings({
  mm: ['millimetre', 'millimetres'],
  cm: ['centimetre', 'centimetres'],
  in: ['inch', 'inches', '"', '″'],
})

function spellings<U extends string>(
  names: Readonly<Record<U, readonly string[]>>,
): Map<string, U> {
  const spelled = new Map<string, U>()
  for (const unit in names) {
    for (const name of [unit, ...names[unit]]) spelled.set(name, unit)
  }
  return spelled
}

/** Words as units are looked up: lower case, single blanks, no closing point. */
export function unitWords(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/g, ' ').replace(/\.$/, '')
}
