/**
 * Words that writers and packets use for a key, where no slip of the pen leads from one to the
 * other. Common practice, no source.
 */
const keyByWord: ReadonlyMap<string, string> = new Map(
  Object.entries({
    calories: 'energy',
    cals: 'energy',
    kcal: 'energy',
    kj: 'energy kJ',
    kilojoules: 'energy kJ',
    carbs: 'carbohydrate',
    'total carbohydrate': 'carbohydrate',
    'total fat': 'fat',
    'sat fat': 'saturated',
    'saturated fat': 'saturated',
    saturates: 'saturated',
    'of which saturates': 'saturated',
    'trans fat': 'trans',
    fiber: 'fibre',
    'dietary fiber': 'fibre',
    'dietary fibre': 'fibre',
    'total sugars': 'sugars',
    'of which sugars': 'sugars',
    'sugar alcohol': 'polyols',
    'sugar alcohols': 'polyols',
    erythritol: 'polyols',
    xylitol: 'polyols',
    maltitol: 'polyols',
    sorbitol: 'polyols',
    name: 'title',
    description: 'summary',
    servings: 'serves',
    portions: 'serves',
    'serving size': 'per',
    serving: 'portion',
    nutrition: 'stated',
    macros: 'stated',
    storage: 'keeps',
    diet: 'suits',
    photo: 'image',
    'total time': 'time',
    'cook time': 'time',
    'prep time': 'time',
  }),
)

/** The key that a word means, where the mapping has it. */
export function keyMeantBy(word: string, known: readonly string[]): string | undefined {
  const meant = keyByWord.get(word.toLowerCase().replaceAll(/[\s_-]+/g, ' '))
  return meant !== undefined && known.includes(meant) ? meant : undefined
}
