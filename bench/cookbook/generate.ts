import {statedBlock} from '../../src/check/rules/missing-stated.ts'
import type {SourceText} from '../../src/cookbook/sources.ts'
import {understandCookbook} from '../../src/cookbook/understand.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {component, dish, type GeneratedComponent} from './dishes.ts'
import {drawer} from './draw.ts'
import {mostPackets, type Packet, packets} from './labels.ts'
import {statedPlace} from './recipe-text.ts'
import {paragraph} from './remarks.ts'

/** Recipes come in groups whose components only the group uses: 4 components, 16 dishes. */
const groupSize = 20
const groupComponents = 4
/** How many recipes are computed at once, so that memory stays bounded. */
const chunkSize = 500
const packetsOfDish = 3

/**
 * A cookbook of `size` recipes, the same in every run: a fifth of them components, up to 200
 * packets, a plan and a page for every hundred, stated figures that agree.
 * @param size a multiple of 20
 */
export function* generatedCookbook(size: number): Iterable<SourceText> {
  const shelf = packets(Math.min(mostPackets, size * 2))
  const shared: readonly SourceText[] = [
    {path: 'cookbook.yaml', text: settings},
    {path: 'foods.yaml', text: shelf.map(({entry}) => entry).join('\n')},
  ]
  yield* shared
  for (let number = 0; number < size / 100; number++) {
    yield plan(number, size)
    yield {
      path: `pages/page-${number}.md`,
      text: `---\ntitle: Notes from the boathouse\n---\n\n${paragraph(drawer(number + 1), 9)}\n`,
    }
  }
  for (let start = 0; start < size; start += chunkSize) {
    const recipes = recipeTexts(start, Math.min(size, start + chunkSize), shelf)
    yield* withFigures(shared, recipes)
  }
}

const settings = `title: The generated table
description: A cookbook that a program wrote, to see how long another one takes over it.
language: en
address: https://boathouse.example/
currency: EUR
scale: 1 g
rules: eu
tolerance: household
`

/** Recipes by their place in the cookbook; only whole groups make up a chunk. */
function recipeTexts(from: number, to: number, shelf: readonly Packet[]): readonly SourceText[] {
  return Array.from({length: (to - from) / groupSize}, (_, index) => {
    const group = from / groupSize + index
    const components = Array.from({length: groupComponents}, (_each, own) =>
      component(group * groupComponents + own),
    )
    const dishes = Array.from({length: groupSize - groupComponents}, (_each, own) =>
      dishOf(group * (groupSize - groupComponents) + own, components, shelf),
    )
    return [...components, ...dishes]
  }).flat()
}

function dishOf(
  number: number,
  components: readonly GeneratedComponent[],
  shelf: readonly Packet[],
): SourceText {
  const one = components[number % components.length]
  const other = components[(number + 1) % components.length]
  if (!one || !other) throw new Error('A group has components')
  const bought = Array.from({length: packetsOfDish}, (_, index) => {
    const packet = shelf[(number * packetsOfDish + index) % shelf.length]
    return packet ? [packet] : []
  }).flat()
  return dish(number, bought, [one, other])
}

/** The same recipes with what the program computes for them stated. */
function withFigures(
  shared: readonly SourceText[],
  recipes: readonly SourceText[],
): readonly SourceText[] {
  const {cookbook} = understandCookbook({texts: [...shared, ...recipes], images: []})
  const {computed} = computeCookbook(cookbook)
  const byPath = new Map([...computed.values()].map((one) => [one.recipe.path, one] as const))
  return recipes.map(({path, text}) => {
    const one = byPath.get(path)
    const block = one && statedBlock(one, cookbook.settings)
    if (block === undefined) throw new Error(`${path} cannot be computed`)
    return {path, text: text.replace(statedPlace, `${block}\n`)}
  })
}

function plan(number: number, size: number): SourceText {
  const dishes = (size / groupSize) * (groupSize - groupComponents)
  const draw = drawer(2_000_000 + number)
  const servings = Array.from({length: 7}, (_, day) => (number * 7 + day) % dishes).map(
    (each) => `  dish-${each}: ${draw.number(2, 8, 2)}`,
  )
  const text = [
    `---\ntitle: Week ${'abcdefghij'[number % 10]} at the boathouse`,
    'servings:',
    ...servings,
    `---\n\n${paragraph(draw, 5)}\n`,
  ].join('\n')
  return {path: `plans/week-${number}.md`, text}
}
