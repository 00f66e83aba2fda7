import type {SourceText} from '../../src/cookbook/sources.ts'
import {type Draw, drawer} from './draw.ts'
import type {Packet} from './labels.ts'
import {bases, fats, finishes, type Staple, seasonings, vegetables} from './pantry.ts'
import {allUsed, front, type Line, remarks, steps, used} from './recipe-text.ts'

/** A recipe that others use by weight. */
export interface GeneratedComponent extends SourceText {
  readonly slug: string
  readonly title: string
}

const styles = ['pot', 'stew', 'tray', 'bowl', 'supper', 'soup'] as const
const pastes = ['base', 'sauce', 'paste', 'stock'] as const
const tags = ['quick', 'batch cooking', 'one pot', 'weekday', 'winter', 'summer', 'picnic'] as const

export function component(number: number): GeneratedComponent {
  const draw = drawer(number + 1)
  const fat = weighed(draw, draw.from(fats))
  const greens = draw.some(3, vegetables).map((staple) => weighed(draw, staple))
  const spices = draw.some(2, seasonings).map((staple) => weighed(draw, staple))
  const salt = {name: 'salt', word: 'salt', grams: draw.number(4, 10, 1)}
  const water = {name: 'water', word: 'water', grams: draw.number(400, 900, 50)}
  const lines = [fat, ...greens, ...spices, salt, water]
  const [first] = greens
  const title = `${capital(first?.name ?? '')} ${draw.from(pastes)} number ${letters(number)}`
  const [soften, simmer] = [draw.number(6, 12, 2), draw.number(20, 40, 5)]
  const text = [
    front({
      title,
      tags: ['component', ...draw.some(1, tags)],
      lines,
      weights: [`yield: ${finished(lines, 85)} g`],
      time: `{ hands-on: 20 min, total: ${soften + simmer + 20} min }`,
      keeps: '{ fridge: 2 days, freezer: 2 months }',
    }),
    steps([
      `Warm ${allUsed([fat])} in a wide pan over a moderate flame, and let ${allUsed(greens)}, cut small, soften in it for ${soften} min without taking colour.`,
      `Stir in ${allUsed(spices)} and wait until they smell of something.`,
      `Pour in ${allUsed([water])}, add ${allUsed([salt])}, and simmer with the lid ajar for ${simmer} min, until a spoon leaves a trail on the bottom of the pan.`,
      'Blend until smooth, and weigh the batch: what the steam took is not on the list.',
      'Cool in shallow boxes within two hours, and chill or freeze it in portions.',
    ]),
    remarks(draw),
  ].join('')
  return {path: `recipes/component-${number}.md`, slug: `component-${number}`, title, text}
}

/** @param slugs components that the dish can be made with, and dishes that it can point to */
export function dish(
  number: number,
  packets: readonly Packet[],
  [made, also]: readonly [GeneratedComponent, GeneratedComponent],
): SourceText {
  const draw = drawer(1_000_000 + number)
  const fat = weighed(draw, draw.from(fats))
  const base = weighed(draw, draw.from(bases))
  const greens = draw.some(draw.number(3, 5, 1), vegetables).map((each) => weighed(draw, each))
  const spices = draw.some(2, seasonings).map((each) => weighed(draw, each))
  const bought = packets.map(({name, word}) => ({name, word, grams: draw.number(20, 90, 5)}))
  const garnish = draw.some(1, finishes).map((each) => weighed(draw, each))
  const ready: Line = {
    name: `${made.title.toLowerCase()}`,
    word: 'base made ahead',
    grams: draw.number(100, 300, 10),
    recipe: made.slug,
  }
  const salt = {name: 'salt', word: 'salt', grams: draw.number(3, 9, 1)}
  const water = {name: 'water', word: 'water', grams: draw.number(300, 800, 50)}
  const lines = [fat, ...greens, ...spices, base, ready, water, salt, ...bought, ...garnish]
  const serves = draw.number(2, 8, 2)
  const portion = Math.round(finished(lines, 90) / serves)
  const [soften, simmer] = [draw.number(6, 12, 2), draw.number(25, 50, 5)]
  const text = [
    front({
      title: `${capital(base.name)} ${draw.from(styles)} with ${greens[0]?.name}`,
      tags: draw.some(3, tags),
      lines,
      weights: [`serves: ${serves}`, `yield: ${portion * serves} g`, `portion: ${portion} g`],
      time: `{ hands-on: 25 min, total: ${soften + simmer + 30} min }`,
      keeps: '{ fridge: 3 days, freezer: 2 months }',
    }),
    steps([
      `Heat the ${used(fat)} in a heavy pot. Add ${allUsed(greens)}, cut into pieces of one size, and let them soften for ${soften} min with the lid on.`,
      `Scatter ${allUsed(spices)} over them, and turn it all over once, so that nothing catches.`,
      `Tip in ${allUsed([base])} and pour in ${allUsed([water])}. Stir the ${used(ready)} through, with ${allUsed([salt])}.`,
      `Bring to the boil, turn the flame down, and simmer for ${simmer} min, until it is tender right through and most of what was poured in is gone.`,
      `Take the pot off the flame. Fold in ${allUsed(bought)}, a spoonful at a time.`,
      `Finish with ${allUsed(garnish)}, taste, and bring the pot to the table.`,
    ]),
    remarks(draw),
    `\n## What is left over\n\nCool in shallow boxes and chill within two hours, at 4 °C or below. Reheat to 74 °C (165 °F) all\nthrough. It goes well beside the [${also.title}](${also.slug}.md).\n`,
  ].join('')
  return {path: `recipes/dish-${number}.md`, text}
}

function weighed(draw: Draw, {name, word, leastGrams, mostGrams}: Staple): Line {
  const step = mostGrams - leastGrams >= 100 ? 10 : 1
  return {name, word, grams: draw.number(leastGrams, mostGrams, step)}
}

/** Whole grams of the batch: less than went in. */
function finished(lines: readonly Line[], percent: number): number {
  return Math.round((lines.reduce((sum, {grams}) => sum + grams, 0) * percent) / 100)
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1)
}

/** A number without digits, which a title could be taken at its word for: 27 is `cb`. */
function letters(number: number): string {
  return [...String(number)].map((digit) => 'abcdefghij'[Number(digit)]).join('')
}
