import {readFileSync} from 'node:fs'
import {fileURLToPath} from 'node:url'
import {describe, expect, test} from 'vitest'
import {checkCookbook} from '../../src/check/check-cookbook.ts'
import type {Problem} from '../../src/cookbook/problem.ts'
import {readFolder} from '../../src/cookbook/read-folder.ts'
import {understandCookbook} from '../../src/cookbook/understand.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'

/**
 * Sixty methods in as many styles, written for this test; what is wrong in them was marked by hand.
 * DEVELOPERS.md has the outcome as a table, which the last test holds against the rules.
 */
const folder = fileURLToPath(new URL('../fixtures/method-texts/', import.meta.url))

/** Rules that read a method, or judge what is said about keeping. */
const studied: ReadonlySet<string> = new Set([
  'ingredient-used',
  'amounts-in-method',
  'total-in-method',
  'oven-in-method',
  'scales-agree',
  'pan-in-method',
  'steps-fit-time',
  'hands-on-fits',
  'component-ready',
  'poultry-temperature',
  'ground-meat-temperature',
  'meat-temperature',
  'fish-temperature',
  'egg-dish-temperature',
  'temperature-too-low',
  'raw-egg',
  'raw-flour',
  'honey-for-infants',
  'kidney-beans-boiled',
  'rice-held-warm',
  'garlic-in-oil',
  'marinade-boiled',
  'keeps-guidance',
  'freezer-quality',
  'cooling-said',
  'reheating-said',
])

/** "Dip, layer, smooth" names neither the fingers nor the coffee, and a reader knows it anyway. */
const knownFalseAlarms = ['tiramisu-safe ingredient-used', 'tiramisu-safe ingredient-used']

const {sources, problems: unread} = await readFolder(folder)
const {cookbook, problems: misread} = understandCookbook(sources)
const {computed, problems: unresolved} = computeCookbook(cookbook)
const found = checkCookbook(cookbook, computed).filter(({ruleId}) => studied.has(ruleId))

function rows(file: string): readonly (readonly string[])[] {
  const [, ...lines] = readFileSync(new URL(file, `file://${folder}`), 'utf8')
    .trim()
    .split('\n')
  return lines.map((line) => line.split('\t'))
}

const texts = rows('texts.tsv')
const faults = rows('faults.tsv').map(([recipe = '', rule = '', words = '']) => ({
  recipe,
  rule,
  words,
}))

function slugOf({file}: Problem): string {
  return file.replace(/^recipes\/|\.md$/g, '')
}

function wordsAt({file, place}: Problem): string {
  const text = sources.texts.find(({path}) => path === file)?.text ?? ''
  return text.slice(place?.start.offset, place?.end.offset)
}

function isOf(problem: Problem, {recipe, rule, words}: (typeof faults)[number]): boolean {
  return slugOf(problem) === recipe && problem.ruleId === rule && words.startsWith(wordsAt(problem))
}

const falseAlarms = found.filter((problem) => !faults.some((fault) => isOf(problem, fault)))

describe('methods of many styles', () => {
  test('are all read and computed', () => {
    expect([...unread, ...misread, ...unresolved]).toEqual([])
    expect([...computed.keys()].sort()).toEqual(texts.map(([, recipe]) => recipe).sort())
    expect(texts.length).toBeGreaterThanOrEqual(40)
  })

  test.each(faults)('$recipe: $rule at "$words"', (fault) => {
    expect(found.filter((problem) => isOf(problem, fault))).toHaveLength(1)
  })

  test('give no false alarm but the known ones', () => {
    expect(falseAlarms.map((problem) => `${slugOf(problem)} ${problem.ruleId}`)).toEqual(
      knownFalseAlarms,
    )
  })

  test('have their outcome in the guide for contributors', () => {
    const guide = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8')
    for (const set of ['first', 'second', 'third']) {
      const slugs = new Set(texts.filter(([name]) => name === set).map(([, recipe]) => recipe))
      const marked = faults.filter(({recipe}) => slugs.has(recipe))
      const hit = marked.filter((fault) => found.some((problem) => isOf(problem, fault)))
      const wrong = falseAlarms.filter((problem) => slugs.has(slugOf(problem)))
      const row = new RegExp(
        `^\\| ${set} \\| ${slugs.size} \\| ${marked.length} \\|.*\\| ${hit.length} \\| ${wrong.length} \\|$`,
        'm',
      )
      expect(guide).toMatch(row)
    }
  })
})
