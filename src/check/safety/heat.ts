import {temperaturesIn} from '../../cookbook/prose/temperatures.ts'
import type {Passage, Recipe} from '../../cookbook/recipe.ts'
import {rememberedText} from '../../units/remembered.ts'
import {stepsOf} from '../method/ingredient-mentions.ts'

/** Words for heat that reaches the food; a bowl over simmering water only warms it. */
const heating =
  /(?<!\bno[- ]|\bun|\bwithout |\bnot )\b(?:bak(?:e[ds]?|ing)|boil(?:s|ed|ing)?|simmer(?:s|ed|ing)?|fr(?:y|ied|ies|ying)|roast(?:s|ed|ing)?|grill(?:s|ed|ing)?|griddle[ds]?|steam(?:s|ed|ing)?|poach(?:ed|ing)?|sear(?:s|ed|ing)?|saut[eé](?:s|ed|ing)?|brais(?:e|es|ed|ing)|stew(?:s|ed|ing)?|cook(?:s|ing)?|microwav(?:e|es|ed|ing)|barbecue[ds]?|broil(?:s|ed|ing)?|oven|skillet|wok|griddle|burner|(?:very )?hot (?:dry )?pan|pan,? (?:very )?hot|heat(?:s|ed|ing)?(?![- ](?:treated|proof))|scrambl(?:e|es|ed|ing)|bring to the boil)\b/i
const onlyWarming =
  /\b(?:off|from|without|turn off) (?:the )?heat\b|\b(?:over|above|in) (?:a (?:pan|pot|bowl|saucepan) of )?(?:barely |gently |just |hot |lightly )*(?:simmering|boiling|hot) water\b|\bbain[- ]marie\b|\bcook(?:'s|ed|ing (?:apple|oil|chocolate))\b|\b(?:no|without|not) (?:need to )?(?:cook|bak|boil)\w*/gi

/** What has been this hot was heated. */
const hotCelsius = 60

/** Whether heat reaches the food in a step. */
export function isHeated({text}: Pick<Passage, 'text'>): boolean {
  return tellsOfHeat(text)
}

const tellsOfHeat = rememberedText(
  (text) =>
    heating.test(text.replace(onlyWarming, '')) ||
    temperaturesIn(text).some(({highCelsius}) => highCelsius >= hotCelsius),
)

/** Whether the method heats anything at all. */
export function hasHeat(recipe: Recipe): boolean {
  return recipe.oven !== undefined || stepsOf(recipe).some(isHeated)
}

/** The text of all steps, for rules that look for a word anywhere. */
export function methodText(recipe: Recipe): string {
  return stepsOf(recipe)
    .map(({text}) => text)
    .join('\n')
}
