import type {ComputedLine} from '../../nutrition/computed.ts'
import {rememberedText} from '../../units/remembered.ts'
import {stemOf, wordsOf} from './words.ts'

/** The words by which a method can mean one ingredient. */
export interface IngredientWords {
  /** Any of these alone names it: `barley` of `pearl barley`. */
  readonly nouns: ReadonlySet<string>
  /** These tell it from another of the kind: `pearl`. */
  readonly modifiers: ReadonlySet<string>
}

/** Words that describe many ingredients and name none. */
const describing: ReadonlySet<string> = new Set(
  `a an and at by for from in of on or per the to with without fresh dried dry ground whole large
  small medium raw cooked uncooked frozen tinned canned jarred plain white black red green yellow
  brown light dark pale unsalted salted low reduced fat free full semi skimmed skim skinless
  boneless skin bone lean chopped sliced diced grated crushed shredded peeled smoked unsmoked sweet
  hot cold warm extra virgin strong self raising rising fine coarse rolled jumbo baby young ripe
  natural homemade thick thin clear mixed quick instant wild long short grain medium round flat
  active fast action pure organic ordinary good best optional more less about half drained rinsed
  soft softened melted toasted roasted boiled steamed baked stoned pitted seedless unsweetened
  sweetened greek all purpose plus style powdered caster icing granulated own all`
    .split(/\s+/)
    .map(stemOf),
)

/**
 * The words of a line's name: of its first part, before a comma, bracket or "for". The last of
 * them names it even where it only describes elsewhere (`egg white`).
 */
export function ingredientWords({line}: ComputedLine): IngredientWords {
  return nameWords(line.name.value)
}

export const nameWords = rememberedText((name): IngredientWords => {
  const [head = name] = name.split(/[,(;]|\s(?:for|to)\s/)
  const stems = wordsOf(head).map(({stem}) => stem)
  const nouns = stems.filter((stem, index) => !describing.has(stem) || index === stems.length - 1)
  return {
    nouns: new Set(nouns),
    modifiers: new Set(
      wordsOf(name)
        .map(({stem}) => stem)
        .filter((stem) => !nouns.includes(stem)),
    ),
  }
})
