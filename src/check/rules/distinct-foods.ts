import type {Food} from '../../food/food.ts'
import type {Label} from '../../food/label.ts'
import type {CookbookRule} from '../rule.ts'

export const distinctFoods: CookbookRule = {
  id: 'distinct-foods',
  severity: 'warning',
  summary: 'Each food stands in foods.yaml once.',
  why: 'Under two names it is bought twice, and the next change reaches only one of them.',
  *check({cookbook}) {
    const seen = new Map<string, Food>()
    const inWritingOrder = cookbook.foods.own.toSorted((left, right) => line(left) - line(right))
    for (const food of inWritingOrder) {
      const key = figuresKey(food)
      const first = seen.get(key)
      if (!first) seen.set(key, food)
      else if (food.named) {
        const what = food.label ? 'the same panel' : 'the same food of a table'
        yield {
          ...food.named,
          reason: `\`${food.name}\` is \`${first.name}\` again, with ${what}, expected one entry`,
          actual: food.name,
          note: `Write it as another name: \`also: [${food.name}]\` at \`${first.name}\`. Two packets that happen to agree? Let them differ in \`read\` or \`sold\`.`,
        }
      }
    }
  },
}

function line({named}: Food): number {
  return named?.place.start.line ?? 0
}

/** Two foods with the same key have the same figures from the same place, and are sold alike. */
function figuresKey({id, label, sold, refuseRatio}: Food): string {
  const figures = label ? panelKey(label) : id
  return JSON.stringify([figures, sold ?? null, refuseRatio])
}

function panelKey({printed, printedPolyols, perText, rules, state, readOn}: Label): unknown {
  const lines = [...printed, ...printedPolyols].map(([name, {text}]) => `${name} ${text}`)
  return [perText, rules, state, readOn?.day ?? null, lines.toSorted()]
}
