import type {Element} from 'hast'
import {h, s} from 'hastscript'
import {type Sides, sidesOf} from '../../src/check/comparison/sides.ts'
import {isComplete} from '../../src/food/figures.ts'
import {nutrientText} from '../../src/food/nutrient-text.ts'
import type {PublishedNutrient} from '../../src/food/nutrients.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {
  mainNutrients,
  type Publishing,
  publishedBy,
  publishedFigure,
} from '../../src/nutrition/published.ts'
import {roundedText} from '../../src/units/format-figure.ts'
import {recipePath, relativeHref} from '../addresses.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {withDecimal} from '../words/decimal.ts'
import type {Words} from '../words/en.ts'

/** The dish beside the one it is compared with, bar below bar; undefined where it is not compared. */
export function comparisonBars(site: Site, computed: Computed, path: string): Part {
  const {comparison} = computed.recipe
  if (comparison === undefined) return undefined
  const {sides} = sidesOf(computed, comparison, {cookbook: site.cookbook, all: site.computed})
  if (sides === undefined) return undefined
  const {cookbook, words} = site
  const publishing = publishedBy(cookbook.settings, computed.recipe)
  const names = new Set<PublishedNutrient>(mainNutrients)
  for (const {nutrient} of comparison.statements) names.add(nutrient)
  const title =
    sides.other === undefined
      ? sides.name
      : h('a', {href: relativeHref(path, recipePath(sides.other.recipe.slug))}, sides.name)
  return h(
    'section',
    {ariaLabelledBy: ['part-comparison'], className: ['comparison']},
    h('h2', {id: 'part-comparison'}, words.comparison.title, ' ', title),
    h('p', basisText(sides, words)),
    comparison.statements.length === 0
      ? undefined
      : h(
          'p',
          comparison.statements.map(({nutrient, text}) =>
            h('span', {className: ['statement']}, `${words.nutrient[nutrient]}: ${text.value}. `),
          ),
        ),
    h(
      'dl',
      [...names].map((nutrient) => bars(nutrient, sides, {publishing, words})),
    ),
  )
}

/** A food has no serving of its own: as much of it as one serving of the dish weighs. */
function basisText({basis, other}: Sides, words: Words): string {
  return basis === 'serving' && other === undefined
    ? words.comparison.sameWeight
    : words.comparison.basis(words.basis[basis])
}

function bars(
  nutrient: PublishedNutrient,
  {here, there, name}: Sides,
  {publishing, words}: {readonly publishing: Publishing; readonly words: Words},
): Element | undefined {
  const mine = publishedFigure(here, nutrient, publishing)
  const theirs = publishedFigure(there, nutrient, publishing)
  if (!isComplete(mine) || !isComplete(theirs)) return undefined
  const most = Math.max(mine.value, theirs.value)
  if (most <= 0) return undefined
  return h(
    'div',
    h('dt', words.nutrient[nutrient]),
    row(
      'here',
      withDecimal(nutrientText(nutrient, mine.value), words),
      mine.value / most,
      words.comparison.here,
    ),
    row(
      'there',
      withDecimal(nutrientText(nutrient, theirs.value), words),
      theirs.value / most,
      name,
    ),
  )
}

function row(kind: 'here' | 'there', amount: string, ratio: number, name: string): Element {
  return h(
    'dd',
    h('span', {className: ['weight']}, amount),
    ' ',
    h('span', {className: ['what']}, bar(kind, ratio), h('span', {className: ['note']}, name)),
  )
}

/** Filled for this dish, an outline for the other: told apart without colour. */
function bar(kind: 'here' | 'there', ratio: number): Element {
  return s(
    'svg',
    {ariaHidden: 'true', className: ['bar', kind]},
    s('rect', {width: `${roundedText(Math.max(0, ratio) * 99, 1)}%`}),
  )
}
