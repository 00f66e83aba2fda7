import {placeInPassage} from '../../cookbook/passage-place.ts'
import {ingredientMentions, stepsOf} from '../method/ingredient-mentions.ts'
import type {Rule} from '../rule.ts'
import {rawLines} from '../safety/hazard.ts'
import {isHeated, methodText} from '../safety/heat.ts'

export const rawEgg: Rule = {
  id: 'raw-egg',
  severity: 'warning',
  summary:
    'Where egg stays raw or soft, the recipe asks for pasteurised egg or says who should not eat it.',
  why: 'Raw and lightly cooked eggs can carry Salmonella, which is worst for small children, the old, the pregnant and the ill.',
  source:
    'US FDA, What You Need to Know About Egg Safety: pasteurised eggs, or the mixture heated to 160 °F (71 °C).',
  *check({recipe, computed}) {
    const steps = stepsOf(recipe)
    const [raw] = rawLines(computed, 'egg').filter(({line}) => !pasteurised.test(line.name.value))
    if (!raw || steps.length === 0 || isSaid.test(methodText(recipe))) return
    const mentions = ingredientMentions(computed).filter(({lines}) => lines.includes(raw))
    const [first] = mentions
    if (!first) return
    const isCooked = steps.slice(steps.indexOf(first.passage)).some(isHeated)
    const soft = steps.find(({text}) => isSoft.test(text))
    if (isCooked && !soft) return
    const index = soft?.text.search(isSoft) ?? 0
    yield {
      place: soft
        ? placeInPassage(soft, index, index + (isSoft.exec(soft.text)?.[0].length ?? 0))
        : placeInPassage(first.passage, first.from, first.to),
      reason: `Egg \`${raw.line.name.value}\` stays raw or soft, expected pasteurised egg or a word of caution`,
      actual: raw.line.name.value,
      expected: ['pasteurised egg'],
      note: 'Ask for pasteurised egg, heat the mixture to 71 °C (160 °F), or say that small children, pregnant, old or ill people should not eat it. Local food-safety rules come first.',
    }
  },
}

const pasteurised = /\bpasteuri[sz]ed\b/i
const isSaid =
  /\bpasteuri[sz]ed\b|\b(?:pregnan\w+|vulnerable|immune|elderly)\b|\b(?:raw|under-?cooked|soft) eggs?\b[^.]*\b(?:not|risk|avoid|care|children)\b/i
const isSoft =
  /\b(?:soft[- ]boil\w*|runny yolks?|yolks? (?:\w+ ){0,3}(?:runny|soft|liquid)|soft(?:ly)? set|barely set|dippy|(?:middle|cent(?:re|er)|inside) (?:\w+ ){0,2}(?:runny|liquid))\b/i
