import type {en} from './en.ts'

export const baking: (typeof en)['baking'] = {
  title: 'Für Bäcker',
  formula: 'Der Teig, sein Mehl als 100 %',
  ingredient: 'Zutat',
  ofFlour: 'Vom Mehl',
  weight: 'Gewicht',
  hydration: (percent) => `Hydratation, reines Wasser zu Mehl: ${percent}.`,
  effective: (percent) => `Mit dem Wasser aus Milch, Eiern, Obst und allem anderen: ${percent}.`,
  opened: 'Was vorher gemacht wird, zählt mit dem, woraus es besteht.',
  pieces: 'Stücke',
  piecesOf: (count, weight) => `${count} zu ${weight}`,
  left: (weight) => `${weight} Teig bleiben übrig`,
  tins: 'In einer anderen Form',
  tin: 'Form',
  tinOf: {
    round: (size) => `${size} rund`,
    square: (size) => `${size} quadratisch`,
    rectangle: (size) => size,
    ring: (size, tube) => `${size} Ring, Rohr ${tube}`,
  },
  deep: (tin, depth) => `${tin}, ${depth} hoch`,
  sameDepth: 'Teig gleich hoch',
  filledAlike: 'Form gleich voll',
  tinsNote: 'Jede Zutat malnehmen. Die Zeit im Ofen wächst nicht mit: früher nachsehen und prüfen.',
}
