import type {LabelRules} from '../../food/label-rules.ts'

/** Words that are no claim of a law, with what to know about them. */
interface OtherWords {
  readonly words: RegExp
  readonly rules?: LabelRules
  readonly why: string
}

const otherWords: readonly OtherWords[] = [
  {
    words: /gluten|c(?:o)?eliac/,
    why: 'A recipe can say `suits: [gluten-free ingredients]`; gluten-free itself is a measured limit.',
  },
  {
    words: /^(?:vegan|vegetarian|halal|kosher|dairy free|milk free|nut free|egg free)/,
    why: 'Diets stand in `suits`, allergens in `free from`.',
  },
  {
    words: /\bhealthy\b|\bwholesome\b|\bnutritious\b/,
    rules: 'us',
    why: '21 CFR 101.65(d), rule of December 2024, wants amounts of food groups that are not worked out here.',
  },
  {
    words: /\bhealthy\b|\bwholesome\b|\bnutritious\b/,
    rules: 'eu',
    why: 'A general health claim, Regulation (EC) 1924/2006 Article 10(3): it stands beside an authorised one only.',
  },
  {
    words: /low (?:in )?sugars?$/,
    rules: 'us',
    why: 'US law defines no "low sugar" (FDA, A Food Labeling Guide, Appendix A).',
  },
  {
    words: /^\d+(?:\.\d+)? ?% fat free$/,
    rules: 'eu',
    why: 'Regulation (EC) 1924/2006, Annex, forbids claims of the form "X % fat-free".',
  },
  {
    words: /\bomega\b|unsaturate/,
    why: 'Foods here have no figures for single fatty acids (omega-3, mono- and polyunsaturated), in which EU law sets the conditions (Regulation (EC) 1924/2006, Annex) and US law the comparison.',
  },
  {
    words: /low (?:in )?(?:carb|net carb)|keto|carbohydrate/,
    why: 'Neither law defines a claim about carbohydrate.',
  },
  {
    words: /superfood|detox|slimming|fat burning|immune|heart|digest|energising|boost/,
    why: 'That is a claim about health, which a list of ingredients cannot show.',
  },
  {
    words: /cholesterol|\blean\b/,
    rules: 'eu',
    why: 'Regulation (EC) 1924/2006, Annex, lists no such claim, and what it does not list may not be made.',
  },
]

/** What is to say of words that a law gives no conditions to; undefined where nothing is known. */
export function whyNoClaim(word: string, rules: LabelRules): string | undefined {
  const plain = word.toLowerCase().replaceAll('-', ' ')
  return otherWords.find((other) => (other.rules ?? rules) === rules && other.words.test(plain))
    ?.why
}
