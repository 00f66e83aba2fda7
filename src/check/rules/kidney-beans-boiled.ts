import {placeInPassage} from '../../cookbook/passage-place.ts'
import {durationsIn} from '../../cookbook/prose/durations.ts'
import {sentencesOf} from '../../cookbook/prose/sentences.ts'
import type {Recipe} from '../../cookbook/recipe.ts'
import {ingredientMentions, stepsOf} from '../method/ingredient-mentions.ts'
import type {Rule} from '../rule.ts'

/** UK Food Standards Agency, from memory; the FDA advises half an hour. */
const boilMinutes = 10

export const kidneyBeansBoiled: Rule = {
  id: 'kidney-beans-boiled',
  severity: 'error',
  summary: 'Dry kidney beans are boiled hard for 10 minutes or more.',
  why: 'Raw and slow-cooked kidney beans hold a lectin (phytohaemagglutinin) that poisons; only boiling destroys it, and a slow cooker makes it worse.',
  source:
    'US FDA, Bad Bug Book, 2nd ed. (2012), phytohaemagglutinin: soak 5 hours, boil in fresh water 30 minutes; UK Food Standards Agency: boil at least 10 minutes (both from memory).',
  *check({recipe, computed}) {
    if (stepsOf(recipe).length === 0 || isBoiled(recipe)) return
    for (const entry of computed.lines) {
      const {line, ingredient} = entry
      if (ingredient.kind !== 'food') continue
      if (ingredient.food.state !== 'dry' || !ingredient.food.traits.has('kidney bean')) continue
      const mention = ingredientMentions(computed).find(({lines}) => lines.includes(entry))
      yield {
        place: mention
          ? placeInPassage(mention.passage, mention.from, mention.to)
          : line.name.place,
        reason: `Dry \`${line.name.value}\` without a hard boil in the method, expected \`boil for ${boilMinutes} minutes\` or more`,
        actual: line.name.value,
        expected: [`boil for ${boilMinutes} minutes`],
        note: 'Soak, drain, boil hard in fresh water (30 minutes by the advice of the US FDA), then simmer. Never from dry in a slow cooker. Local food-safety rules come first.',
      }
    }
  },
}

function isBoiled(recipe: Recipe): boolean {
  return stepsOf(recipe).some(({text}) =>
    sentencesOf(text).some(({from, to}) => {
      const sentence = text.slice(from, to)
      if (/\bpressure[- ]cook\w*/i.test(sentence)) return true
      return durationsIn(sentence).some(
        ({from: at, lowMinutes, role}) =>
          role !== 'keeping' && lowMinutes >= boilMinutes && isOfBoiling(sentence, at),
      )
    }),
  )
}

/** Boiling is the last thing named before the time, or it is a simmer's: "boil, then simmer 1 h". */
function isOfBoiling(sentence: string, at: number): boolean {
  const before = sentence.slice(0, at)
  const last = [...before.matchAll(/\b(boil|simmer|cook|soak|rest|stand|bake)\w*/gi)].at(-1)
  if (/^boil$/i.test(last?.[1] ?? '')) return true
  return !last && /\bboil\w*/i.test(sentence.slice(at))
}
