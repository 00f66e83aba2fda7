import {asciiSlug} from '../cookbook/ascii-slug.ts'
import {statedPlace} from './with-stated.ts'
import {yamlText} from './yaml-text.ts'

/** What a new recipe begins with. */
export interface RecipeStart {
  readonly title: string
  readonly summary?: string
  readonly serves: string
  /** The finished batch, weighed; absent where nobody has cooked it yet. */
  readonly yield?: string
  readonly time?: string
  readonly lines: readonly StartLine[]
  /** Markdown, one paragraph each; none: the writer is asked for them where they belong. */
  readonly steps: readonly string[]
}

/** One ingredient with its amount as written. */
export interface StartLine {
  readonly name: string
  readonly amount: string
  /** As purchased: what peel and bone weigh comes off. */
  readonly isBought?: true
  /** Slug of the recipe it is a component of. */
  readonly recipe?: string
}

/** What stands in a recipe until the writer puts their own words in. */
export const exampleStart: Omit<RecipeStart, 'title'> = {
  summary: 'One sentence that makes somebody want to cook it.',
  serves: '4',
  yield: '1150 g',
  time: '{ hands-on: 10 min, total: 45 min }',
  lines: [
    {name: 'pearl barley', amount: '180 g'},
    {name: 'carrot', amount: '200 g', isBought: true},
    {name: 'onion', amount: '100 g'},
    {name: 'olive oil', amount: '15 g'},
    {name: 'water', amount: '800 g'},
  ],
  steps: [
    'Soften the [onion](#onion) in the [oil](#olive-oil).',
    'Add the [barley](#pearl-barley), the [carrot](#carrot) in slices and the [water](#water), and simmer until the barley is tender, about 35 minutes.',
    'Weigh the finished pot, without the pot, and write the weight after `yield`.',
  ],
}

/** The text of a recipe that has yet to state its figures. */
export function recipeText(start: RecipeStart): string {
  const {title, summary, serves, time, lines, steps} = start
  const written = steps.length > 0 ? steps : [firstStep(lines)]
  return [
    '---',
    `title: ${yamlText(title)}`,
    ...(summary === undefined ? [] : [`summary: ${yamlText(summary)}`]),
    `serves: ${serves}`,
    start.yield === undefined
      ? '# yield: 1150 g             # weigh the finished batch, and write it here'
      : `yield: ${start.yield.padEnd(21)}  # the finished batch, weighed`,
    ...(time === undefined ? [] : [`time: ${time}`]),
    'ingredients:',
    ...lines.map(lineText),
    `${statedPlace}---`,
    '',
    ...written.map((step, index) => `${index + 1}. ${step}`),
    '',
  ].join('\n')
}

function lineText({name, amount, isBought, recipe}: StartLine): string {
  const key = `  ${yamlText(name)}:`
  if (recipe !== undefined) return `${key} { amount: ${amount}, recipe: ${recipe} }`
  return isBought
    ? `${key} { amount: ${amount}, bought: true }   # as purchased: what the peel weighs comes off`
    : `${key} ${amount}`
}

/** Names every ingredient, so that none is missed when it is written over. */
function firstStep(lines: readonly StartLine[]): string {
  const links = lines.map(({name}) => `[${name}](#${asciiSlug(name) || 'ingredient'})`)
  return `Write here what is done with the ${links.join(', the ')}.`
}
