/** Texts about doughs and tins. */
export const baking = {
  title: 'For the baker',
  formula: 'The dough, its flour as 100 %',
  ingredient: 'Ingredient',
  ofFlour: 'Of the flour',
  weight: 'Weight',
  hydration: (percent: string) => `Hydration, plain water by flour: ${percent}.`,
  effective: (percent: string) => `With the water of milk, eggs, fruit and the rest: ${percent}.`,
  opened: 'What is made ahead is counted by what it is made from.',
  pieces: 'Pieces',
  piecesOf: (count: number, weight: string) => `${count} of ${weight}`,
  left: (weight: string) => `${weight} of dough left over`,
  tins: 'In another tin',
  tin: 'Tin',
  /** A tin by its inner size: `20 cm`, `23 x 33 cm`. */
  tinOf: {
    round: (size: string) => `${size} round`,
    square: (size: string) => `${size} square`,
    rectangle: (size: string) => size,
    ring: (size: string, tube: string) => `${size} ring, tube ${tube}`,
  },
  deep: (tin: string, depth: string) => `${tin}, ${depth} deep`,
  sameDepth: 'As deep a batter',
  filledAlike: 'As full a tin',
  tinsNote:
    'Multiply every ingredient. The time in the oven does not scale with them: look earlier, and test.',
}
