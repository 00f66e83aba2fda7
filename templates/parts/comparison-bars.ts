import type {Element} from 'hast'
import {h, s} from 'hastscript'
import type {Settings} from '../../src/cookbook/cookbook.ts'
import {type Basis, type Figures, isComplete} from '../../src/food/figures.ts'
import {nutrientText} from '../../src/food/nutrient-text.ts'
import type {PublishedNutrient} from '../../src/food/nutrients.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {mainNutrients, publishedFigure} from '../../src/nutrition/published.ts'
import {roundedText} from '../../src/units/format-figure.ts'
import {recipePath, relativeHref} from '../addresses.ts'
import type {Part} from '../part.ts'
import type {Site} from '../site.ts'
import {computedOn} from './published-figures.ts'

interface Other {
  readonly name: string
  readonly slug?: string
  readonly figures: Figures<Basis>
}

/** The dish beside the one it is compared with, bar below bar; undefined where it is not compared. */
export function comparisonBars(site: Site, computed: Computed, path: string): Part {
  const {comparison} = computed.recipe
  if (comparison === undefined) return undefined
  const here = computedOn(comparison.basis, computed)
  const other = otherOf(site, computed)
  if (here === undefined || other === undefined) return undefined
  const {words} = site
  const names = new Set<PublishedNutrient>(mainNutrients)
  for (const {nutrient} of comparison.statements) names.add(nutrient)
  const title =
    other.slug === undefined
      ? other.name
      : h('a', {href: relativeHref(path, recipePath(other.slug))}, other.name)
  return h(
    'section',
    {ariaLabelledBy: ['part-comparison'], className: ['comparison']},
    h('h2', {id: 'part-comparison'}, words.comparison.title, ' ', title),
    h('p', words.comparison.basis(words.basis[comparison.basis])),
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
      [...names].map((nutrient) => bars(nutrient, here, other, site)),
    ),
  )
}

/** What the recipe is compared with, on the same basis. */
function otherOf({computed: all, cookbook}: Site, {recipe}: Computed): Other | undefined {
  const {comparison} = recipe
  const slug = comparison?.recipe?.value
  const there = slug === undefined ? undefined : all.get(slug)
  if (comparison && there) {
    const figures = computedOn(comparison.basis, there)
    return figures && {name: there.recipe.title.value, slug: there.recipe.slug, figures}
  }
  const food = comparison?.food && cookbook.foods.lookUp(comparison.food.value)
  // A food has figures per 100 g only; a serving of it is nobody's to define.
  return food && comparison?.basis === '100 g'
    ? {name: food.name, figures: food.per100g}
    : undefined
}

function bars(
  nutrient: PublishedNutrient,
  here: Figures<Basis>,
  other: Other,
  {cookbook, words}: Site,
): Element | undefined {
  const settings: Settings = cookbook.settings
  const mine = publishedFigure(here, nutrient, settings)
  const theirs = publishedFigure(other.figures, nutrient, settings)
  if (!isComplete(mine) || !isComplete(theirs)) return undefined
  const most = Math.max(mine.value, theirs.value)
  if (most <= 0) return undefined
  return h(
    'div',
    h('dt', words.nutrient[nutrient]),
    row('here', nutrientText(nutrient, mine.value), mine.value / most, words.comparison.here),
    row('there', nutrientText(nutrient, theirs.value), theirs.value / most, other.name),
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
    {width: '100%', height: 12, ariaHidden: 'true', className: ['bar', kind]},
    s('rect', {x: 1, y: 1, height: 10, width: `${roundedText(Math.max(0, ratio) * 99, 1)}%`}),
  )
}
