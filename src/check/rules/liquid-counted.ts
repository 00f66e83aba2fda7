import type {Located} from '../../cookbook/problem.ts'
import type {Ingredient} from '../../nutrition/computed.ts'
import type {Finding, Rule} from '../rule.ts'

export const liquidCounted: Rule = {
  id: 'liquid-counted',
  severity: 'warning',
  summary:
    'A tin whose figures are those of beans and liquid together is called so, or poured off.',
  why: 'Drained beans hold about half as much again as the same weight with the liquid of the tin, and the plain name does not tell which is counted.',
  source:
    'USDA SR28 (2015), per 100 g: canned kidney beans 81 kcal with liquid (16034) and 124 drained (16145), chickpeas 88 (16058) and 139 (16358).',
  *check({computed}) {
    for (const {line, ingredient, instead} of computed.lines) {
      if (!line.pouredOff) yield* unsaid(line.food ?? line.name, ingredient)
      for (const {choice, ingredient: other} of instead) {
        yield* unsaid(choice.food ?? choice.name, other)
      }
    }
  },
}

const withLiquid = /, with (?:liquid|juice)$/

function* unsaid(written: Located<string>, ingredient: Ingredient): Iterable<Finding> {
  if (ingredient.kind !== 'food') return
  const {name, id} = ingredient.food
  const isSaid = written.value === id || /\bwith (?:liquid|juice)\b/.test(written.value)
  if (!withLiquid.test(name) || isSaid) return
  yield {
    place: written.place,
    reason: `Tin \`${written.value}\` is counted with its liquid, expected \`${name}\` or what is drained`,
    actual: written.value,
    expected: [name],
    note: 'If they are drained, weigh the liquid and write `poured off: { amount: …, what: liquid }`, or name a drained food. If the liquid goes in, write the name out.',
  }
}
