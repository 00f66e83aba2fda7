/** Does the checker notice what it is there for? Slips by chance, with a fixed seed. */

import {readFileSync} from 'node:fs'
import {fileURLToPath} from 'node:url'
import {beforeAll, describe, expect, test} from 'vitest'
import {type Examined, examine} from '../../src/build.ts'
import {onBasis} from '../../src/check/stated-basis.ts'
import {allowance} from '../../src/check/tolerance/tolerance.ts'
import {readFolder} from '../../src/cookbook/read-folder.ts'
import type {Stated} from '../../src/cookbook/recipe.ts'
import type {ReadCookbook} from '../../src/cookbook/sources.ts'
import {isComplete} from '../../src/food/figures.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {internalNutrient, publishedBy} from '../../src/nutrition/published.ts'
import {expandedUncertainty} from '../../src/units/uncertain.ts'
import {seededRandom} from '../seeded-random.ts'
import {type Fault, type FaultKind, faultKinds, plant} from './planted-faults.ts'

/** 6 kinds of 50 are 300 faults. */
const perKind = 50

/** One fault, what it moved and what was said. */
interface Tried {
  readonly fault: Fault
  /** Recipes whose stated figures it moves beyond tolerance and uncertainty, or makes uncomputable. */
  readonly moved: readonly string[]
  /** Of those, the recipes that could be computed and whose file has no drift. */
  readonly missed: readonly string[]
  readonly isError: boolean
}

let sound: Examined
let read: ReadCookbook
const tried: Tried[] = []

beforeAll(async () => {
  read = await readFolder(fileURLToPath(new URL('../../content', import.meta.url)))
  sound = examine(read)
  const random = seededRandom(1)
  for (let n = 0; n < perKind; n++) {
    for (const kind of faultKinds) tried.push(tryOut(plant(kind, {read, sound, random})))
  }
}, 180_000)

test('nothing is reported on the cookbook without a fault', () => {
  expect(sound.problems).toEqual([])
})

test('every fault that moves a stated figure beyond its tolerance and uncertainty is an error', () => {
  const missed = tried.filter(({moved, missed, isError}) =>
    moved.length > 0 ? missed.length > 0 || !isError : false,
  )
  expect(
    missed.map(({fault, moved}) => `${fault.kind} in ${fault.slug}: ${fault.what} (${moved})`),
  ).toEqual([])
})

describe.each(faultKinds)('%s', (kind) => {
  test('is detected no less often than docs/reliability.md promises', () => {
    const ofKind = tried.filter(({fault}) => fault.kind === kind)
    expect(ofKind).toHaveLength(perKind)
    // Were all of them too small to matter, the share would say little.
    expect(ofKind.filter(({moved}) => moved.length > 0).length).toBeGreaterThan(perKind / 10)
    const detected = ofKind.filter(({isError}) => isError).length
    expect(detected).toBeGreaterThanOrEqual(promised(kind))
  })
})

/** The last column of the kind's row in the table of docs/reliability.md. */
function promised(kind: FaultKind): number {
  const row = readFileSync(new URL('../../docs/reliability.md', import.meta.url), 'utf8')
    .split('\n')
    .find((line) => line.startsWith(`| ${kind} | ${perKind} |`))
  const least = Number(row?.split('|').at(-2))
  if (!(least > 0)) throw new Error(`docs/reliability.md promises nothing for ${kind}`)
  return least
}

function tryOut(fault: Fault): Tried {
  const touched = usersAndSelf(fault.slug)
  const faulted = examine({...read, sources: {...read.sources, texts: textsWith(fault, touched)}})
  const moved = [...touched].filter((slug) => isMoved(slug, faulted))
  const hasDrift = (slug: string) =>
    faulted.problems.some(
      ({ruleId, file}) => ruleId === 'stated-macros' && file === `recipes/${slug}.md`,
    )
  const computable = moved.filter((slug) => faulted.computed.has(slug))
  return {
    fault,
    moved,
    missed: computable.filter((slug) => !hasDrift(slug)),
    isError: faulted.problems.some(({severity}) => severity === 'error'),
  }
}

/** Whether a stated figure no longer stands for what the ingredients now give. */
function isMoved(slug: string, faulted: Examined): boolean {
  const before = sound.computed.get(slug)
  const after = faulted.computed.get(slug)
  const stated = before?.recipe.stated
  if (before === undefined || stated === undefined) return false
  return (
    after === undefined || stated.figures.some((one) => movesFigure(one, stated, before, after))
  )
}

function movesFigure(
  {nutrient, increment}: Stated['figures'][number],
  {basis}: Stated,
  before: Computed,
  after: Computed,
): boolean {
  const {settings} = sound.cookbook
  const [was, is] = [onBasis(basis, before), onBasis(basis, after)]
  if (was === undefined || is === undefined) return was !== is
  const against = internalNutrient(nutrient, publishedBy(settings, after.recipe))
  const [old, now] = [was.figures[against], is.figures[against]]
  // A figure that lacks a food is a lower bound: it has moved only where it lies above.
  if (!isComplete(now) && now.value < old.value) return false
  const allowed = allowance(
    {nutrient, value: now.value, stated: old.value, grams: is.grams},
    settings,
  )
  const tolerance = Math.max(allowed.above, allowed.below)
  // What was computed before was stated to the nearest step: half of it is not the fault's doing.
  const uncertainty = expandedUncertainty(now) + increment / 2
  return Math.abs(now.value - old.value) > tolerance + uncertainty
}

/** The recipe and every recipe that it is a part of. */
function usersAndSelf(slug: string): ReadonlySet<string> {
  const found = new Set([slug])
  // A set that grows is walked to its new end.
  for (const one of found) {
    for (const {recipe, lines} of sound.computed.values()) {
      if (lines.some(({line}) => line.recipe?.value === one)) found.add(recipe.slug)
    }
  }
  return found
}

/** Settings and foods, and the files of the recipes and of whatever they are made from. */
function textsWith({source}: Fault, recipes: ReadonlySet<string>) {
  const needed = new Set(recipes)
  for (const slug of needed) {
    const {recipe, lines} = sound.computed.get(slug) ?? {recipe: undefined, lines: []}
    for (const {line} of lines) if (line.recipe) needed.add(line.recipe.value)
    const compared = recipe?.comparison?.recipe
    if (compared) needed.add(compared.value)
  }
  return read.sources.texts.flatMap((text) => {
    if (text.path === source.path) return [source]
    const slug = /^recipes\/(.*)\.md$/.exec(text.path)?.[1]
    return !text.path.includes('/') || (slug !== undefined && needed.has(slug)) ? [text] : []
  })
}
