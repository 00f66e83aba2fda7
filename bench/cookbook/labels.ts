import {drawer} from './draw.ts'

/** A packet of the generated cookbook, and how a method calls what is in it. */
export interface Packet {
  readonly name: string
  readonly word: string
  /** The entry of foods.yaml. */
  readonly entry: string
}

interface Kind {
  readonly word: string
  /** g in 100 g. */
  readonly protein: number
  readonly fat: number
  readonly carbohydrate: number
  readonly fibre: number
  readonly facts: string
}

const kinds: readonly Kind[] = [
  {
    word: 'yoghurt',
    protein: 4.6,
    fat: 3.2,
    carbohydrate: 5.4,
    fibre: 0,
    facts: 'contains: [milk], made from: [dairy]',
  },
  {
    word: 'tofu',
    protein: 13.1,
    fat: 7.4,
    carbohydrate: 1.6,
    fibre: 1.1,
    facts: 'contains: [soy], made from: [plant]',
  },
  {
    word: 'hummus',
    protein: 7.2,
    fat: 17.3,
    carbohydrate: 11.2,
    fibre: 4.8,
    facts: 'contains: [sesame], made from: [plant]',
  },
  {
    word: 'relish',
    protein: 1.2,
    fat: 0.6,
    carbohydrate: 21.4,
    fibre: 1.9,
    facts: 'contains: [], may contain: [celery], made from: [plant]',
  },
  {
    word: 'pesto',
    protein: 4.9,
    fat: 32.1,
    carbohydrate: 6.3,
    fibre: 2.2,
    facts: 'contains: [milk], may contain: [hazelnut], made from: [plant, dairy]',
  },
  {
    word: 'miso',
    protein: 11.4,
    fat: 5.1,
    carbohydrate: 19.8,
    fibre: 5.2,
    facts: 'contains: [soy], made from: [plant]',
  },
  {
    word: 'chutney',
    protein: 0.9,
    fat: 0.4,
    carbohydrate: 43.5,
    fibre: 1.4,
    facts: 'contains: [mustard], made from: [plant]',
  },
  {
    word: 'passata',
    protein: 1.5,
    fat: 0.3,
    carbohydrate: 5.1,
    fibre: 1.3,
    facts: 'contains: [], made from: [plant]',
  },
]

/** Invented places: 25 of them and the kinds make 200 different packets. */
const places =
  `upstream downstream lockside riverbank millpond northshore southshore eastbank westbank
  headland tideway weirside backwater highwater lowwater landing slipway towpath ferryman
  moorings reedbed sandbar stonequay bluebridge oldharbour`.split(/\s+/u)

export const mostPackets = places.length * kinds.length

/** @param count 1 to `mostPackets` */
export function packets(count: number): readonly Packet[] {
  return places
    .flatMap((place, row) => kinds.map((kind, column) => packet(place, kind, row * 8 + column)))
    .slice(0, count)
}

function packet(place: string, {word, facts, ...macros}: Kind, index: number): Packet {
  const draw = drawer(index + 1)
  const part = (grams: number) => (grams * draw.number(85, 115, 1)) / 100
  const protein = tenths(part(macros.protein))
  const fat = tenths(part(macros.fat))
  const carbohydrate = tenths(part(macros.carbohydrate))
  const fibre = tenths(macros.fibre)
  const per = (p: number, f: number, c: number, fibreFactor: number) =>
    Math.round(protein * p + fat * f + carbohydrate * c + fibre * fibreFactor)
  const printed = [
    'per: 100 g',
    // Factors of an EU panel: Regulation (EU) 1169/2011, Annex XIV.
    `energy kJ: ${per(17, 37, 17, 8)} kJ`,
    `energy: ${per(4, 9, 4, 2)} kcal`,
    `fat: ${fat} g`,
    `saturated: ${tenths(fat / 4)} g`,
    `carbohydrate: ${carbohydrate} g`,
    `sugars: ${tenths(carbohydrate / 3)} g`,
    `fibre: ${fibre} g`,
    `protein: ${protein} g`,
    `salt: ${draw.number(1, 9, 1) / 10} g`,
    'rules: eu',
    'read: 2026-10-03',
  ]
  const name = `${place} ${word}`
  const sold = `{ weight: ${draw.number(150, 500, 50)} g, price: ${draw.number(1, 5, 1)}.49, aisle: condiments }`
  const lines = [
    `  label: { ${printed.join(', ')} }`,
    `  sold: ${sold}`,
    ...facts.split(/, (?=may|made)/u).map((fact) => `  ${fact}`),
  ]
  return {name, word, entry: `${name}:\n${lines.join('\n')}\n`}
}

function tenths(grams: number): number {
  return Math.round(grams * 10) / 10
}
