import type {Draw} from './draw.ts'

/** Sentences that any dish can have beside its steps: no food, no figure and no time in them. */
const openings = [
  'The crew asks for this one when the river is high and nobody wants to go out',
  'It began as a way to use up what the market had left on a wet afternoon',
  'What makes it work is patience at the start and restraint at the end',
  'Nobody remembers who cooked it first, and *everybody* claims to have',
  'It looks like more work than it is, and most of that work is waiting',
  'The texture matters more here than the colour, so trust the spoon',
  'Taste as you go: **the pot knows more than the page**',
  'A wide pan does better than a tall one, since what is crowded steams',
] as const

const middles = [
  'and the second helping is usually gone before the first plate is cold',
  'which is why the lid stays near the stove and not in the cupboard',
  'but a heavy hand with the ladle makes it dull, so go gently',
  'and it forgives almost any delay except a scorched bottom',
  'though the purists at the long table will tell you otherwise',
  'so that each spoonful has something soft and something with a bite',
  'because the flavour grows rounder for as long as it is left in peace',
  'and a wooden spoon that stands up in it is *the only* gauge we use',
] as const

const closings = [
  'Cut things to one size, or the small pieces fall apart before the large ones are done.',
  'Where the edges catch a little, scrape them in; that is where the depth comes from.',
  'If it looks too tight, loosen it with a splash from the kettle and look again.',
  'We have cooked it over a camping stove, with a *dented* lid, in the rain.',
  'Guests who say they are not hungry should be given a small bowl and left alone.',
  'The rest is a matter of taste, and the table is the place to argue about it.',
  'Write your own weights beside ours: kettles and pots differ, scales should not.',
  'It travels well in a wide flask, wrapped in a towel, at the bottom of the boat.',
] as const

export const variations = [
  'Swap the vegetables for what the season has; keep the weight the same.',
  'For a thicker result, mash a ladleful against the side of the pot.',
  'For a brighter one, hold back a little of what goes in last.',
  'Toast the spices in the dry pan first when you have the time.',
  'Leave it coarse for the bowl, or blend it for the flask.',
  'Double it in two pots, never in one: a deep pot heats unevenly.',
] as const

export function paragraph(draw: Draw, sentences: number): string {
  const text = Array.from({length: sentences}, (_, index) =>
    index % 2 === 0 ? `${draw.from(openings)}, ${draw.from(middles)}.` : draw.from(closings),
  )
  return wrapped(text.join(' '), '')
}

/** Lines as a writer breaks them: no longer than 100 characters. */
export function wrapped(text: string, indent: string): string {
  const lines = ['']
  for (const word of text.split(' ')) {
    const last = lines.at(-1) ?? ''
    if (last.length + word.length + 1 > 100) lines.push(indent + word)
    else lines.splice(-1, 1, last === '' ? word : `${last} ${word}`)
  }
  return lines.join('\n')
}
