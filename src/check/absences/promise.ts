import type {Located} from '../../cookbook/problem.ts'
import {nearestNames} from '../../food/nearest-names.ts'
import type {Finding} from '../rule.ts'
import {foodsText, type ObjectingFood} from './objection.ts'

/** Near words a message lists. */
const mostSuggestions = 3

/** A word of `free from` or `suits`, and how messages begin with it. */
export interface Promised {
  readonly promise: 'Free from' | 'Suits'
  readonly word: Located<string>
}

/** What to write instead of a word that ingredients cannot answer for, or why there is nothing. */
export interface OtherWord {
  readonly write?: string
  readonly why: string
}

/** Finds a promise that the dish as listed does not keep; what is known to break it comes first. */
export function* brokenPromise(
  {promise, word}: Promised,
  against: readonly ObjectingFood[],
): Iterable<Finding> {
  const [first] = against
  if (!first) return
  const foods = foodsText(against.filter(({kind}) => kind === first.kind))
  const subject = `${promise} \`${word.value}\``
  yield {
    place: word.place,
    reason:
      first.kind === 'no'
        ? `${subject} contradicted by ${foods}, expected nothing that speaks against it`
        : `${subject} cannot be told, expected \`${first.key}\` of ${foods} in foods.yaml`,
    actual: word.value,
    note: [
      ...workings(against),
      'Packets change: read the one in hand. Local rules on labelling come first.',
    ].join('\n'),
  }
}

/** Which line brings each food, and what is the matter with it. */
export function workings(against: readonly ObjectingFood[]): readonly string[] {
  return against.map(({found: {food, line}, why}) => {
    const name = line.line.name.value
    return name === food.name ? `${food.name} ${why}.` : `${food.name} ${why}; line \`${name}\`.`
  })
}

/** Finds a word that cannot be checked. */
export function unknownWord(
  {promise, word: {value, place}}: Promised,
  names: readonly string[],
  other: OtherWord | undefined,
): Finding {
  const near = other?.write ? [other.write] : nearestNames(value, names, mostSuggestions)
  const quoted = (each: string) => `\`${each}\``
  return {
    place,
    reason: `${promise} \`${value}\` cannot be checked, expected ${near.length > 0 ? near.map(quoted).join(' or ') : 'a word that ingredients can answer for'}`,
    actual: value,
    expected: near,
    note: other?.why ?? `What can be checked: ${names.join(', ')}.`,
  }
}
