import {placeInPassage} from '../../cookbook/passage-place.ts'
import {type PanMention, pansIn} from '../../cookbook/prose/pans.ts'
import type {Pan} from '../../cookbook/recipe.ts'
import {stepsOf} from '../method/ingredient-mentions.ts'
import type {Rule} from '../rule.ts'

export const panInMethod: Rule = {
  id: 'pan-in-method',
  severity: 'warning',
  summary: 'The tin of the front matter is the tin of the method.',
  why: 'The page scales a dish by the tin of the front matter; in another one it is baked too thin or runs over.',
  *check({recipe}) {
    const {pan} = recipe
    if (!pan) return
    const inMethod = stepsOf(recipe).flatMap((passage) =>
      pansIn(passage.text).map((mention) => ({passage, mention})),
    )
    const [first] = inMethod
    if (!first || inMethod.some(({mention}) => isSame(mention, pan.value))) return
    const {passage, mention} = first
    yield {
      place: placeInPassage(passage, mention.from, mention.to),
      reason: `Tin \`${mention.text}\` in the method, expected \`${pan.value.text}\` as in the front matter`,
      actual: mention.text,
      expected: [pan.value.text],
      note: 'Mend whichever is wrong: the page shows and scales by `pan` of the front matter.',
    }
  },
}

/** Tins sold as 20 cm and as 8 in are one tin: common practice, no source. */
const slackMillimetres = 6

function isSame({shape, acrossMillimetres, secondMillimetres}: PanMention, pan: Pan): boolean {
  const isShape = shape === undefined || shape === pan.shape || isSquare(shape, pan.shape)
  const [across, second] = [pan.acrossMillimetres, pan.secondMillimetres]
  const sides =
    pan.shape === 'ring' ? [across] : [across, second ?? across].toSorted((l, r) => l - r)
  const isAcross = Math.abs(acrossMillimetres - (sides[0] ?? 0)) <= slackMillimetres
  const isSecond =
    secondMillimetres === undefined ||
    Math.abs(secondMillimetres - (sides[1] ?? across)) <= slackMillimetres
  return isShape && isAcross && isSecond
}

/** A `20 x 20 cm tin` is a square one. */
function isSquare(left: Pan['shape'], right: Pan['shape']): boolean {
  const both = [left, right]
  return both.includes('square') && both.includes('rectangle')
}
