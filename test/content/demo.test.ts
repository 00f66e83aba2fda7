import {fileURLToPath} from 'node:url'
import {beforeAll, describe, expect, test} from 'vitest'
import {type Examined, examine} from '../../src/build.ts'
import {judge} from '../../src/check/verdict.ts'
import type {Located, Problem} from '../../src/cookbook/problem.ts'
import {readFolder} from '../../src/cookbook/read-folder.ts'
import type {IngredientLine, Recipe} from '../../src/cookbook/recipe.ts'
import type {ReadCookbook} from '../../src/cookbook/sources.ts'
import {nutrientUnit} from '../../src/food/nutrients.ts'
import type {Computed, ComputedLine} from '../../src/nutrition/computed.ts'

const content = fileURLToPath(new URL('../../content', import.meta.url))

let read: ReadCookbook
let demo: Examined

beforeAll(async () => {
  read = await readFolder(content)
  demo = examine(read)
})

describe('the demo cookbook', () => {
  test('has nothing to mend', () => {
    expect(demo.problems).toEqual([])
  })

  test('has every figure stated, and agreeing', () => {
    const verdicts = [...demo.computed.values()].flatMap((computed) =>
      judged(computed).map(({verdict}) => verdict),
    )
    expect(verdicts.length).toBeGreaterThan(100)
    expect(new Set(verdicts)).toEqual(new Set(['agrees']))
    for (const {recipe} of demo.computed.values()) {
      const nutrients = recipe.stated?.figures.map(({nutrient}) => nutrient)
      expect(nutrients, recipe.slug).toEqual(
        expect.arrayContaining(['energy', 'protein', 'carbohydrate', 'fat']),
      )
    }
  })

  test('is large enough to show the work', () => {
    const recipes = [...demo.computed.values()]
    const ingredients = recipes.flatMap(({lines}) => lines.map(({ingredient}) => ingredient))
    const components = ingredients.flatMap((one) =>
      one.kind === 'component' ? [one.recipe.slug] : [],
    )
    const labels = ingredients.flatMap((one) =>
      one.kind === 'food' && one.food.label ? [one.food.label.rules] : [],
    )
    expect(recipes.length).toBeGreaterThanOrEqual(12)
    expect(new Set(components).size).toBeGreaterThanOrEqual(4)
    expect(new Set(labels)).toEqual(new Set(['eu', 'us']))
    expect(recipes.filter(({recipe}) => recipe.comparison !== undefined)).not.toEqual([])
    expect(demo.cookbook.plans).not.toEqual([])
    expect(demo.cookbook.pages).not.toEqual([])
  })

  test.each<[string, (line: IngredientLine) => boolean]>([
    ['an alternative', ({instead}) => instead.length > 0],
    ['a line left uncounted', ({uncounted}) => uncounted !== undefined],
    ['a line as bought', ({isBought}) => isBought],
    ['an optional line', ({isOptional}) => isOptional],
    ['frying oil partly eaten', ({eaten}) => eaten !== undefined],
    ['fat poured off', ({pouredOff}) => pouredOff !== undefined],
    ['wine that simmers', ({simmeredMinutes}) => simmeredMinutes !== undefined],
  ])('has %s', (_, isShown) => {
    expect(allLines().some(isShown)).toBe(true)
  })
})

describe('a slip in the demo cookbook is noticed', () => {
  test('every stated figure just past what it is allowed', () => {
    const unnoticed = [...demo.computed.values()].flatMap((computed) =>
      judged(computed).flatMap(({stated, computed: against, margins}) => {
        const limit = Math.max(margins.agreement, margins.allowed)
        return [against.value + limit, against.value - limit].flatMap((edge) => {
          const steps = edge / stated.increment
          const past = edge > against.value ? Math.floor(steps) + 1 : Math.ceil(steps) - 1
          if (past < 0) return []
          const text = `${formatted(past, stated.increment)} ${nutrientUnit[stated.nutrient]}`
          const found = problemsWith(
            computed.recipe,
            {value: stated.text, place: stated.place},
            text,
          )
          const isNoticed = found.some(
            ({ruleId, file, place}) =>
              ruleId === 'stated-macros' &&
              file === computed.recipe.path &&
              place?.start.line === stated.place.start.line,
          )
          return isNoticed ? [] : [`${computed.recipe.slug}: ${stated.nutrient} ${text}`]
        })
      }),
    )
    expect(unnoticed).toEqual([])
  })

  test.each([0.7, 1.3])('every amount that matters, times %s', (factor) => {
    const tried: string[] = []
    const unnoticed = [...demo.computed.values()].flatMap((computed) =>
      computed.lines
        .filter((line) => matters(line, computed))
        .flatMap(({line}) => {
          const weight = (line.eaten ?? line).amount
          const text = weight.value.text.replace(/^\d+(?:\.\d+)?/, (grams) =>
            String(Number(grams) * factor),
          )
          tried.push(text)
          const found = problemsWith(computed.recipe, {...weight, value: weight.value.text}, text)
          const isNoticed = found.some(
            ({severity, file}) => severity === 'error' && file === computed.recipe.path,
          )
          return isNoticed ? [] : [`${computed.recipe.slug}: ${line.name.value} ${text}`]
        }),
    )
    expect(tried.length).toBeGreaterThan(50)
    expect(unnoticed).toEqual([])
  })
})

function judged(computed: Computed) {
  const {stated} = computed.recipe
  return stated ? judge(stated, computed, demo.cookbook.settings) : []
}

function allLines(): readonly IngredientLine[] {
  return [...demo.computed.values()].flatMap(({lines}) => lines.map(({line}) => line))
}

/** Whether a line brings more than a tenth of the energy or the protein. */
function matters({role, adds}: ComputedLine, {batch}: Computed): boolean {
  return (
    role === 'counted' &&
    (['energy', 'protein'] as const).some(
      (nutrient) => adds[nutrient].value > 0.1 * batch[nutrient].value,
    )
  )
}

/** What the checks find once a value of a recipe's file is written otherwise. */
function problemsWith(
  {slug, path}: Recipe,
  {value: before, place}: Located<string>,
  after: string,
): readonly Problem[] {
  const needed = neededPaths(slug)
  const texts = read.sources.texts.flatMap((source) => {
    if (source.path.includes('/') && !needed.has(source.path)) return []
    if (source.path !== path) return [source]
    const start = place.start.offset ?? Number.NaN
    expect(source.text.slice(start, start + before.length)).toBe(before)
    const text = source.text.slice(0, start) + after + source.text.slice(start + before.length)
    return [{...source, text}]
  })
  return examine({...read, sources: {...read.sources, texts}}).problems
}

/** Files of a recipe, of what it is made from, and of what it is compared with: not one more. */
function neededPaths(slug: string): ReadonlySet<string> {
  const computed = demo.computed.get(slug)
  if (computed === undefined) return new Set()
  const {recipe, lines} = computed
  const others = lines.flatMap(({line}) => (line.recipe ? [line.recipe.value] : []))
  const compared = recipe.comparison?.recipe?.value
  const all = compared === undefined ? others : [...others, compared]
  return new Set([recipe.path, ...all.flatMap((other) => [...neededPaths(other)])])
}

/** A number of steps as a figure with as many decimals as the step. */
function formatted(steps: number, increment: number): string {
  const decimals = Math.max(0, Math.round(-Math.log10(increment)))
  return (steps * increment).toFixed(decimals)
}
