import {asciiSlug} from '../../src/cookbook/ascii-slug.ts'
import type {Draw} from './draw.ts'
import {paragraph, variations, wrapped} from './remarks.ts'

/** Stands where the computed figures go. */
export const statedPlace = '# stated\n'

export interface Line {
  readonly name: string
  readonly word: string
  readonly grams: number
  /** Slug of the component that it is. */
  readonly recipe?: string
}

interface Head {
  readonly title: string
  readonly tags: readonly string[]
  readonly lines: readonly Line[]
  /** `serves` and `portion` of a dish, `yield` of both. */
  readonly weights: readonly string[]
  readonly time: string
  readonly keeps: string
}

export function front({title, tags, lines, weights, time, keeps}: Head): string {
  return [
    '---',
    `title: ${title}`,
    `summary: ${title} the way the boathouse has cooked it for years, weighed at every step.`,
    ...weights,
    `time: ${time}`,
    `keeps: ${keeps}`,
    `tags: [${tags.join(', ')}]`,
    'ingredients:',
    ...lines.map(listed),
    `${statedPlace}---\n\n`,
  ].join('\n')
}

function listed({name, grams, recipe}: Line): string {
  return recipe === undefined
    ? `  ${name}: ${grams} g`
    : `  ${name}: { amount: ${grams} g, recipe: ${recipe} }`
}

/** A link to an ingredient, as a method has it. */
export function used({name, word}: Line): string {
  return `[${word}](#${asciiSlug(name)})`
}

export function allUsed(lines: readonly Line[]): string {
  const [last, ...others] = lines.map((line) => `the ${used(line)}`).toReversed()
  if (others.length === 0) return last ?? ''
  return `${others.toReversed().join(', ')} and ${last}`
}

export function steps(texts: readonly string[]): string {
  return `${texts.map((text, index) => wrapped(`${index + 1}. ${text}`, '   ')).join('\n')}\n`
}

/** What stands below the steps: enough to make a recipe of 5 to 6 kB. */
export function remarks(draw: Draw): string {
  return [
    `\n## What makes it work\n\n${paragraph(draw, 11)}\n\n${paragraph(draw, 9)}\n`,
    `\n> ${draw.from(variations)}\n`,
    `\n## Other ways\n\n${draw
      .some(4, variations)
      .map((text) => `* ${text}`)
      .join('\n')}\n\n${paragraph(draw, 9)}\n`,
  ].join('')
}
